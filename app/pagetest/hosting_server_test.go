//go:build browser

package pagetest

import (
	"bytes"
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
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
