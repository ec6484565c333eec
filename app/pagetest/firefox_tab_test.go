//go:build browser

package pagetest

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"
)

// openFirefox opens a page in a Firefox of its own, to be used as a tab of
// Chromium is: it fails the test for the same reasons.
func openFirefox(t *testing.T, s screen) *tab {
	t.Helper()
	p := &tab{t: t}
	t.Cleanup(func() {
		p.mu.Lock()
		defer p.mu.Unlock()
		for _, problem := range p.problems {
			t.Error(problem)
		}
	})
	p.fox = startFirefox(t, p.heard)
	p.fox.call("browsingContext.setViewport", map[string]any{"context": p.fox.page,
		"viewport": map[string]any{"width": s.width, "height": s.height}}, nil)
	return p
}

// heard notes what must not happen on any page.
func (p *tab) heard(method string, params json.RawMessage) {
	switch method {
	case "log.entryAdded":
		var entry struct{ Level, Text string }
		if err := json.Unmarshal(params, &entry); err != nil || entry.Level == "error" {
			p.note("Firefox: " + entry.Text)
		}
	case "network.beforeRequestSent":
		var sent struct{ Request struct{ URL string } }
		if err := json.Unmarshal(params, &sent); err != nil {
			p.note(err.Error())
		}
		p.request(sent.Request.URL)
	}
}

// navigate goes to an address, or loads the page again when it is "".
func (f *firefox) navigate(address string) {
	f.t.Helper()
	if address == "" {
		f.call("browsingContext.reload", map[string]any{"context": f.page, "wait": "complete"}, nil)
		return
	}
	f.call("browsingContext.navigate", map[string]any{"context": f.page, "url": address, "wait": "complete"}, nil)
}

// evaluate reads the value of an expression, which may be a promise.
func (f *firefox) evaluate(expression string, value any) error {
	data, err := f.send("script.evaluate", map[string]any{
		"expression":   "(async () => JSON.stringify(await (" + expression + ")) ?? 'null')()",
		"target":       map[string]any{"context": f.page},
		"awaitPromise": true,
	})
	if err != nil {
		return err
	}
	var got struct {
		Type             string
		Result           struct{ Value string }
		ExceptionDetails struct{ Text string }
	}
	if err := json.Unmarshal(data, &got); err != nil {
		return err
	}
	if got.Type != "success" {
		return fmt.Errorf("%s", got.ExceptionDetails.Text)
	}
	return json.Unmarshal([]byte(got.Result.Value), value)
}

// pointer runs the actions of a finger or of the mouse, and lets go.
func (f *firefox) pointer(kind string, actions ...map[string]any) {
	f.t.Helper()
	f.perform(map[string]any{"type": "pointer", "id": kind, "parameters": map[string]any{"pointerType": kind}, "actions": actions})
}

func (f *firefox) perform(source map[string]any) {
	f.t.Helper()
	f.call("input.performActions", map[string]any{"context": f.page, "actions": []any{source}}, nil)
	f.call("input.releaseActions", map[string]any{"context": f.page}, nil)
}

func moveTo(x, y float64) map[string]any {
	return map[string]any{"type": "pointerMove", "x": int(x), "y": int(y), "duration": 0}
}

var (
	press = map[string]any{"type": "pointerDown", "button": 0}
	lift  = map[string]any{"type": "pointerUp", "button": 0}
	rest  = map[string]any{"type": "pause", "duration": 20}
)

// touch presses a place.
func (f *firefox) touch(kind string, x, y float64) {
	f.t.Helper()
	f.pointer(kind, moveTo(x, y), press, rest, lift)
}

// drag moves from a place by dx, dy in steps moves.
func (f *firefox) drag(kind string, x, y, dx, dy float64, steps int) {
	f.t.Helper()
	actions := []map[string]any{moveTo(x, y), press}
	for i := 1; i <= steps; i++ {
		part := float64(i) / float64(steps)
		actions = append(actions, rest, moveTo(x+dx*part, y+dy*part))
	}
	f.pointer(kind, append(actions, rest, lift)...)
}

// The keys of WebDriver (W3C, WebDriver, Keyboard actions) by their names in
// chromedp's package kb.
var firefoxKeys = strings.NewReplacer(kb.Enter, "\ue007", kb.Tab, "\ue004", kb.End, "\ue010", kb.Home, "\ue011",
	kb.ArrowLeft, "\ue012", kb.ArrowUp, "\ue013", kb.ArrowRight, "\ue014", kb.ArrowDown, "\ue015",
	kb.PageUp, "\ue00e", kb.PageDown, "\ue00f", kb.Escape, "\ue00c", kb.Backspace, "\ue003")

// keys presses keys one after the other.
func (f *firefox) keys(keys string) {
	f.t.Helper()
	var actions []map[string]any
	for _, key := range firefoxKeys.Replace(keys) {
		actions = append(actions, map[string]any{"type": "keyDown", "value": string(key)}, map[string]any{"type": "keyUp", "value": string(key)})
	}
	f.perform(map[string]any{"type": "key", "id": "keys", "actions": actions})
}
