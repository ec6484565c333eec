package codes

// Factors are the load factors of strength design. H stands for the pressure
// of soil, of water in it and of a surcharge on it.
type Factors struct {
	Name         string
	Dead         float64 // D beside live load and earth
	DeadOnly     float64 // D alone
	DeadHelps    float64 // D that counteracts
	Live         float64 // L
	Earth        float64 // H that adds to the effect
	EarthResists float64 // permanent H that resists; 0 where it may be dug away
}

// ASCE7_16 returns the load factors of ASCE 7-16, 2.3.1, which are also those
// of ACI 318-19, 5.3.1 and 5.3.8.
func ASCE7_16() Factors {
	return Factors{
		Name:         "ASCE 7-16",
		Dead:         1.2,
		DeadOnly:     1.4,
		DeadHelps:    0.9,
		Live:         1.6,
		Earth:        1.6,
		EarthResists: 0.9,
	}
}
