package codes

import "standingbeam/calc/units"

// ACI318_19 returns the numbers of ACI 318-19.
func ACI318_19() ACI {
	return ACI{
		Name: "ACI 318-19",

		PhiFlexure:     0.90, // 21.2.2
		PhiCompression: 0.65, // 21.2.2
		PhiShear:       0.75, // 21.2.1
		PhiBearing:     0.65, // 21.2.1
		PhiPlain:       0.60, // 21.2.1
		PhiStability:   0.75, // 6.6.4.5.2

		ConcreteStrain:   0.003,             // 22.2.2.1
		TensionStrain:    0.003,             // 21.2.2
		SteelModulus:     29000 * units.KSI, // 20.2.2.2
		RootLimit:        100,               // 22.5.3.1, 25.4.1.4
		AxialCap:         0.80,              // 22.4.2.1
		SecondOrderLimit: 1.4,               // 6.2.5.3

		FrictionFy:        60 * units.KSI, // 22.9.1.3
		RoughenedFriction: 1.0,            // 22.9.4.2
		AsCastFriction:    0.6,            // 22.9.4.2

		PlainTension:      5,                // 14.5.2.1(a)
		PlainCompression:  0.85,             // 14.5.2.1(b)
		PlainAxial:        0.60,             // 14.5.3.1
		PlainShear:        4.0 / 3,          // 14.5.5.1
		PlainEccentricity: 0.10,             // 14.4.2.1
		PlainSoilLoss:     2 * units.Inch,   // 14.5.1.7
		PlainFooting:      8 * units.Inch,   // 14.3.2.1
		PlainWall:         5.5 * units.Inch, // 14.3.1.1
		PlainWallOf:       1.0 / 24,         // 14.3.1.1
		FoundationWall:    7.5 * units.Inch, // 11.3.1.1, 14.3.1.1

		Wall:  walls318_19(),
		Slab:  slabs318_19(),
		Cover: covers318_19(),
		Bars:  bars318_19(),
	}
}

// walls318_19 returns the least steel of walls.
func walls318_19() WallLimits {
	return WallLimits{
		VerticalSmall:   0.0012,          // 11.6.1
		Vertical:        0.0015,          // 11.6.1
		HorizontalSmall: 0.0020,          // 11.6.1
		Horizontal:      0.0025,          // 11.6.1
		SmallBar:        5,               // 11.6.1
		SmallFy:         60 * units.KSI,  // 11.6.1
		Spacing:         18 * units.Inch, // 11.7.2.1, 11.7.3.1
		SpacingOf:       3,               // 11.7.2.1, 11.7.3.1
		OneLayer:        10 * units.Inch, // 11.7.2.3
		Least:           4 * units.Inch,  // 11.3.1.1, with 11.5.3
		LeastOf:         1.0 / 25,        // 11.3.1.1, with 11.5.3
	}
}

// slabs318_19 returns the least steel of slabs.
func slabs318_19() SlabLimits {
	return SlabLimits{
		Flexural:    0.0018,          // 7.6.1.1
		Shrinkage:   0.0018,          // 24.4.3.2
		Spacing:     18 * units.Inch, // 7.7.2.3, 24.4.3.3
		FlexuralOf:  3,               // 7.7.2.3
		ShrinkageOf: 5,               // 24.4.3.3
	}
}

// covers318_19 returns the covers and clear distances.
func covers318_19() CoverLimits {
	return CoverLimits{
		AgainstSoil:  3 * units.Inch,    // 20.5.1.3.1
		ExposedSmall: 1.5 * units.Inch,  // 20.5.1.3.1
		Exposed:      2 * units.Inch,    // 20.5.1.3.1
		SmallBar:     5,                 // 20.5.1.3.1
		Sheltered:    0.75 * units.Inch, // 20.5.1.3.1
		Clear:        1 * units.Inch,    // 25.2.1
		ClearStones:  4.0 / 3,           // 25.2.1
	}
}

// bars318_19 returns the factors of development lengths.
func bars318_19() BarFactors {
	return BarFactors{
		Top:        1.3,             // 25.4.2.5
		TopDepth:   12 * units.Inch, // 25.4.2.5
		SmallSize:  0.8,             // 25.4.2.5
		Grade80:    1.15,            // 25.4.2.5
		Grade100:   1.3,             // 25.4.2.5
		Least:      12 * units.Inch, // 25.4.2.1, 25.5.2.1
		LapB:       1.3,             // 25.5.2.1
		HookClose:  1.6,             // 25.4.3.2
		HookThin:   1.25,            // 25.4.3.2
		HookLeast:  6 * units.Inch,  // 25.4.3.1
		HookLeastB: 8,               // 25.4.3.1
	}
}
