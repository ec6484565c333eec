package codes

// wallCell is one printed cell: the number of the bar times 100 plus its
// spacing in inches, so that 637 is No. 6 at 37 in; nr or dr; plus a note.
type wallCell uint16

const (
	nr    wallCell = 0 // no vertical bars required
	dr    wallCell = 1 // design required
	noteJ wallCell = 10000
	noteL wallCell = 20000
	noteM wallCell = 30000
	nrL            = noteL + nr
	drJ            = noteJ + dr
)

// insideCells is IRC 2021 Table R404.1.2(8) (2024: R404.1.3.2(8)): flat walls,
// bars 1.25 in from the inside face, fy 60,000 psi, f'c 2,500 psi. One line is
// one row of the table: wall height and unbalanced backfill in feet, then for
// 6, 8, 10 and 12 in nominal the columns 30, 45 and 60 psf per ft.
//
// The cell 9 ft, 6 ft, 8 in, 60 prints No. 6 at 39 in where IBC Table
// 1807.1.6.2 prints No. 5 at 39 in: probably a misprint, on the safe side,
// kept as printed.
var insideCells = [27][12]wallCell{
	/* 5, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 5, 5 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 6, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 6, 5 */ {nr, nr, 435, nr, nrL, nrL, nr, nr, nr, nr, nr, nr},
	/* 6, 6 */ {nr, 548, 536, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 7, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 7, 5 */ {nr, nr, 547, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 7, 6 */ {nr, 542, 643, nr, nr, 548, nr, nr, nrL, nr, nr, nr},
	/* 7, 7 */ {546, 642, 634, nr, 546, 648, nr, nrL, nr, nr, nr, nr},
	/* 8, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 8, 5 */ {nr, 438, 543, nr, nrL, nr, nr, nr, nr, nr, nr, nr},
	/* 8, 6 */ {437, 537, 637, nrL, nr, 543, nr, nr, nrL, nr, nr, nr},
	/* 8, 7 */ {540, 637, 634, nr, 541, 643, nr, nrL, nr, nr, nr, nr},
	/* 8, 8 */ {643, 634, 627, 547, 643, 632, nrL, nr, 644, nr, nr, nr},
	/* 9, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 9, 5 */ {nr, 435, 540, nr, nrL, nr, nr, nr, nr, nr, nr, nr},
	/* 9, 6 */ {434, 648, 636, nrL, nr, 639, nr, nr, nrL, nr, nr, nr},
	/* 9, 7 */ {536, 634, 633, nr, 537, 638, nr, nr, 537, nr, nr, nrL},
	/* 9, 8 */ {638, 633, 624, 541, 638, 629, nrL, 537, 639, nr, nrL, 448 + noteM},
	/* 9, 9 */ {634, 626, 619, 646, 630, 623, nr, 641, 630, nr, nr, 639},
	/* 10, 4 */ {nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr, nr},
	/* 10, 5 */ {nr, 433, 538, nr, nrL, nr, nr, nr, nr, nr, nr, nr},
	/* 10, 6 */ {548, 645, 634, nrL, nr, 537, nr, nr, nr, nr, nr, nr},
	/* 10, 7 */ {647, 634, 630, nr, 648, 635, nr, nr, 648, nr, nr, nrL},
	/* 10, 8 */ {634, 630, 622, 538, 634, 626, nr, 647, 635, nr, nrL, 645 + noteM},
	/* 10, 9 */ {634, 623, dr, 641, 627, 622, 448, 635, 627, nrL, 448 + noteM, 634},
	/* 10, 10 */ {628, drJ, dr, 633, 623, 622, 645, 629, 622, nr, 638, 628},
}

// centredCells is IRC 2021 Table R404.1.2(3) (2024: R404.1.3.2(3)): flat walls
// of 8 in nominal, bars at the centre line, otherwise as insideCells; the
// columns are 30, 45 and 60 psf per ft.
var centredCells = [18][3]wallCell{
	/* 8, 4 */ {nr, nr, nr},
	/* 8, 5 */ {nr, nr, nr},
	/* 8, 6 */ {nr, nr, 637},
	/* 8, 7 */ {nr, 636, 635},
	/* 8, 8 */ {641, 635, 626},
	/* 9, 4 */ {nr, nr, nr},
	/* 9, 5 */ {nr, nr, nr},
	/* 9, 6 */ {nr, nr, 635},
	/* 9, 7 */ {nr, 635, 632},
	/* 9, 8 */ {636, 632, 623},
	/* 9, 9 */ {635, 625, 618},
	/* 10, 4 */ {nr, nr, nr},
	/* 10, 5 */ {nr, nr, nr},
	/* 10, 6 */ {nr, nr, 635},
	/* 10, 7 */ {nr, 635, 629},
	/* 10, 8 */ {635, 629, 621},
	/* 10, 9 */ {634, 622, 616},
	/* 10, 10 */ {627, 617, 613},
}
