package sheet

import "math"

// span is a stretch that no label may touch.
type span struct{ from, to float64 }

// slot is a label in a column: where it would like its middle, and how much
// room it takes. All in points.
type slot struct{ want, size float64 }

// spread finds places for labels in a column between low and high, in the
// order in which they are given, so that none touches another or a blocked
// stretch and they lie as near as can be to where they would like to. It is
// false when there is no room for them. It tries every place, one point apart.
func spread(slots []slot, low, high float64, blocked []span) ([]float64, bool) {
	n := int(math.Floor(high - low))
	if len(slots) == 0 {
		return nil, true
	}
	if n < 1 || n > 5000 {
		return nil, false
	}
	at := func(k int) float64 { return low + float64(k) }
	cost := make([][]float64, len(slots))
	from := make([][]int, len(slots)) // the best place of the label before
	for i, s := range slots {
		cost[i], from[i] = make([]float64, n+1), make([]int, n+1)
		best, bestAt, next := math.Inf(1), -1, 0
		for k := 0; k <= n; k++ {
			if i > 0 {
				gap := (s.size + slots[i-1].size) / 2
				for ; next <= n && at(next) <= at(k)-gap; next++ {
					if cost[i-1][next] < best {
						best, bestAt = cost[i-1][next], next
					}
				}
			}
			cost[i][k], from[i][k] = math.Inf(1), bestAt
			if !clear(at(k)-s.size/2, at(k)+s.size/2, low, high, blocked) || (i > 0 && math.IsInf(best, 1)) {
				continue
			}
			cost[i][k] = math.Abs(at(k) - s.want)
			if i > 0 {
				cost[i][k] += best
			}
		}
	}
	last, found := -1, math.Inf(1)
	for k, c := range cost[len(slots)-1] {
		if c < found {
			last, found = k, c
		}
	}
	if last < 0 {
		return nil, false
	}
	out := make([]float64, len(slots))
	for i := len(slots) - 1; i >= 0; i-- {
		out[i] = at(last)
		last = from[i][last]
	}
	return out, true
}

func clear(from, to, low, high float64, blocked []span) bool {
	if from < low || to > high {
		return false
	}
	for _, b := range blocked {
		if from < b.to && b.from < to {
			return false
		}
	}
	return true
}
