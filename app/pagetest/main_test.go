//go:build browser

package pagetest

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// What the tests need beside this folder. Each is made by `make test-browser`.
const (
	builtDir     = "../../dist"
	builtProgram = "../../.cache/app.wasm"
	builtTool    = "../../.cache/bin/standingbeam"
	axeFile      = "../../.cache/axe-4.14.1.min.js"
	webDir       = "../../web"
)

// The tests run on copies, so that a build beside them changes nothing.
var scratch, distDir, programFile, buildTool string

// browser is the one browser that most tests share. Each tab of a test has a
// profile of its own.
var browser context.Context

func TestMain(m *testing.M) {
	os.Exit(runTests(m))
}

// runTests never skips: what is missing fails the run.
func runTests(m *testing.M) int {
	if problem := missing(); problem != "" {
		fmt.Fprintln(os.Stderr, "FAIL:", problem)
		return 1
	}
	dir, err := os.MkdirTemp("", "standing-beam-test-")
	if err != nil {
		fmt.Fprintln(os.Stderr, "FAIL:", err)
		return 1
	}
	defer os.RemoveAll(dir)
	if err := copyBuilt(dir); err != nil {
		fmt.Fprintln(os.Stderr, "FAIL:", err)
		return 1
	}
	ctx, stop, err := startBrowser(filepath.Join(dir, "profile"))
	if err != nil {
		fmt.Fprintln(os.Stderr, "FAIL: the browser does not start:", err)
		return 1
	}
	defer stop()
	browser = ctx
	return m.Run()
}

// missing names what the tests cannot run without, or returns "".
func missing() string {
	for _, name := range []string{"chromium", "firefox-esr"} {
		if _, err := exec.LookPath(name); err != nil {
			return name + " is not installed: make browser"
		}
	}
	for _, need := range []struct{ path, by string }{
		{filepath.Join(builtDir, "index.html"), "make site-quick"},
		{filepath.Join(builtDir, "web/app.wasm"), "make site-quick"},
		{builtProgram, "make site-quick"},
		{builtTool, "make site-quick"},
		{axeFile, "make axe"},
	} {
		if _, err := os.Stat(need.path); err != nil {
			return fmt.Sprintf("%s is missing: %s", need.path, need.by)
		}
	}
	return ""
}

// copyBuilt copies what was built into the folder dir.
func copyBuilt(dir string) error {
	scratch = dir
	distDir = filepath.Join(dir, "dist")
	programFile = filepath.Join(dir, "app.wasm")
	buildTool = filepath.Join(dir, "standingbeam")
	if err := os.CopyFS(distDir, os.DirFS(builtDir)); err != nil {
		return err
	}
	for from, to := range map[string]string{builtProgram: programFile, builtTool: buildTool} {
		data, err := os.ReadFile(from)
		if err != nil {
			return err
		}
		if err := os.WriteFile(to, data, 0o755); err != nil {
			return err
		}
	}
	return nil
}

// startBrowser starts a browser on a profile folder. stop ends it gently, so
// that what it stores reaches the disk.
func startBrowser(profile string) (ctx context.Context, stop func(), err error) {
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath("chromium"),
		chromedp.UserDataDir(profile),
		chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("hide-scrollbars", true),
	)
	if os.Getuid() == 0 {
		options = append(options, chromedp.NoSandbox)
	}
	allocator, end := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, _ = chromedp.NewContext(allocator)
	stop = func() {
		_ = chromedp.Cancel(ctx) // the tests have ended; nothing depends on it
		end()
	}
	if err := chromedp.Do(ctx); err != nil {
		stop()
		return nil, nil, err
	}
	return ctx, stop, nil
}
