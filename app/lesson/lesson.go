// Package lesson holds the short lessons that say why a wall needs bars: each
// one idea, one control, one picture and one question that is asked before
// anything is shown. Every number comes from the engine that answers the
// walls.
//
// A lesson is data and two functions: what its sentences state, and what it
// draws. [New] turns a [Form] into a [View] of strings and drawings. It is
// pure: no browser, no clock, nothing kept.
package lesson

import "standingbeam/app/words"

// Form is everything that a screen of lessons is made from.
type Form struct {
	Speaker words.Speaker
	ID      string // of the lesson, "" = the list of all
	At      int    // where the control stands, a stop
	Guess   int    // the answer that was chosen, from 1; 0 = none
	Shown   bool   // the answer is shown
	Picks   [3]int // what is chosen beside the control: soil, thickness, bars
	Cases   [3]int // how the three walls were judged, from 1; 0 = not yet
	Open    bool   // the table of values is open
	Width   float64
	Height  float64 // of the picture, CSS pixels
}

// The lessons in their order.
var all = []lesson{
	beam, height, side, crack, place, water, hold, heel, slab, both, wait, sweep,
}

// judge is the id of the last screen, with three walls to judge.
const judge = "check"

// lesson is one lesson. Its words are those of "lesson.<id>.…".
type lesson struct {
	id      string
	named   bool // the control chooses out of a few
	picks   bool // more is chosen beside it
	flat    bool // nothing bends in its picture
	low     bool // its picture is wide: on paper it is less high
	right   int  // which answer is right, from 1
	stops   func(k *kit) []stop
	start   func(k *kit) float64    // where the control stands at first
	prints  func(k *kit) [3]float64 // where it stands on the hand-out
	measure func(k *kit) facts
	show    func(k *kit)
}

// facts are what the sentences of a lesson state, in the order of their
// places.
type facts struct {
	lead, ask, answer, keep []string
	choices                 [3][]string
}

// kit is what a lesson measures, draws and tells with.
type kit struct {
	*scene
	sp     words.Speaker
	at     float64 // where the control stands
	asking bool    // the answer is not to be seen yet
	picks  [3]int
	told   told
}

// told is what a lesson says of the wall as it stands.
type told struct {
	say    string
	meters []Meter
}

// Meter is a measured thing with a bar: a share of the whole width, and where
// 1 or what is needed lies on it.
type Meter struct {
	Label, Value string
	Share, Mark  float64
	Over         bool // beyond what is borne
}

// find returns the lesson of an id and its place, from 0.
func find(id string) (lesson, int, bool) {
	for i, l := range all {
		if l.id == id {
			return l, i, true
		}
	}
	return lesson{}, 0, false
}

// word is a word of the lesson's own.
func (l *lesson) word(k *kit, name string, args []string) string {
	return k.sp.Sentence("lesson."+l.id+"."+name, args...)
}

// say puts the sentence of an id into what is told.
func (k *kit) tell(id string, args ...string) { k.told.say = k.sp.Sentence("lesson."+id, args...) }

// meter adds a meter: value of most, with a mark at one.
func (k *kit) meter(id, value string, of, most, mark float64, over bool) {
	if most <= 0 {
		return
	}
	k.told.meters = append(k.told.meters, Meter{Label: k.sp.Word("lesson." + id), Value: value,
		Share: limit(of/most, 0, 1), Mark: limit(mark/most, 0, 1), Over: over})
}

func limit(v, lo, hi float64) float64 {
	if v >= lo && v <= hi {
		return v
	}
	if v > hi {
		return hi
	}
	return lo
}
