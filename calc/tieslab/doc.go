// Package tieslab checks a slab that lies on the retained ground and ties the
// top of the wall: how much of it lies beyond the ground that slides with the
// wall, and what that part can hold by its own weight.
package tieslab
