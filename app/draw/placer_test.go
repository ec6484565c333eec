package draw

import (
	"math"
	"testing"
)

func TestPlacerDropsTheLeastLast(t *testing.T) {
	p := placer{w: 120, h: 40, inked: newInked(120, 40)}
	at := []spot{{x: 60, y: 20}}
	p.place([]label{
		{lines: []line{{text: "least"}}, spots: at, rank: rankLeast},
		{lines: []line{{text: "first"}}, spots: at, rank: rankPeak},
	})
	if len(p.done) != 1 || p.done[0].lines[0].text != "first" {
		t.Errorf("the first of labels did not get the only place: %+v", p.done)
	}
	if len(p.lost) != 1 || p.lost[0] != "least" {
		t.Errorf("lost = %v, want the least label", p.lost)
	}
}

// A lesser label is left out where it could only stand on the drawing, and one
// that must be said is not.
func TestPlacerLeavesOutWhatCovers(t *testing.T) {
	for _, most := range []float64{0, 8} {
		p := placer{w: 200, h: 60, inked: newInked(200, 60)}
		p.inked.area(Box{W: 200, H: 60}, 20)
		p.place([]label{{lines: []line{{text: "no. 4"}}, x: 100, y: 30, spots: []spot{{x: 100, y: 30}}, wander: true, most: most}})
		if want := most == 0; (len(p.done) == 1) != want || len(p.lost) > 0 {
			t.Errorf("may cost %v: placed %d, lost %v", most, len(p.done), p.lost)
		}
	}
}

// A leader goes round the wall where it can.
func TestLeadersKeepOutOfTheWall(t *testing.T) {
	p := placer{w: 300, h: 200, inked: newInked(300, 200), solid: [2]Box{{X: 140, Y: 20, W: 20, H: 160}}}
	p.keep(Box{X: 60, Y: 60, W: 80, H: 80})
	p.place([]label{{lines: []line{{text: "500 psf"}}, x: 130, y: 100, tie: 10, wander: true}})
	if len(p.done) != 1 || p.done[0].box.X > 140 {
		t.Errorf("the leader runs through the wall: %+v", p.done)
	}
}

func TestPlacerKeepsClear(t *testing.T) {
	p := placer{w: 300, h: 200, inked: newInked(300, 200)}
	p.keep(Box{X: 100, Y: 60, W: 80, H: 60})
	var all []label
	for range 12 {
		all = append(all, label{lines: []line{{text: "no. 4"}}, x: 140, y: 90, wander: true, tie: 10, spots: []spot{{x: 140, y: 90}}})
	}
	p.place(all)
	if len(p.done) != 12 {
		t.Fatalf("%d of 12 labels found a place", len(p.done))
	}
	for i := range p.taken {
		for j := range i {
			if p.taken[i].overlaps(p.taken[j], margin-1e-9) {
				t.Errorf("%v and %v are closer than the margin", p.taken[i], p.taken[j])
			}
		}
	}
	for _, d := range p.done {
		if !d.leader {
			t.Errorf("a label away from its point has no leader: %+v", d.box)
		}
	}
}

// The sums over the raster give what adding up cell by cell gives.
func TestInkedCost(t *testing.T) {
	k := newInked(200, 120)
	k.area(Box{X: 20, Y: 30, W: 50, H: 40}, 4)
	k.line(0, 0, 199, 119, 2)
	plain := append([]float32(nil), k.cell...)
	for _, b := range []Box{{X: 0, Y: 0, W: 30, H: 40}, {X: 55, Y: 20, W: 61, H: 17}, {X: 150, Y: 90, W: 100, H: 100}} {
		want := 0.0
		c0, r0, c1, r1 := k.clip(b)
		for r := r0; r <= r1; r++ {
			for c := c0; c <= c1; c++ {
				want += float64(plain[k.index(c, r)])
			}
		}
		if got := k.cost(b); math.Abs(got-want) > 1e-3 {
			t.Errorf("cost(%+v) = %v, want %v", b, got, want)
		}
	}
	k.area(Box{X: 0, Y: 0, W: 5, H: 5}, 400)
	if got := k.cost(Box{X: 0, Y: 0, W: 5, H: 5}); got < 30 {
		t.Errorf("ink added after a sum is not counted: %v", got)
	}
}
