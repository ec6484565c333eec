//go:build browser

package pagetest

import (
	"net/http"
	"strings"
	"sync"
	"time"
)

// line is the connection of a host to the world, which breaks after some
// bytes. Each answer counts for its headers too.
type line struct {
	mu    sync.Mutex
	from  string // the path of a file: what is asked for before it counts for nothing
	sent  int
	cut   bool
	after int // it breaks when so much is sent; 0: never
}

// arrives lets the browser read what was sent: a connection that is torn down
// takes with it what lies unread.
const arrives = 100 * time.Millisecond

const headerBytes = 300 // of one answer, about

// begin notes a request; a broken line drops it.
func (l *line) begin(path string) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.from != "" && strings.HasSuffix(path, l.from) {
		l.from = ""
	}
	if l.take(headerBytes); l.cut {
		panic(http.ErrAbortHandler)
	}
}

// take counts bytes and returns how many of them pass.
func (l *line) take(n int) int {
	if l.cut {
		return 0
	}
	if l.from != "" {
		return n
	}
	if l.after > 0 && l.sent+n >= l.after {
		n = l.after - l.sent
		l.cut = true
	}
	l.sent += n
	return n
}

// mend lets everything pass again, and returns how much had been sent.
func (l *line) mend() int {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.cut, l.after = false, 0
	sent := l.sent
	l.sent = 0
	return sent
}

// broken tells whether it has come to the break.
func (l *line) broken() bool {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.cut
}

type lineWriter struct {
	http.ResponseWriter
	line *line
}

func (w *lineWriter) Flush() { w.ResponseWriter.(http.Flusher).Flush() }

// Write sends in parts, since files come side by side.
func (w *lineWriter) Write(data []byte) (sent int, err error) {
	const part = 16 << 10
	for len(data) > 0 {
		n := min(part, len(data))
		w.line.mu.Lock()
		passes, cut := w.line.take(n), w.line.cut
		w.line.mu.Unlock()
		done, err := w.ResponseWriter.Write(data[:passes])
		sent += done
		if err != nil {
			return sent, err
		}
		if cut {
			w.Flush()
			time.Sleep(arrives)
			panic(http.ErrAbortHandler)
		}
		data = data[n:]
	}
	return sent, nil
}
