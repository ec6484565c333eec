//go:build browser

package pagetest

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/andybalholm/brotli"
)

// serversDir holds servers as Debian builds them, unpacked by `make servers`.
const serversDir = "../../.cache/servers"

// server is a real server that runs on the file that the site describes for it.
type server struct {
	t    *testing.T
	addr string
	stop func()
}

func (s *server) url(rest string) string { return "http://" + s.addr + rest }

// run starts a program and waits until it answers.
func run(t *testing.T, addr, name string, args ...string) *server {
	t.Helper()
	var said bytes.Buffer
	command := exec.Command(name, args...)
	libraries, err := filepath.Abs(serversDir + "/usr/lib/x86_64-linux-gnu")
	if err != nil {
		t.Fatal(err)
	}
	if found, _ := filepath.Glob(serversDir + "/usr/lib/*-linux-*"); len(found) > 0 { // another processor
		libraries, _ = filepath.Abs(found[0])
	}
	command.Env = append(os.Environ(), "LD_LIBRARY_PATH="+libraries)
	command.Stdout, command.Stderr = &said, &said
	if err := command.Start(); err != nil {
		t.Fatalf("%v: make servers", err)
	}
	gone := make(chan struct{})
	go func() { _ = command.Wait(); close(gone) }() // it ends by being stopped
	stop := func() {
		_ = command.Process.Signal(os.Interrupt)
		<-gone
	}
	t.Cleanup(stop)
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
		if c, err := net.Dial("tcp", addr); err == nil {
			_ = c.Close()
			return &server{t, addr, stop}
		}
		select {
		case <-gone:
			t.Fatalf("%s has ended:\n%s", name, said.String())
		default:
		}
	}
	t.Fatalf("%s does not answer:\n%s", name, said.String())
	return nil
}

// freeAddr is an address on which nobody listens.
func freeAddr(t *testing.T) string {
	t.Helper()
	listener, err := net.Listen("tcp", "localhost:0")
	if err != nil {
		t.Fatal(err)
	}
	defer listener.Close()
	_, port, err := net.SplitHostPort(listener.Addr().String())
	if err != nil {
		t.Fatal(err)
	}
	return "localhost:" + port
}

// described is one of the files that are described, with what is particular to
// a machine put in. What is replaced must be there.
func described(t *testing.T, name string, pairs ...string) string {
	t.Helper()
	text := string(readFile(t, "../hosting/"+name))
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("%s does not hold %q", name, pairs[i])
		}
		text = strings.ReplaceAll(text, pairs[i], pairs[i+1])
	}
	return text
}

func writeFile(t *testing.T, name, text string) {
	t.Helper()
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// Debian's nginx with its own kinds of files and its packing on, as Debian
// sets it up, and our file beside.
func runNginx(t *testing.T, www string) *server {
	t.Helper()
	dir, addr := t.TempDir(), freeAddr(t)
	writeFile(t, dir+"/beam.conf", described(t, "nginx.conf", "listen 80;", "listen "+addr+";", "root /srv/www;", "root "+www+";"))
	writeFile(t, dir+"/nginx.conf", fmt.Sprintf(`daemon off; pid %[1]s/pid; error_log stderr;
		events {}
		http {
			default_type application/octet-stream; types { text/html html; text/css css; application/javascript js; }
			access_log off; gzip on; sendfile on;
			client_body_temp_path %[1]s/b; proxy_temp_path %[1]s/p; fastcgi_temp_path %[1]s/f; uwsgi_temp_path %[1]s/u; scgi_temp_path %[1]s/s;
			include %[1]s/beam.conf;
		}`, dir))
	program, err := filepath.Abs(serversDir + "/usr/sbin/nginx")
	if err != nil {
		t.Fatal(err)
	}
	if os.Getuid() == 0 { // its workers else become nobody, who may not read a test's folder
		conf := string(readFile(t, dir+"/nginx.conf"))
		writeFile(t, dir+"/nginx.conf", "user root;"+conf)
	}
	return run(t, addr, program, "-p", dir, "-c", dir+"/nginx.conf", "-e", "stderr")
}

// Debian's Apache with the modules that it has on by itself and the two that
// our file needs.
func runApache(t *testing.T, www string) *server {
	t.Helper()
	dir, addr := t.TempDir(), freeAddr(t)
	root, err := filepath.Abs(serversDir)
	if err != nil {
		t.Fatal(err)
	}
	writeFile(t, www+"/tools/beam/.htaccess", described(t, "htaccess"))
	writeFile(t, dir+"/mime.types", "application/x-gzip gz\ntext/javascript js\n")
	var modules strings.Builder
	for _, m := range []string{"mpm_event", "authz_core", "dir", "mime", "negotiation", "deflate", "filter", "rewrite", "headers"} {
		fmt.Fprintf(&modules, "LoadModule %s_module %s/usr/lib/apache2/modules/mod_%s.so\n", m, root, m)
	}
	writeFile(t, dir+"/apache.conf", fmt.Sprintf(`%sServerRoot %s
		Listen %s
		ServerName localhost
		PidFile %[2]s/pid
		Mutex file:%[2]s
		DefaultRuntimeDir %[2]s
		ErrorLog /dev/stderr
		TypesConfig %[2]s/mime.types
		AddOutputFilterByType DEFLATE text/html text/css text/javascript application/wasm image/svg+xml
		DocumentRoot %[4]s
		<Directory %[4]s>
			Options FollowSymLinks Indexes MultiViews
			AllowOverride FileInfo Indexes Options
			Require all granted
		</Directory>
		`, modules.String(), dir, strings.Replace(addr, "localhost", "127.0.0.1", 1), www))
	return run(t, addr, root+"/usr/sbin/apache2", "-d", dir, "-f", dir+"/apache.conf", "-D", "FOREGROUND")
}

// The files that are described for nginx and Apache make real servers send
// every file of the site as it wants to be sent, under a path, and the page
// loads from them and then works without them.
func TestHosting(t *testing.T) {
	for name, start := range map[string]func(*testing.T, string) *server{"nginx": runNginx, "apache": runApache} {
		t.Run(name, func(t *testing.T) {
			www := t.TempDir()
			if err := os.Chmod(www, 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.MkdirAll(www+"/tools", 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.CopyFS(www+"/tools/beam", os.DirFS(distDir)); err != nil {
				t.Fatal(err)
			}
			s := start(t, www)
			s.sendsAll(www + "/tools/beam")
			s.sendsElse()
			p := openTab(t, phone)
			p.open(s.url("/tools/beam/"))
			p.offlineReady()
			p.sameSite(distDir)
			s.stop()
			p.reload()
			p.works()
		})
	}
}

// get asks for a path.
func (s *server) get(path string, headers ...string) (*http.Response, []byte) {
	s.t.Helper()
	request, err := http.NewRequest(http.MethodGet, s.url(path), nil)
	if err != nil {
		s.t.Fatal(err)
	}
	request.Header.Set("Accept-Encoding", "identity")
	for i := 0; i+1 < len(headers); i += 2 {
		request.Header.Set(headers[i], headers[i+1])
	}
	response, err := http.DefaultTransport.RoundTrip(request)
	if err != nil {
		s.t.Fatal(err)
	}
	defer response.Body.Close()
	body, err := io.ReadAll(response.Body)
	if err != nil {
		s.t.Fatal(err)
	}
	return response, body
}

// typesWanted of the files of the site, by the end of their names.
var typesWanted = map[string]string{
	".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8", ".txt": "text/plain; charset=utf-8",
	".svg": "image/svg+xml", ".png": "image/png", ".woff2": "font/woff2", ".wasm": "application/wasm", ".webmanifest": "application/manifest+json", ".json": "application/json",
}

// sendsAll asks for every file of the site in every packing.
func (s *server) sendsAll(dir string) {
	s.t.Helper()
	seen := 0
	err := filepath.WalkDir(dir, func(name string, entry os.DirEntry, err error) error {
		if err != nil || entry.IsDir() || strings.HasSuffix(name, ".br") || strings.HasSuffix(name, ".gz") || entry.Name() == ".htaccess" {
			return err
		}
		seen++
		rest, err := filepath.Rel(dir, name)
		if err != nil {
			return err
		}
		s.sends("/tools/beam/"+filepath.ToSlash(rest), name)
		return nil
	})
	if err != nil || seen < 15 {
		s.t.Fatalf("%d files, %v", seen, err)
	}
	s.sends("/tools/beam/", dir+"/index.html")
	s.sends("/tools/beam/?q=1", dir+"/index.html")
	s.sends("/tools/beam/web/app.css?v=abc", dir+"/web/app.css")
}

func (s *server) sends(address, file string) {
	s.t.Helper()
	for accept, want := range map[string]string{
		"identity": "", "gzip": "gzip", "gzip, deflate, br": "br", "gzip, deflate, br, zstd": "br", "br;q=1.0, gzip;q=0.5": "br", "br;q=0, gzip": "gzip", "br;q=0.0": "", "gzip;q=0": "",
	} {
		if _, err := os.Stat(file + ".br"); err != nil {
			want = ""
		}
		response, body := s.get(address, "Accept-Encoding", accept)
		if got := response.Header.Get("Content-Encoding"); got != want || response.StatusCode != http.StatusOK {
			s.t.Errorf("%s for %q: status %d, packed %q, want %q", address, accept, response.StatusCode, got, want)
			continue
		}
		if !bytes.Equal(unpacked(s.t, body, want), readFile(s.t, file)) {
			s.t.Errorf("%s for %q: other bytes than in the file", address, accept)
		}
		s.headers(address, response.Header, typesWanted[path.Ext(file)])
		if accept != "identity" && accept != "gzip, deflate, br" {
			continue
		}
		again, body := s.get(address, "Accept-Encoding", accept, "If-None-Match", response.Header.Get("ETag"))
		if again.StatusCode != http.StatusNotModified || len(body) > 0 {
			s.t.Errorf("%s for %q: asked again with its tag it is sent again, status %d", address, accept, again.StatusCode)
		}
	}
}

func (s *server) headers(address string, got http.Header, kind string) {
	s.t.Helper()
	want := map[string]string{
		"Content-Type": kind, "Cache-Control": "no-cache", "Vary": "Accept-Encoding", "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer",
		"Content-Security-Policy": "frame-ancestors *", "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
		"Access-Control-Allow-Origin": "", "Cross-Origin-Resource-Policy": "", "X-Frame-Options": "", "Set-Cookie": "",
	}
	if strings.Contains(address, "/embed/") {
		want["Access-Control-Allow-Origin"], want["Cross-Origin-Resource-Policy"] = "*", "cross-origin"
	}
	for name, value := range want {
		if all := strings.Join(got.Values(name), " | "); !strings.EqualFold(all, value) {
			s.t.Errorf("%s: %s is %q, want %q", address, name, all, value)
		}
	}
}

func unpacked(t *testing.T, body []byte, encoding string) []byte {
	t.Helper()
	var r io.Reader = bytes.NewReader(body)
	switch encoding {
	case "br":
		r = brotli.NewReader(r)
	case "gzip":
		z, err := gzip.NewReader(r)
		if err != nil {
			t.Fatal(err)
		}
		r = z
	}
	out, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// sendsElse asks for what is no file of the site.
func (s *server) sendsElse() {
	s.t.Helper()
	if response, _ := s.get("/tools/beam"); response.StatusCode != http.StatusMovedPermanently || !strings.HasSuffix(response.Header.Get("Location"), "/tools/beam/") {
		s.t.Errorf("without its stroke the folder leads to %q, status %d", response.Header.Get("Location"), response.StatusCode)
	}
	for _, address := range []string{"/tools/beam/none.js", "/tools/beam/web/none.wasm", "/none", "/tools/beam/../../../../etc/hostname"} {
		if response, _ := s.get(address, "Accept-Encoding", "br"); response.StatusCode != http.StatusNotFound && response.StatusCode != http.StatusBadRequest {
			s.t.Errorf("%s: status %d", address, response.StatusCode)
		}
	}
	for _, folder := range []string{"/tools/beam/web/", "/tools/"} {
		if response, body := s.get(folder); folder == "/tools/beam/web/" && response.StatusCode < 400 {
			s.t.Errorf("%s is listed, status %d:\n%.200s", folder, response.StatusCode, body)
		}
	}
}
