package calc_test

import (
	"math"

	"standingbeam/calc"
)

// alone is a wall with nothing at its top, computed by hand: pounds, inches,
// psi, from the expressions as the standards print them. It knows the answer
// by its list of bars only.
type alone struct {
	h, t, fc, fy      float64
	g, k, q, weight   float64 // fluid pci, K, surcharge psi, soil pci
	width, tf, toe    float64
	bearing, friction float64
	slabIn            bool
	dowel             struct{ area, db, spacing, up, down, d, cover float64 }
	steel, d          float64 // verticals for tension on the soil side, in²/in and in
	lapped            []layer // what laps at the dowels
	low, lowFactor    float64 // fill on the other side, and its factor in strength
	steps             float64 // by how much the steps of y may miss a moment, relative
}

// layer is one of verticals: its bars and their ld, in.
type layer struct{ db, ld float64 }

const concretePCI = 150.0 / 1728

// aloneOf reads a wall held by the floor, of a given fluid, without water.
func aloneOf(in calc.Input, r calc.Result) alone {
	w := alone{h: float64(in.Height), t: float64(in.Thickness), fc: float64(in.Today.Concrete), fy: float64(in.Material.Fy),
		g: float64(in.Soil.Fluid), weight: float64(in.Soil.Weight), q: float64(in.Surcharge.Dead + in.Surcharge.Live),
		width: float64(in.Footing.Width), tf: float64(in.Footing.Thickness), toe: float64(in.Footing.Width-in.Thickness) / 2,
		bearing: float64(in.Footing.Bearing), friction: in.Footing.Friction, slabIn: in.Today.Slab}
	w.k = w.g / w.weight
	size := map[int][2]float64{3: {0.11, 0.375}, 4: {0.20, 0.5}, 5: {0.31, 0.625}, 6: {0.44, 0.75}, 7: {0.60, 0.875}, 8: {0.79, 1}}
	depth := func(b calc.Bar) float64 { // for tension on the soil side
		switch b.Face {
		case calc.FaceA:
			return float64(b.Depth)
		case calc.FaceB:
			return w.t - float64(b.Depth)
		}
		return w.t / 2
	}
	for _, b := range r.Bars {
		s := size[b.Size]
		switch b.Role {
		case calc.DowelBar:
			w.dowel.area, w.dowel.db, w.dowel.spacing = s[0], s[1], float64(b.Spacing)
			w.dowel.up, w.dowel.down, w.dowel.d = float64(b.Up), float64(b.Down), depth(b)
			w.dowel.cover = w.t - float64(b.Depth) - s[1]/2
		case calc.VerticalBar, calc.SoilVerticalBar:
			v := layer{s[1], straight(s[1], float64(b.Cover), w.fy, w.fc)}
			switch {
			case in.Dowels.Fixed || len(w.lapped) == 0:
				w.lapped = append(w.lapped, v)
			case b.Face == calc.FaceA: // the dowels match it
				w.lapped = []layer{v}
			}
			if a, d := s[0]/float64(b.Spacing), depth(b); flexure(a, w.fy, w.fc, d) > flexure(w.steel, w.fy, w.fc, w.d) {
				w.steel, w.d = a, d
			}
		}
	}
	return w
}

// flexure is φMn of ACI 318-19 22.2 and 21.2.2: the neutral axis c at which
// the concrete's push is the bars' pull is found by halving.
func flexure(as, fy, fc, d float64) float64 {
	if as <= 0 || d <= 0 {
		return 0
	}
	beta := min(0.85, max(0.65, 0.85-0.05*(fc-4000)/1000))
	low, high := 0.0, d
	var strain, stress float64
	for range 100 {
		c := (low + high) / 2
		strain = 0.003 * (d - c) / c
		stress = min(fy, 29e6*strain)
		if 0.85*fc*beta*c < as*stress {
			low = c
		} else {
			high = c
		}
	}
	phi := min(0.9, max(0.65, 0.65+0.25*(strain-fy/29e6)/0.003))
	return phi * as * stress * (d - beta*low/2)
}

// straight is ld of 25.4.2.3 before its minimum, for bars 3 db apart or more.
func straight(db, cover, fy, fc float64) float64 {
	psiG, under := 1.0, 25.0
	if fy > 60000 {
		psiG = 1.15
	}
	if db > 0.8 {
		under = 20
	}
	ld := fy * psiG / (under * math.Sqrt(fc)) * db
	if cover < db {
		ld *= 1.5
	}
	return ld
}

// development is ld of the dowels, and ldh of 25.4.3.1 for bars 6 db apart.
func (w alone) development() (ld, hook float64) {
	psiC := min(1, w.fc/15000+0.6)
	hook = w.fy * psiC / (55 * math.Sqrt(w.fc)) * math.Pow(w.dowel.db, 1.5)
	return max(12, straight(w.dowel.db, w.dowel.cover, w.fy, w.fc)), max(hook, 8*w.dowel.db, 6)
}

// own is the section's strength above the dowels: plain, or that of the
// verticals as far as the dowels lap with them: class B (25.5.2.1), of two sizes
// the greater of ld of the larger and the lap of the smaller (25.5.2.2).
func (w alone) own() float64 {
	if w.steel <= 0 {
		return 0.6 * 5 * math.Sqrt(w.fc) * w.t * w.t / 6
	}
	own, lap := layer{w.dowel.db, straight(w.dowel.db, w.dowel.cover, w.fy, w.fc)}, 12.0
	for _, v := range w.lapped {
		switch {
		case v.db > own.db:
			lap = max(lap, v.ld, 1.3*own.ld)
		case v.db < own.db:
			lap = max(lap, own.ld, 1.3*v.ld)
		default:
			lap = max(lap, 1.3*v.ld, 1.3*own.ld)
		}
	}
	return flexure(w.steel*min(1, w.dowel.up/lap), w.fy, w.fc, w.d)
}

// ductile is the most that a tension-controlled section gives at the dowels' d:
// εt = εty + 0.003 (Table 21.2.2).
func (w alone) ductile() float64 {
	a := min(0.85, max(0.65, 0.85-0.05*(w.fc-4000)/1000)) * 0.003 / (0.006 + w.fy/29e6) * w.dowel.d
	return 0.9 * 0.85 * w.fc * a * (w.dowel.d - a/2)
}

// factored is the moment and the shear at level y of a fill to a, 1.6 on it,
// less the fill on the other side.
func (w alone) factored(a, y float64) (m, v float64) {
	z, o := max(0, a-y), max(0, w.low-y)
	return 1.6*(w.g*z*z*z/6+w.k*w.q*z*z/2) - w.lowFactor*w.g*o*o*o/6, 1.6*(w.g*z*z/2+w.k*w.q*z) - w.lowFactor*w.g*o*o/2
}

// hair lets a limit that is met exactly hold, and fail for the inch above.
func (w alone) hair() float64 {
	if w.steps > 0 {
		return 1 - 1e-9
	}
	return 1 + 1e-9
}

// failing lists what fails with a fill to a. The heel is left out: the walls
// asked about have short ones.
func (w alone) failing(a float64) (out []string) {
	fails := func(id string, bad bool) {
		if bad {
			out = append(out, id)
		}
	}
	hair := w.hair()
	m, v := w.factored(a, 0)
	ld, hook := w.development()
	share := min(1, w.dowel.up/ld, w.dowel.down/hook)
	as := w.dowel.area / w.dowel.spacing
	fails("joint-bending", m > flexure(as*share, w.fy, w.fc, w.dowel.d)*hair)
	fails("joint-shear-friction", !w.slabIn && v > 0.75*min(0.6*as*share*min(w.fy, 60000), min(0.2*w.fc, 800)*w.t)*hair)
	fails("shear", v > w.shear()*hair)
	// The dowels give less and less up to their end; above it the section stands
	// alone against a moment that only falls.
	own := w.own()
	if own > w.ductile() {
		fails("section-above-dowels", m > own*hair) // so many dowels do not help it
		return append(out, w.unstable(a)...)
	}
	for y := 0.0; y <= min(a, w.dowel.up); y += 0.02 {
		m, _ := w.factored(a, y)
		if m <= own {
			break
		}
		if m*(1+w.steps) > flexure(as*min(share, (w.dowel.up-y)/ld), w.fy, w.fc, w.dowel.d)*hair {
			fails("section-above-dowels", true)
			break
		}
	}
	return append(out, w.unstable(a)...)
}

// shear is φVc of Table 22.5.5.1(c) with the verticals, else of 14.5.5.1.
func (w alone) shear() float64 {
	if w.steel <= 0 {
		return 0.6 * 4 / 3 * math.Sqrt(w.fc) * w.t
	}
	size := min(1, math.Sqrt(2/(1+w.d/10)))
	return 0.75 * min(8*size*math.Cbrt(w.steel/w.d), 5) * math.Sqrt(w.fc) * w.d
}

func (w alone) unstable(a float64) (out []string) {
	heel := w.width - w.toe - w.t
	stem, base, soil := w.t*w.h*concretePCI, w.width*w.tf*concretePCI, heel*a*w.weight
	z := a + w.tf
	p, mo := w.g*z*z/2+w.k*w.q*z, w.g*z*z*z/6+w.k*w.q*z*z/2
	n := stem + base + soil
	mr := stem*(w.toe+w.t/2) + base*w.width/2 + soil*(w.width-heel/2)
	back, backM := 0.0, 0.0 // the other side's push, down to the footing's bottom
	if w.lowFactor > 0 && w.low > 0 {
		o, toeSoil := w.low+w.tf, w.toe*w.low*w.weight
		back, backM = w.g*o*o/2, w.g*o*o*o/6
		n, mr = n+toeSoil, mr+toeSoil*w.toe/2
	}
	if (mr+backM)*w.hair() < 1.5*mo {
		out = append(out, "overturning")
	}
	if !w.slabIn && (w.friction*n+back)*w.hair() < 1.5*p {
		out = append(out, "sliding")
	}
	for _, q := range []float64{0, w.q * heel} {
		n, x := n+q, (mr+backM+q*(w.width-heel/2)-mo)/(n+q)
		e := w.width/2 - x
		most := n / w.width * (1 + 6*math.Abs(e)/w.width)
		if math.Abs(e) > w.width/6 {
			most = 2 * n / (3 * min(x, w.width-x))
		}
		if most > w.bearing*w.hair() || x <= 0 {
			out = append(out, "bearing")
			break
		}
	}
	if w.toeFails(n, mr, mo, backM) {
		out = append(out, "toe-flexure")
	}
	return out
}

// toeFails asks the plain toe under 1.4 D, 0.9 D + 1.6 H and 1.2 D + 1.6 H, the latter
// with and without the surcharge on the heel, each with its own resultant; one
// outside the base puts all of N at the edge, and the toe's own weight is then
// not taken off. Shear at h from the stem; h is 2 in less than specified
// (14.5.1.7).
func (w alone) toeFails(n, mr, mo, back float64) bool {
	h, root := w.tf-2, math.Sqrt(w.fc)
	heel := w.width - w.toe - w.t
	for _, f := range [][3]float64{{1.4, 0, 0}, {0.9, 0, 1}, {1.2, 0, 1}, {1.2, 1.6 * w.q * heel, 1}} {
		own := f[0] * w.tf * concretePCI
		down := f[0]*n + f[1]
		x := (f[0]*mr + f[1]*(w.width-heel/2) + f[2]*(w.lowFactor*back-1.6*mo)) / down
		if x <= 0 {
			own = 0
		}
		m, _ := w.under(down, x, w.toe)
		if m-own*w.toe*w.toe/2 > 0.6*5*root*h*h/6*w.hair() {
			return true
		}
		if rest := w.toe - h; rest > 0 {
			if _, v := w.under(down, x, rest); v-own*rest > 0.6*4/3*root*h*w.hair() {
				return true
			}
		}
	}
	return false
}

// under is the moment and the sum of the pressure under the outer l of the
// toe, of n at x from the toe's edge.
func (w alone) under(n, x, l float64) (m, v float64) {
	if x <= 0 {
		return n * l, n
	}
	e := w.width/2 - x
	q, slope, contact := n/w.width*(1+6*e/w.width), 12*n*e/(w.width*w.width*w.width), w.width
	if e > w.width/6 {
		contact = 3 * x
		q, slope = 2*n/contact, 2*n/contact/contact
	}
	if l > contact {
		return q * contact / 2 * (l - contact/3), q * contact / 2
	}
	return q*l*l/2 - slope*l*l*l/6, q*l - slope*l*l/2
}
