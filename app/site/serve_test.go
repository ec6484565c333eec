//go:build !js

package site

import (
	"bytes"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
)

// served asks a handler over dir, with header lines as name, value.
func served(t *testing.T, dir, method, path string, headers ...string) *httptest.ResponseRecorder {
	t.Helper()
	handler, err := Handler(dir)
	if err != nil {
		t.Fatal(err)
	}
	r := httptest.NewRequest(method, "http://localhost/", nil)
	r.URL.Path = path // as it comes, not cleaned
	for i := 0; i+1 < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	handler.ServeHTTP(w, r)
	return w
}

func write(t *testing.T, path, data string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(data), 0o644); err != nil {
		t.Fatal(err)
	}
}

func TestServes(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "dist")
	write(t, filepath.Join(dir, "index.html"), "page")
	write(t, filepath.Join(dir, "web/app.wasm"), "program")
	write(t, filepath.Join(dir, "web/app.wasm.br"), "br")
	write(t, filepath.Join(dir, "web/app.wasm.gz"), "gz")
	for _, test := range []struct{ path, accept, kind, encoding, body string }{
		{"/", "", "text/html; charset=utf-8", "", "page"},
		{"/index.html", "br", "text/html; charset=utf-8", "", "page"},
		{"/web/app.wasm", "gzip, deflate, br", "application/wasm", "br", "br"},
		{"/web/app.wasm", "gzip", "application/wasm", "gzip", "gz"},
		{"/web/app.wasm", "br;q=0, gzip;q=0.5", "application/wasm", "gzip", "gz"},
		{"/web/app.wasm", "", "application/wasm", "", "program"},
	} {
		w := served(t, dir, http.MethodGet, test.path, "Accept-Encoding", test.accept)
		h := w.Result().Header
		if w.Code != http.StatusOK || w.Body.String() != test.body || h.Get("Content-Type") != test.kind || h.Get("Content-Encoding") != test.encoding {
			t.Errorf("%s with %q: %d %q, %v", test.path, test.accept, w.Code, w.Body, h)
		}
		if h.Get("Cache-Control") != "no-cache" {
			t.Errorf("%s: Cache-Control %q", test.path, h.Get("Cache-Control"))
		}
		again := served(t, dir, http.MethodGet, test.path, "Accept-Encoding", test.accept, "If-None-Match", h.Get("ETag"))
		if again.Code != http.StatusNotModified || again.Body.Len() != 0 {
			t.Errorf("%s asked for again: %d, %d bytes", test.path, again.Code, again.Body.Len())
		}
	}
	if w := served(t, dir, http.MethodHead, "/"); w.Code != http.StatusOK || w.Body.Len() != 0 || w.Result().Header.Get("Content-Length") != "4" {
		t.Errorf("HEAD: %d, %v", w.Code, w.Result().Header)
	}
	if w := served(t, dir, http.MethodPost, "/"); w.Code != http.StatusMethodNotAllowed {
		t.Errorf("POST: %d", w.Code)
	}
}

// Nothing outside of the folder is served, by whatever way it is asked for.
func TestServesNothingElse(t *testing.T) {
	base := t.TempDir()
	dir := filepath.Join(base, "dist")
	write(t, filepath.Join(dir, "index.html"), "page")
	write(t, filepath.Join(base, "secret.txt"), "secret")
	write(t, filepath.Join(base, "other/index.html"), "secret")
	for link, to := range map[string]string{"link.txt": "../secret.txt", "whole.txt": filepath.Join(base, "secret.txt"), "folder": "../other"} {
		if err := os.Symlink(to, filepath.Join(dir, link)); err != nil {
			t.Fatal(err)
		}
	}
	for _, path := range []string{
		"/../secret.txt", "/web/../../secret.txt", "//secret.txt", "/./../secret.txt", "/link.txt", "/whole.txt",
		"/folder/", "/folder/index.html", "/none", "/web", "/..", "/.", "/index.html/", `/..\secret.txt`, "/%2e%2e/secret.txt",
		filepath.Join(base, "secret.txt"), "/\x00",
	} {
		w := served(t, dir, http.MethodGet, path)
		if w.Code != http.StatusNotFound || bytes.Contains(w.Body.Bytes(), []byte("secret\n")) || w.Body.String() == "secret" {
			t.Errorf("%q: %d %q, want not found", path, w.Code, w.Body)
		}
	}
}

func TestRunServeWithoutSite(t *testing.T) {
	var out, problems bytes.Buffer
	if status := RunServe([]string{"-dir", t.TempDir()}, &out, &problems); status != 1 || problems.Len() == 0 {
		t.Errorf("status %d, %q", status, problems.String())
	}
	if status := RunServe([]string{"more"}, &out, &problems); status != 2 {
		t.Errorf("status %d for an argument too many, want 2", status)
	}
}
