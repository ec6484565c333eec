// Package codes holds the numbers of the rulebooks, one file per edition, each
// number with its clause beside it. An edition is a value: the functions
// return fresh copies, and nothing here changes while the program runs.
//
// The numbers come from digests of the standards and from their published
// tables; those that rest on memory say so.
package codes
