package draw

import "math"

// inked is how much of the drawing a label would cover: a raster of cells,
// each with the weight of the ink in it, summed up from the top left so that
// the weight under any box is four look-ups.
type inked struct {
	cols, rows int
	cell       []float32
	summed     bool
}

// cellSize is the side of a cell in pixels.
const cellSize = 6.0

func newInked(w, h float64) inked {
	k := inked{cols: int(w/cellSize) + 2, rows: int(h/cellSize) + 2}
	k.cell = make([]float32, (k.cols+1)*(k.rows+1))
	return k
}

// index is the place of a cell; the first row and column stay empty for the
// sums.
func (k *inked) index(col, row int) int { return (row+1)*(k.cols+1) + col + 1 }

func (k *inked) clip(b Box) (c0, r0, c1, r1 int) {
	c0, r0 = max(0, int(b.X/cellSize)), max(0, int(b.Y/cellSize))
	c1, r1 = min(k.cols-1, int((b.X+b.W)/cellSize)), min(k.rows-1, int((b.Y+b.H)/cellSize))
	return c0, r0, c1, r1
}

// area asks labels to keep clear of a box where they can. The weight is the
// cost of covering 20 by 20 pixels of it.
func (k *inked) area(b Box, weight float64) {
	if b.W <= 0 || b.H <= 0 || !(b.X < 1e4 && b.Y < 1e4 && b.X+b.W > 0 && b.Y+b.H > 0) {
		return
	}
	k.unsum()
	c0, r0, c1, r1 := k.clip(b)
	w := float32(weight * cellSize * cellSize / 400)
	for r := r0; r <= r1; r++ {
		for c := c0; c <= c1; c++ {
			k.cell[k.index(c, r)] += w
		}
	}
}

// line asks labels to keep clear of a line.
func (k *inked) line(x1, y1, x2, y2, weight float64) {
	k.unsum()
	n := int(math.Hypot(x2-x1, y2-y1)/cellSize) + 1
	if n > 400 {
		return
	}
	w := float32(weight * 0.45)
	for i := 0; i < n; i++ {
		t := (float64(i) + 0.5) / float64(n)
		c, r := int((x1+t*(x2-x1))/cellSize), int((y1+t*(y2-y1))/cellSize)
		if c >= 0 && r >= 0 && c < k.cols && r < k.rows {
			k.cell[k.index(c, r)] += w
		}
	}
}

// sum makes the raster ready for cost.
func (k *inked) sum() {
	if k.summed {
		return
	}
	k.summed = true
	stride := k.cols + 1
	for r := 1; r <= k.rows; r++ {
		run := float32(0)
		for c := 1; c <= k.cols; c++ {
			i := r*stride + c
			run += k.cell[i]
			k.cell[i] = run + k.cell[i-stride]
		}
	}
}

// unsum takes the sums apart again.
func (k *inked) unsum() {
	if !k.summed {
		return
	}
	k.summed = false
	stride := k.cols + 1
	for r := k.rows; r >= 1; r-- {
		for c := k.cols; c >= 1; c-- {
			i := r*stride + c
			k.cell[i] -= k.cell[i-1] + k.cell[i-stride] - k.cell[i-stride-1]
		}
	}
}

// cost is the weight of what a label in box b would cover.
func (k *inked) cost(b Box) float64 {
	k.sum()
	c0, r0, c1, r1 := k.clip(b)
	if c1 < c0 || r1 < r0 {
		return 0
	}
	stride := k.cols + 1
	hi, lo := (r1+1)*stride, r0*stride
	return float64(k.cell[hi+c1+1] - k.cell[hi+c0] - k.cell[lo+c1+1] + k.cell[lo+c0])
}
