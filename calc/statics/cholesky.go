package statics

import "math"

// cholesky solves f x = d in place for a symmetric positive f, of which the
// lower half is given. It reports false when f is not positive.
func cholesky(f, d []float64, n int) bool {
	for j := 0; j < n; j++ {
		for i := j; i < n; i++ {
			s := f[i*n+j]
			for k := 0; k < j; k++ {
				s -= f[i*n+k] * f[j*n+k]
			}
			if i == j {
				if !(s > 0 && finite(s)) {
					return false
				}
				f[j*n+j] = math.Sqrt(s)
				continue
			}
			f[i*n+j] = s / f[j*n+j]
		}
	}
	for i := 0; i < n; i++ {
		for k := 0; k < i; k++ {
			d[i] -= f[i*n+k] * d[k]
		}
		d[i] /= f[i*n+i]
	}
	for i := n - 1; i >= 0; i-- {
		for k := i + 1; k < n; k++ {
			d[i] -= f[k*n+i] * d[k]
		}
		d[i] /= f[i*n+i]
	}
	return true
}
