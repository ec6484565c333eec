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
	distDir     = "../../dist"
	programFile = "../../.cache/app.wasm"
	buildTool   = "../../.cache/bin/standingbeam"
	axeFile     = "../../.cache/axe-4.14.1.min.js"
	webDir      = "../../web"
)

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
	scratch = dir
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
	if _, err := exec.LookPath("chromium"); err != nil {
		return "chromium is not installed: make browser"
	}
	for _, need := range []struct{ path, by string }{
		{filepath.Join(distDir, "index.html"), "make site-quick"},
		{filepath.Join(distDir, "web/app.wasm"), "make site-quick"},
		{programFile, "make site-quick"},
		{buildTool, "make site-quick"},
		{axeFile, "make axe"},
	} {
		if _, err := os.Stat(need.path); err != nil {
			return fmt.Sprintf("%s is missing: %s", need.path, need.by)
		}
	}
	return ""
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
