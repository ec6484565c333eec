// Package keep saves what a person has entered on their own device.
//
// A Store writes named pieces, each whole or not at all: into a temporary
// file, which is then renamed. A Keeper stands between the page and a Store:
// it takes every change at once, writes the latest in the background, and
// notes each change in a journal first, so that a page that is closed or
// killed in the middle of a save loses nothing.
//
// Several tabs may keep the same piece. Every save names the revision that it
// follows, so that a tab which has not seen another's change is told
// (ErrChanged) and neither overwrites nor mixes it.
package keep

import "errors"

// What can go wrong, for errors.Is. The page says each in its own words.
var (
	// ErrRefused: the browser does not let this page store anything, or the
	// storage does not work. The page goes on without.
	ErrRefused = errors.New("storage is refused")
	// ErrFull: there is no room left on the device.
	ErrFull = errors.New("storage is full")
	// ErrChanged: another tab has saved this piece since it was last read here.
	ErrChanged = errors.New("changed in another tab")
	// ErrDamaged: the piece is there and cannot be read.
	ErrDamaged = errors.New("damaged")
	// ErrCleared: the piece was kept here and is gone, with no word of ours.
	ErrCleared = errors.New("cleared")
	// ErrNotFound: nothing is kept under this name.
	ErrNotFound = errors.New("nothing kept")
)
