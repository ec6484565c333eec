package codes

import "standingbeam/calc/units"

// ACI holds the numbers of one edition of the concrete standard, inch-pound
// units. The clauses stand beside the values of each edition.
type ACI struct {
	Name string

	// Strength reduction factors φ.
	PhiFlexure     float64 // tension-controlled
	PhiCompression float64 // compression-controlled, without spirals
	PhiShear       float64 // shear and shear friction
	PhiBearing     float64
	PhiPlain       float64 // plain concrete, every action
	PhiStability   float64 // on the critical load of a slender member

	ConcreteStrain   float64      // εcu
	TensionStrain    float64      // above εty the section is tension-controlled
	SteelModulus     units.Stress // Es
	RootLimit        float64      // greatest √f'c, psi
	AxialCap         float64      // Pn,max/Po with ties
	SecondOrderLimit float64      // greatest moment with slenderness over that without

	FrictionFy        units.Stress // greatest fy in shear friction
	RoughenedFriction float64      // μ of a joint roughened to 1/4 in
	AsCastFriction    float64      // μ of a joint as cast

	// Plain concrete.
	PlainTension      float64      // Mn = 5 λ √f'c Sm
	PlainCompression  float64      // Mn = 0.85 f'c Sm
	PlainAxial        float64      // Pn = 0.60 f'c Ag (…)
	PlainShear        float64      // Vn = 4/3 λ √f'c bw h
	PlainEccentricity float64      // least, of h
	PlainSoilLoss     units.Length // of h where cast against soil
	PlainFooting      units.Length // least thickness of a footing
	PlainWall         units.Length // least thickness of a bearing wall …
	PlainWallOf       float64      // … and of its shorter unsupported side
	FoundationWall    units.Length // least thickness of an exterior foundation wall, plain or reinforced

	Wall  WallLimits
	Slab  SlabLimits
	Cover CoverLimits
	Bars  BarFactors
}

// WallLimits are the least steel and the spacing of a reinforced wall.
type WallLimits struct {
	VerticalSmall, Vertical     float64      // ρ of small bars, and of others
	HorizontalSmall, Horizontal float64      // the same across
	SmallBar                    int          // small: up to this size …
	SmallFy                     units.Stress // … and at least this strength
	Spacing                     units.Length // greatest, or
	SpacingOf                   float64      // this many thicknesses
	OneLayer                    units.Length // above this thickness two layers, but for basement and retaining walls
	Least                       units.Length // least thickness of a bearing wall …
	LeastOf                     float64      // … and of its shorter unsupported side
}

// SlabLimits are the least steel and the spacing of a one-way slab.
type SlabLimits struct {
	Flexural    float64      // ρ of the flexural steel
	Shrinkage   float64      // ρ across it
	Spacing     units.Length // greatest, or
	FlexuralOf  float64      // this many thicknesses
	ShrinkageOf float64
}

// CoverLimits are the least covers of concrete cast in place, and the least
// clear distance of bars.
type CoverLimits struct {
	AgainstSoil  units.Length // cast against and always in contact with ground
	ExposedSmall units.Length // exposed to weather or ground, small bars
	Exposed      units.Length // the same, larger bars
	SmallBar     int
	Sheltered    units.Length // neither, walls and slabs, up to No. 11

	Clear       units.Length // parallel bars, …
	ClearStones float64      // … and of the largest stone, and db
}

// BarFactors are the modification factors of development lengths.
type BarFactors struct {
	Top        float64      // ψt with more fresh concrete below than …
	TopDepth   units.Length // … this
	SmallSize  float64      // ψs up to No. 6
	Grade80    float64      // ψg
	Grade100   float64      // ψg
	Least      units.Length // least ld and lap
	LapB       float64
	HookClose  float64      // ψr of hooks nearer than 6 db
	HookThin   float64      // ψo of a side cover less than 6 db
	HookLeast  units.Length // least ldh, or
	HookLeastB float64      // this many db
}
