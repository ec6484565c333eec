//go:build browser && bench

package pagetest

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// These measure and print; none judges. The aims stand beside the figures.

func report(t *testing.T, what, aim string, format string, values ...any) {
	t.Helper()
	fmt.Printf("%-58s %s (aim %s)\n", what, fmt.Sprintf(format, values...), aim)
}

// TestBenchTransfer compares the bytes of a first visit with those of the
// empty page.
func TestBenchTransfer(t *testing.T) {
	ours := transferred(t, distDir)
	empty := transferred(t, buildEmpty(t))
	report(t, "first visit, bytes over the network, brotli", "≤ 1.13", "%d, the empty page %d: %.3f", ours, empty, float64(ours)/float64(empty))
}

// transferred is what the page in a folder loads until it is ready.
func transferred(t *testing.T, dir string) int {
	t.Helper()
	h := newHost(t, dir, "/")
	p := openTab(t, phone)
	var mu sync.Mutex
	total := 0.0
	if err := chromedp.Listen(p.ctx, func(event any) {
		if e, ok := event.(*network.EventLoadingFinished); ok {
			mu.Lock()
			total += e.EncodedDataLength
			mu.Unlock()
		}
	}); err != nil {
		t.Fatal(err)
	}
	p.open(h.url(""))
	p.offlineReady()
	mu.Lock()
	defer mu.Unlock()
	return int(total)
}

// buildEmpty builds the empty page, compressed as ours is.
func buildEmpty(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	wasm := filepath.Join(dir, "web/app.wasm")
	runTool(t, nil, "go", "run", "./empty", dir)
	if err := os.MkdirAll(filepath.Dir(wasm), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "web/icon.svg"), []byte(`<svg xmlns="http://www.w3.org/2000/svg"/>`), 0o644); err != nil {
		t.Fatal(err)
	}
	runTool(t, []string{"GOOS=js", "GOARCH=wasm"}, "go", "build", "-ldflags=-s -w", "-trimpath", "-o", wasm, "./empty")
	files, err := filepath.Glob(filepath.Join(dir, "*.*"))
	if err != nil {
		t.Fatal(err)
	}
	runTool(t, nil, "brotli", append([]string{"-q", "11", wasm}, files...)...)
	return dir
}

func runTool(t *testing.T, env []string, name string, args ...string) {
	t.Helper()
	command := exec.Command(name, args...)
	command.Env = append(os.Environ(), env...)
	if said, err := command.CombinedOutput(); err != nil {
		t.Fatalf("%s: %v\n%s", name, err, said)
	}
}

// timed has every page note when it is ready, in ms from its start.
func (p *tab) timed() {
	p.t.Helper()
	p.beforeEachPage(`new MutationObserver(() => {
		if (!window.readyAt && document.documentElement && document.documentElement.dataset.ready === "1") { window.readyAt = performance.now(); }
	}).observe(document, {subtree: true, attributes: true, attributeFilter: ["data-ready"]});`)
}

// TestBenchCold loads the page over a slow mobile network: 1.6 Mbit/s, 150 ms.
func TestBenchCold(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.timed()
	if _, err := chromedp.Call(p.ctx, network.Enable, network.EnableParams{}); err != nil {
		t.Fatal(err)
	}
	slow := network.Conditions{Latency: 150, DownloadThroughput: 1.6e6 / 8, UploadThroughput: 750e3 / 8}
	if _, err := chromedp.Call(p.ctx, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
		MatchedNetworkConditions: []*network.Conditions{&slow}}); err != nil {
		t.Fatal(err)
	}
	p.open(h.url(""))
	paint := eval[float64](p, `performance.getEntriesByName("first-contentful-paint")[0].startTime`)
	largest := eval[float64](p, `new Promise((done) => new PerformanceObserver((list) => {
		const first = list.getEntries().filter((e) => e.startTime < window.readyAt);
		done(first.length ? first[first.length - 1].startTime : -1);
	}).observe({type: "largest-contentful-paint", buffered: true}))`)
	report(t, "slow 4G, first visit: first paint of the answer", "≤ 1000 ms", "%.0f ms, largest part %.0f ms", paint, largest)
	report(t, "slow 4G, first visit: interactive", "≤ 10 s", "%.2f s", eval[float64](p, "readyAt")/1000)
}

// TestBenchWarm starts the page without a network, on a slow processor.
func TestBenchWarm(t *testing.T) {
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.timed()
	p.open(h.url(""))
	p.offlineReady()
	h.stop()
	for _, slower := range []float64{1, 4} {
		p.slow(slower)
		var times []float64
		for range 11 {
			p.reload()
			times = append(times, eval[float64](p, "readyAt"))
		}
		report(t, fmt.Sprintf("warm start without a network, processor %.0f× slower", slower), "≤ 1500 ms at 4×",
			"p50 %.0f ms, p90 %.0f ms", share(times, 0.5), share(times, 0.9))
	}
}

// TestBenchStep measures from an input event to the changed picture. The
// selectors come from BENCH_STEP and BENCH_PICTURE.
func TestBenchStep(t *testing.T) {
	step, picture := env("BENCH_STEP", `[data-step="height+"]`), env("BENCH_PICTURE", "#figure")
	back := strings.ReplaceAll(step, "+", "-")
	h := newHost(t, distDir, "/")
	p := openTab(t, phone)
	p.open(h.url(""))
	for _, slower := range []float64{1, 4} {
		p.slow(slower)
		var changed, drawn []float64
		for i := range 60 {
			button := step
			if i%4 >= 2 {
				button = back
			}
			took := eval[[]float64](p, fmt.Sprintf(`new Promise((done) => {
				const start = performance.now();
				const seen = new MutationObserver(() => {
					seen.disconnect();
					const changed = performance.now() - start;
					requestAnimationFrame(() => setTimeout(() => done([changed, performance.now() - start])));
				});
				seen.observe(document.querySelector(%q), {subtree: true, childList: true, attributes: true, characterData: true});
				document.querySelector(%q).click();
			})`, picture, button))
			changed, drawn = append(changed, took[0]), append(drawn, took[1])
		}
		report(t, fmt.Sprintf("stepper to changed picture, processor %.0f× slower", slower), "p90 < 50 ms at 4×",
			"p50 %.0f ms, p90 %.0f ms; drawn p50 %.0f, p90 %.0f", share(changed, 0.5), share(changed, 0.9), share(drawn, 0.5), share(drawn, 0.9))
	}
}

// share is the value below which a part of the values lie.
func share(values []float64, part float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[min(int(part*float64(len(sorted))), len(sorted)-1)]
}

func env(name, otherwise string) string {
	if value := os.Getenv(name); value != "" {
		return value
	}
	return otherwise
}
