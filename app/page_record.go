package main

import (
	"encoding/json"

	"standingbeam/app/wallfile"
	"standingbeam/app/words"
)

// The state is kept as typed, readable or not: what a person was in the middle
// of typing comes back as it was. The file for others is in page_file.go.

// record is everything that the page keeps on the device.
type record struct {
	Format int                 `json:"format"`
	Here   int                 `json:"here"`
	Metric bool                `json:"metric,omitempty"`
	Comma  bool                `json:"comma,omitempty"`
	Lang   string              `json:"language,omitempty"`
	Theme  string              `json:"theme,omitempty"`
	Device bool                `json:"device keys,omitempty"`
	Walls  []map[string]string `json:"walls"`
}

const recordFormat = 1

// record writes the state of the page.
func (p *page) record() []byte {
	r := record{Format: recordFormat, Here: p.here, Metric: p.speaker.System == words.Metric, Comma: p.speaker.DecimalComma, Lang: p.speaker.Lang, Theme: p.theme, Device: p.device}
	for _, k := range p.walls {
		typed := map[string]string{}
		for _, path := range paths {
			if text := k.wall.Field(path); text != "" {
				typed[path] = text
			}
		}
		r.Walls = append(r.Walls, typed)
	}
	data, err := json.Marshal(r)
	if err != nil {
		return nil // texts and numbers only: they always marshal
	}
	return data
}

// restore takes up a state that was kept. It is false for one that holds no
// walls or is of a later format.
func (p *page) restore(data []byte) bool {
	var r record
	if err := json.Unmarshal(data, &r); err != nil || r.Format != recordFormat || len(r.Walls) == 0 {
		return false
	}
	walls := make([]kept, 0, len(r.Walls))
	for _, typed := range r.Walls {
		var w wallfile.Wall
		for path, text := range typed {
			w.Set(path, text)
		}
		walls = append(walls, kept{wall: w})
	}
	p.walls, p.here = walls, min(max(r.Here, 0), len(walls)-1)
	p.theme, p.device = r.Theme, r.Device
	p.speaker.System, p.speaker.DecimalComma = words.US, r.Comma
	if r.Lang != "" {
		p.speaker.Lang = words.LanguageFor(r.Lang)
	}
	if r.Metric {
		p.speaker.System = words.Metric
	}
	p.check, p.focus, p.drag = "", "", nil
	return true
}

// paths of every field, in the order of the file.
var paths = func() []string {
	all := wallfile.Fields()
	out := make([]string, 0, len(all))
	for _, f := range all {
		out = append(out, f.Path)
	}
	return out
}()
