package lesson

import (
	"math"
	"unicode"
	"unicode/utf8"

	"standingbeam/calc"
	"standingbeam/calc/units"
)

const (
	ft = units.Foot
	in = units.Inch
)

// The ground and the materials of the lessons: a silty sand at rest of 45 pcf
// that weighs 120 pcf, concrete of 3,000 psi, steel of 60,000 psi. They are a
// scenario of our own.
const (
	fluid  = 45 * units.PCF
	weight = 120 * units.PCF
	fc     = 3000 * units.PSI
	fy     = 60 * units.KSI
)

// held is a wall held by the floor and by a slab tight to its foot.
func (k *kit) held(h, fill units.Length) calc.Input {
	return calc.Input{
		Condition: calc.BracedTop, Height: h, GradeA: fill, Thickness: k.thick(),
		Foot:     calc.Foot{Held: calc.SlabTight, SlabThickness: k.pick(4*in, mm(100))},
		Soil:     calc.Soil{Basis: calc.SoilFluid, Fluid: fluid, Weight: weight},
		Material: calc.Material{Fc: fc, Fy: fy}, Rulebook: calc.Engineered,
		Footing: calc.Footing{Given: true, Width: k.pick(24*in, mm(600)), Thickness: k.pick(12*in, mm(300)), NoToe: true,
			Bearing: 2000 * units.PSF, Friction: 0.4},
	}
}

// free is the same wall with nothing at its top and nothing before its foot.
func (k *kit) free(h, fill units.Length) calc.Input {
	w := k.held(h, fill)
	w.Condition, w.Foot = calc.FreeTop, calc.Foot{}
	return w
}

// thick is the usual thickness of the lessons' walls.
func (k *kit) thick() units.Length { return k.pick(8*in, mm(200)) }

// answer is what the engine says of a wall. A wall that it refuses has an
// answer without a stage, see [stageOf].
func answer(w calc.Input) calc.Result {
	r, err := calc.Design(w)
	if err != nil {
		return calc.Result{}
	}
	return r
}

// stageOf finds a stage of an answer; one that is not there has nothing in it.
func stageOf(r *calc.Result, name calc.Stage) *calc.StageResult {
	for i := range r.Stages {
		if r.Stages[i].Name == name {
			return &r.Stages[i]
		}
	}
	return &calc.StageResult{}
}

// checkOf finds a check of an answer in a stage.
func checkOf(r *calc.Result, id string, stage calc.Stage) calc.Check {
	for _, c := range r.Checks {
		if c.ID == id && c.Stage == stage {
			return c
		}
	}
	return calc.Check{State: calc.NotApplicable}
}

// most is the greatest factored bending of a stage.
func most(st *calc.StageResult) calc.MomentPeak {
	if len(st.Moments) == 0 {
		return calc.MomentPeak{}
	}
	return st.Moments[0]
}

// thrust is all that pushes on side A at service loads, a foot of wall.
func thrust(st *calc.StageResult) float64 {
	sum := 0.0
	for _, p := range st.Pushes {
		if p.Side != 'b' {
			sum += float64(p.Top+p.Bottom) / 2 * (p.From - p.To).Inches()
		}
	}
	return sum
}

// Quantities as the lessons write them.
func (k *kit) force(lbPerIn float64) string {
	return k.sp.Quantity(units.Quantity{Base: lbPerIn, Kind: units.LineForce})
}

func (k *kit) moment(lbFtPerFt float64) string {
	return k.sp.Quantity(units.Quantity{Base: lbFtPerFt, Kind: units.LineMoment})
}

func (k *kit) strength(psi units.Stress) string {
	return k.sp.Quantity(units.Of(psi, units.Strength))
}

// about writes a length to the nearest inch or centimetre.
func (k *kit) about(l units.Length) string {
	step := k.pick(in, mm(10))
	return k.sp.Length(step * units.Length(math.Round(float64(l/step))))
}

// lowLength writes a height that must not come out higher, in whole inches or
// centimetres.
func (k *kit) lowLength(l units.Length) string {
	step := k.pick(in, mm(10))
	return k.sp.Length(step * units.Length(math.Floor(float64(l/step)+1e-6)))
}

// ends names what ends a fill first, as it stands within a sentence.
func (k *kit) ends(check string) string {
	name := k.sp.Word("name." + check)
	r, n := utf8.DecodeRuneInString(name)
	return string(unicode.ToLower(r)) + name[n:]
}

// times writes how many times one is of another: "1.95".
func (k *kit) times(v float64) string { return k.sp.Number(v, 2) }

// timesOf writes the same where it stands by itself: "× 1.95".
func (k *kit) timesOf(v float64) string { return "× " + k.times(v) }

// safety writes a factor of safety, rounded down.
func (k *kit) safety(v float64) string { return k.sp.Capacity(units.Quantity{Base: v}) }

// borne writes a share of a hundred of what is asked, rounded down.
func (k *kit) borne(v float64) string { return k.sp.Number(math.Floor(100*v+1e-6), 0) + "%" }

// percent writes a share of a hundred.
func (k *kit) percent(v float64) string { return k.sp.Number(100*v, 0) + "%" }
