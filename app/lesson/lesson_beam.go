package lesson

import (
	"math"
	"strconv"

	"standingbeam/calc"
)

// beam: a wall is a beam standing on end. The control turns the one into the
// other.
var beam = lesson{
	id: "beam", right: 2,
	stops:   beamStops,
	start:   func(*kit) float64 { return 0 },
	prints:  func(*kit) [3]float64 { return [3]float64{0, 45, 90} },
	measure: measureBeam,
	show:    showBeam,
}

func beamStops(k *kit) []stop {
	out := make([]stop, 0, 19)
	for a := 0; a <= 90; a += 5 {
		s := stop{at: float64(a), text: strconv.Itoa(a) + "°", slug: strconv.Itoa(a) + "deg"}
		switch a {
		case 0:
			s.text = k.sp.Word("lesson.beam.at.lying")
		case 90:
			s.text = k.sp.Word("lesson.beam.at.standing")
		}
		out = append(out, s)
	}
	return out
}

// beamWall is a wall with ground to its top.
func (k *kit) beamWall() calc.Input { return k.held(k.pick(8*ft, mm(2400)), k.pick(8*ft, mm(2400))) }

func measureBeam(k *kit) facts {
	r := answer(k.beamWall())
	at := most(stageOf(&r, calc.Finished)).At
	return facts{answer: []string{k.about(at), k.sp.Length(r.Input.Height)}}
}

// turned is the picture's group in which the beam stands upright, with where
// its spots come to lie.
type turned struct{ cx, cy, angle float64 }

func (t turned) spot(p spot) spot {
	sin, cos := math.Sincos(t.angle * math.Pi / 180)
	dx, dy := p.x-t.cx, p.y-t.cy
	return spot{t.cx + dx*cos - dy*sin, t.cy + dx*sin + dy*cos}
}

func showBeam(k *kit) {
	in0 := k.beamWall()
	r := answer(in0)
	st := stageOf(&r, calc.Finished)
	up := k.at / 90
	length := math.Min(0.72*k.w, 0.76*k.h)
	t := turned{k.w * 0.5, k.h * 0.52, 90 - k.at}
	w := &stand{s: k.scene, h: in0.Height.Inches(), t: in0.Thickness.Inches(), bend: straight()}
	w.k = length / w.h
	w.x, w.y = t.cx-w.t*w.k/2, t.cy+length/2
	_, u := st.Service.MaxDeflection()
	w.bend = elastic(&st.Service, share(0.09*length, u.Inches()))
	k.raw(`<g transform="rotate(` + digits(t.angle) + " " + digits(t.cx) + " " + digits(t.cy) + `)">`)
	k.turn = t
	reach := 0.34 * length
	heap := share(reach, pressure(st, 'a', 0))
	if up > 0.5 {
		k.fade(2*up-1, func() { k.earth(w.bank(w.h, calc.FaceA)) })
	}
	k.earth(w.figure(st, 'a', w.h, heap))
	k.beamProps(w, up)
	_, b := w.faceX()
	c := bending{d: &st.Service, a: w.x, b: b, px: share(0.3*length, float64(most(st).Service))}
	if !k.asking {
		w.curve(c, true)
	}
	w.draw()
	w.push(st, 'a', w.h, heap)
	if !k.asking {
		w.mark(c)
	}
	k.raw(`</g>`)
	k.turn, k.blocks = turned{}, nil
	k.beamLabels(w, t, c, reach)
	id := "beam.say.turn"
	if k.at == 0 {
		id = "beam.say.lying"
	} else if k.at == 90 {
		id = "beam.say.standing"
	}
	k.tell(id, k.about(most(st).At))
}

// beamProps are two sawhorses that become slab and floor.
func (k *kit) beamProps(w *stand, up float64) {
	_, b := w.faceX()
	k.fade(1-up, func() {
		for _, level := range []float64{0, w.h} {
			y := w.px(level) + (level/w.h-0.5)*8
			k.path("leg", new(track).move(b+2, y).to(b+0.3*w.h*w.k, y-14).move(b+2, y).to(b+0.3*w.h*w.k, y+14))
		}
	})
	k.fade(up, func() {
		long := 0.5 * w.h * w.k
		k.rect("wood", b-w.t*w.k*0.9, w.px(w.h)-11, long+w.t*w.k, 11)
		k.concrete(box(b+1, w.px(0)-8, long, 9))
	})
}

// fade draws with less and less of its colour, nothing at 0.
func (k *kit) fade(v float64, draw func()) {
	if v <= 0.02 {
		return
	}
	k.raw(`<g opacity="` + digits(v) + `">`)
	draw()
	k.raw(`</g>`)
}

func (k *kit) beamLabels(w *stand, t turned, c bending, reach float64) {
	tip := t.spot(spot{w.x - reach - 12, w.px(0)})
	ground := "lesson.beam.sand"
	if k.at > 45 {
		ground = "lesson.beam.ground"
		tip.y -= 0.3 * k.at
	}
	k.call("push", k.sp.Word(ground), anchor{tip.x, tip.y, 0}, anchor{tip.x, tip.y, -1}, anchor{tip.x - 10, tip.y - 20, -1})
	if k.asking {
		return
	}
	level, _ := peak(c.d)
	p := t.spot(spot{c.at(level), w.px(level)})
	under, beside := anchor{p.x + k.at/3, p.y + 20, 0}, anchor{p.x + 12, p.y, 1}
	if k.at > 60 {
		under, beside = beside, under
	}
	k.name(k.sp.Word("lesson.beam.most"), 0.3*k.w, p, under, beside, anchor{k.w - 4, p.y + 70, -1}, anchor{k.w - 4, p.y - 90, -1})
}
