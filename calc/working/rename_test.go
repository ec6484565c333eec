package working

import "testing"

func TestRename(t *testing.T) {
	for _, test := range []struct{ formula, want string }{
		{"Pu/(0.75 Pc) + φPu", "Pmax/(0.75 Pc) + φPu"},
		{"max(Mu; Pu (0.6 + Pu,2))", "max(Mu; Pmax (0.6 + Pu,2))"},
		{"", ""},
	} {
		if got := Rename(test.formula, "Pu", "Pmax"); got != test.want {
			t.Errorf("Rename(%q) = %q, want %q", test.formula, got, test.want)
		}
	}
}
