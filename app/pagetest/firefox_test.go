//go:build browser

package pagetest

import (
	"bufio"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/coder/websocket"
)

// firefox is a running Firefox with one page, spoken to in WebDriver BiDi
// (W3C, https://www.w3.org/TR/webdriver-bidi/).
type firefox struct {
	t      *testing.T
	page   string // the browsing context
	on     func(method string, params json.RawMessage)
	socket *websocket.Conn
	over   context.Context

	mu      sync.Mutex
	last    int
	waiting map[int]chan answer
}

// answer is what Firefox says to a command.
type answer struct {
	ID      int
	Method  string
	Params  json.RawMessage
	Result  json.RawMessage
	Error   string
	Message string
}

// Settings without which Firefox does things of its own while it is tested.
const firefoxSettings = `user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("app.update.disabledForTesting", true);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("dom.w3c_touch_events.enabled", 1);
user_pref("browser.download.alwaysOpenPanel", false);
user_pref("browser.download.always_ask_before_handling_new_types", false);
user_pref("browser.download.folderList", 2);
`

// startFirefox starts Firefox with a profile of its own, which ends with the
// test.
func startFirefox(t *testing.T, on func(method string, params json.RawMessage)) *firefox {
	t.Helper()
	profile := t.TempDir()
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(firefoxSettings+fmt.Sprintf("user_pref(\"browser.download.dir\", %q);\n", profile)), 0o644); err != nil {
		t.Fatal(err)
	}
	command := exec.Command("firefox-esr", "--headless", "--no-remote", "--profile", profile, "--remote-debugging-port", "0", "about:blank")
	command.Env = append(os.Environ(), "MOZ_CRASHREPORTER_DISABLE=1")
	stderr, err := command.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := command.Start(); err != nil {
		t.Fatal(err)
	}
	over, end := context.WithCancel(context.Background())
	f := &firefox{t: t, on: on, over: over, waiting: map[int]chan answer{}}
	t.Cleanup(func() {
		_, _ = f.send("browser.close", nil) // killed below when it will not
		end()
		done := make(chan struct{})
		go func() { _ = command.Wait(); close(done) }()
		select {
		case <-done:
		case <-time.After(10 * time.Second):
			_ = command.Process.Kill()
			<-done
		}
	})
	f.connect(firefoxAddress(t, bufio.NewScanner(stderr)))
	return f
}

// firefoxAddress reads where Firefox listens, and drops what it says after.
func firefoxAddress(t *testing.T, lines *bufio.Scanner) string {
	t.Helper()
	const mark = "WebDriver BiDi listening on "
	var said []string
	for lines.Scan() {
		if _, address, found := strings.Cut(lines.Text(), mark); found {
			go func() {
				for lines.Scan() {
				}
			}()
			return strings.TrimSpace(address)
		}
		said = append(said, lines.Text())
	}
	t.Fatalf("Firefox does not start:\n%s", strings.Join(said, "\n"))
	return ""
}

func (f *firefox) connect(address string) {
	f.t.Helper()
	socket, _, err := websocket.Dial(f.over, address+"/session", nil)
	if err != nil {
		f.t.Fatal(err)
	}
	socket.SetReadLimit(-1)
	f.socket = socket
	go f.listen()
	f.call("session.new", map[string]any{"capabilities": map[string]any{}}, nil)
	// The page that Firefox begins with never gets the focus; a new one has it.
	var made struct{ Context string }
	f.call("browsingContext.create", map[string]any{"type": "tab"}, &made)
	f.page = made.Context
	f.call("session.subscribe", map[string]any{"events": []string{"log.entryAdded", "network.beforeRequestSent"}}, nil)
}

// listen hands on what Firefox says until the connection ends.
func (f *firefox) listen() {
	for {
		_, data, err := f.socket.Read(f.over)
		if err != nil {
			f.mu.Lock()
			defer f.mu.Unlock()
			for id, waits := range f.waiting {
				waits <- answer{Error: "no connection", Message: err.Error()}
				delete(f.waiting, id)
			}
			f.waiting = nil
			return
		}
		var a answer
		if json.Unmarshal(data, &a) != nil {
			continue
		}
		if a.Method != "" {
			f.on(a.Method, a.Params)
			continue
		}
		f.mu.Lock()
		waits := f.waiting[a.ID]
		delete(f.waiting, a.ID)
		f.mu.Unlock()
		if waits != nil {
			waits <- a
		}
	}
}

// send runs a command and returns its result.
func (f *firefox) send(method string, params any) (json.RawMessage, error) {
	if params == nil {
		params = map[string]any{}
	}
	waits := make(chan answer, 1)
	f.mu.Lock()
	if f.waiting == nil || f.socket == nil {
		f.mu.Unlock()
		return nil, errors.New("Firefox has gone")
	}
	f.last++
	id := f.last
	f.waiting[id] = waits
	f.mu.Unlock()
	data, err := json.Marshal(map[string]any{"id": id, "method": method, "params": params})
	if err != nil {
		return nil, err
	}
	if err := f.socket.Write(f.over, websocket.MessageText, data); err != nil {
		return nil, err
	}
	select {
	case a := <-waits:
		if a.Error != "" {
			return nil, fmt.Errorf("%s: %s: %s", method, a.Error, a.Message)
		}
		return a.Result, nil
	case <-time.After(patience):
		return nil, fmt.Errorf("%s: no answer", method)
	}
}

// call runs a command that must succeed and reads its result.
func (f *firefox) call(method string, params, result any) {
	f.t.Helper()
	data, err := f.send(method, params)
	if err == nil && result != nil {
		err = json.Unmarshal(data, result)
	}
	if err != nil {
		f.t.Fatal(err)
	}
}
