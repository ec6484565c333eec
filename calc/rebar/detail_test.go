package rebar

import (
	"math"
	"testing"

	"standingbeam/calc/internal/reference"
	"standingbeam/calc/units"
)

func TestHooks(t *testing.T) {
	for _, r := range reference.Rows(t, "aci/hooks.csv") {
		s := grade60(r.Number("fc"))
		s.SpacingSixDb, s.SideCoverSixDb = r.Text("psi r") == "1", r.Text("psi o") == "1"
		r.Near("ldh", Hook(bar(t, r.Int("bar")), s, nil).Inches())
	}
}

// Bends and hooks as a shop lists them. From No. 9 on the list is made from a
// bend diameter rounded to the inch, hence half an inch of tolerance.
func TestHookShapes(t *testing.T) {
	for _, r := range reference.Rows(t, "aci/hook_shapes.csv") {
		b := bar(t, r.Int("bar"))
		tol := 1e-9
		if b.Number >= 9 {
			tol = 0.5
		}
		r.Within("d", BendDiameter(b).Inches(), tol)
		r.Within("leg", HookLeg(b).Inches(), tol)
		r.Within("width", HookFoldWidth(b).Inches(), tol)
	}
	// 25.3.1: tails of 12 db, and of 4 db or 2.5 in for a fold.
	for _, c := range []struct {
		number     int
		tail, fold float64
	}{{3, 4.5, 2.5}, {5, 7.5, 2.5}, {8, 12, 4}} {
		b := bar(t, c.number)
		if math.Abs(HookTail(b).Inches()-c.tail) > 1e-12 || math.Abs(HookFoldTail(b).Inches()-c.fold) > 1e-12 {
			t.Errorf("No. %d: tails %v and %v, want %v and %v", c.number, HookTail(b), HookFoldTail(b), c.tail, c.fold)
		}
	}
}

// 25.5.1.3: lap/5 up to 30 in of lap, then 6 in.
func TestNoncontactGap(t *testing.T) {
	for lap, want := range map[units.Length]float64{20: 4, 30: 6, 48: 6, 0: 0, -5: 0} {
		if got := NoncontactGapLimit(lap); math.Abs(got.Inches()-want) > 1e-12 {
			t.Errorf("gap of a lap of %v is %v, want %v", lap, got, want)
		}
	}
}

// 25.5.5.1 by hand: No. 5, Grade 60: 0.0005·60,000·0.625 = 18.75 in, a third
// more below 3,000 psi, 25 in; Grade 80: (0.0009·80,000 − 24)·0.625 = 30 in.
func TestCompressionLap(t *testing.T) {
	for _, c := range []struct{ fc, fy, want float64 }{{3000, 60000, 18.75}, {2500, 60000, 25}, {4000, 80000, 30}, {4000, 40000, 12.5}} {
		s := Setting{Fc: units.Stress(c.fc), Fy: units.Stress(c.fy)}
		if got := CompressionLap(bar(t, 5), s, nil); math.Abs(got.Inches()-c.want) > 1e-9 {
			t.Errorf("f'c %v, fy %v: %v, want %v", c.fc, c.fy, got, c.want)
		}
	}
}

// Table 20.5.1.3.1.
func TestCover(t *testing.T) {
	for _, c := range []struct {
		number int
		e      Exposure
		want   float64
	}{
		{5, Sheltered, 0.75}, {11, Sheltered, 0.75}, {5, Exposed, 1.5}, {6, Exposed, 2}, {4, AgainstSoil, 3}, {4, Exposure(9), 3},
	} {
		if got := Cover(bar(t, c.number), c.e); math.Abs(got.Inches()-c.want) > 1e-12 {
			t.Errorf("cover of No. %d, exposure %d is %v, want %v", c.number, c.e, got, c.want)
		}
	}
}

// 25.2.1: 1 in, the bar, or 4/3 of the stone, whichever is most.
func TestClearSpacing(t *testing.T) {
	for _, c := range []struct {
		number      int
		stone, want float64
	}{{4, 0.5, 1}, {4, 1, 4.0 / 3}, {11, 0.75, 1.41}} {
		b := bar(t, c.number)
		got := ClearSpacing(b, units.Length(c.stone))
		if math.Abs(got.Inches()-c.want) > 1e-9 {
			t.Errorf("No. %d with stones of %v in: %v clear, want %v", c.number, c.stone, got, c.want)
		}
		if !Fits(b, got+b.Diameter+0.01, units.Length(c.stone)) || Fits(b, got+b.Diameter-0.01, units.Length(c.stone)) {
			t.Errorf("No. %d does not fit where it should", c.number)
		}
	}
}

func TestSmallRules(t *testing.T) {
	if IsTopBar(12*units.Inch) || !IsTopBar(12.1*units.Inch) { // Table 25.4.2.5: more than 12 in
		t.Error("top bars begin above 12 in of concrete")
	}
	if NeedsTies(60*units.KSI, 4) || NeedsTies(80*units.KSI, 6) || !NeedsTies(80*units.KSI, 5) { // 25.4.2.2
		t.Error("ties are for Grade 80 nearer than 6 in")
	}
	for _, c := range []struct{ have, need, want float64 }{{6, 12, 0.5}, {15, 12, 1}, {0, 12, 0}, {-1, 12, 0}, {5, 0, 0}} {
		if got := Share(units.Length(c.have), units.Length(c.need)); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%v of %v holds %v, want %v", c.have, c.need, got, c.want)
		}
	}
}
