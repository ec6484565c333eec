package codes

import "standingbeam/calc/units"

// ACI holds the numbers of one edition of the concrete standard, inch-pound
// units.
type ACI struct {
	Name string

	PhiFlexure     float64 // tension-controlled, 21.2.2
	PhiCompression float64 // compression-controlled without spirals, 21.2.2
	PhiShear       float64 // shear and shear friction, 21.2.1
	PhiBearing     float64 // 21.2.1
	PhiPlain       float64 // plain concrete, every action, 21.2.1
	PhiStability   float64 // on the critical load of a slender member, 6.6.4.5.2

	ConcreteStrain float64      // εcu, 22.2.2.1
	TensionStrain  float64      // above εty the section is tension-controlled, 21.2.2
	SteelModulus   units.Stress // Es, 20.2.2.2
	RootLimit      float64      // greatest √f'c, psi, 22.5.3.1 and 25.4.1.4

	AxialCap         float64      // Pn,max / Po with ties, 22.4.2.1
	FrictionFy       units.Stress // greatest fy in shear friction, 22.9.1.3
	SecondOrderLimit float64      // greatest moment with slenderness / without, 6.2.5.3

	PlainTension      float64      // Mn = 5 λ √f'c Sm, 14.5.2.1
	PlainCompression  float64      // Mn = 0.85 f'c Sm, 14.5.2.1
	PlainAxial        float64      // Pn = 0.60 f'c Ag (…), 14.5.3.1
	PlainShear        float64      // Vn = 4/3 λ √f'c bw h, 14.5.5.1
	PlainEccentricity float64      // least, of h, 14.4.2.1
	PlainSoilLoss     units.Length // of h where cast against soil, 14.5.1.7
	PlainFooting      units.Length // least thickness, 14.3.2.1
	PlainWall         units.Length // least thickness of a bearing wall, 14.3.1.1
	FoundationWall    units.Length // least thickness of an exterior foundation wall, 11.3.1.1, 14.3.1.1

	RoughenedFriction float64 // μ of a joint roughened to 1/4 in, 22.9.4.2
	AsCastFriction    float64 // μ of a joint as cast, 22.9.4.2
}

// ACI318_19 returns the numbers of ACI 318-19.
func ACI318_19() ACI {
	return ACI{
		Name:           "ACI 318-19",
		PhiFlexure:     0.90,
		PhiCompression: 0.65,
		PhiShear:       0.75,
		PhiBearing:     0.65,
		PhiPlain:       0.60,
		PhiStability:   0.75,

		ConcreteStrain: 0.003,
		TensionStrain:  0.003,
		SteelModulus:   29000 * units.KSI,
		RootLimit:      100,

		AxialCap:         0.80,
		FrictionFy:       60 * units.KSI,
		SecondOrderLimit: 1.4,

		PlainTension:      5,
		PlainCompression:  0.85,
		PlainAxial:        0.60,
		PlainShear:        4.0 / 3,
		PlainEccentricity: 0.10,
		PlainSoilLoss:     2 * units.Inch,
		PlainFooting:      8 * units.Inch,
		PlainWall:         5.5 * units.Inch,
		FoundationWall:    7.5 * units.Inch,

		RoughenedFriction: 1.0,
		AsCastFriction:    0.6,
	}
}
