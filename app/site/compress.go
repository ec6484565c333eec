//go:build !js

package site

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"fmt"
	"io"
	"os"
	"path"
	"path/filepath"

	"github.com/andybalholm/brotli"
)

// quickLevel costs a tenth of the time of the best for some more bytes.
const quickLevel = 5

// compressAll returns a .br and a .gz for every file that gains by it. Hosts
// that can send them save nearly four fifths of the program's transfer.
func compressAll(files map[string][]byte, cache string, quick bool) (map[string][]byte, error) {
	packed := map[string][]byte{}
	for name, data := range files {
		switch path.Ext(name) {
		case ".png", ".woff2":
			continue // packed already
		}
		var err error
		if quick {
			packed[name+".br"], err = brotlied(data, quickLevel)
		} else {
			packed[name+".br"], err = bestBrotli(data, cache)
		}
		if err != nil {
			return nil, err
		}
		if packed[name+".gz"], err = gzipped(data); err != nil {
			return nil, err
		}
	}
	return packed, nil
}

// bestBrotli takes some twenty seconds for the program, so what an earlier
// build has left in the folder cache is used again.
func bestBrotli(data []byte, cache string) ([]byte, error) {
	if cache == "" {
		return brotlied(data, brotli.BestCompression)
	}
	name := filepath.Join(cache, fmt.Sprintf("%x.br", sha256.Sum256(data)))
	if packed, err := os.ReadFile(name); err == nil {
		return packed, nil
	}
	packed, err := brotlied(data, brotli.BestCompression)
	if err != nil {
		return nil, err
	}
	return packed, keepFile(name, packed)
}

func brotlied(data []byte, level int) ([]byte, error) {
	var buffer bytes.Buffer
	// The widest window that browsers read; it gains a hundredth.
	return squeezed(&buffer, brotli.NewWriterOptions(&buffer, brotli.WriterOptions{Quality: level, LGWin: 24}), data)
}

func gzipped(data []byte) ([]byte, error) {
	var buffer bytes.Buffer
	w, err := gzip.NewWriterLevel(&buffer, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	return squeezed(&buffer, w, data)
}

// squeezed sends data through w and returns what has come out in buffer.
func squeezed(buffer *bytes.Buffer, w io.WriteCloser, data []byte) ([]byte, error) {
	if _, err := w.Write(data); err != nil {
		return nil, err
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return buffer.Bytes(), nil
}

// keepFile writes a file whole or not at all.
func keepFile(name string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	if err := os.WriteFile(name+".new", data, 0o644); err != nil {
		return err
	}
	return os.Rename(name+".new", name)
}
