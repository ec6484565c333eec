package sheet

import (
	"os"
	"testing"

	"standingbeam/app/words"
)

func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	for name, w := range walls() {
		r := answered(t, w)
		o := Options{Job: "Mill Lane 4", Date: "25 Nov", Person: "A. Mason"}
		write := func(end, s string) { os.WriteFile(dir+"/"+name+end, []byte(s), 0o644) }
		write(".svg", SVG(r, o))
		write(".dxf", DXF(r, o))
		write("-crew.html", Crew(r, o))
		write("-calc.html", Calculation(r, o))
		o.Paper, o.Speaker.System = A4, words.Metric
		write("-crew-a4.html", Crew(r, o))
		write("-calc-a4.html", Calculation(r, o))
	}
}
