package statics

import "fmt"

// Fault says why a strip was not solved.
type Fault uint8

// Faults.
const (
	// Mechanism: the supports do not hold the strip. It takes a fixed support
	// or two others.
	Mechanism  Fault = iota
	BadTop           // the height is not a positive number
	BadEI            // the stiffness is not a positive number
	BadLoad          // a load is upside down, outside the strip or no number
	BadPoint         // a line force is outside the strip or no number
	BadCouple        // a couple is outside the strip or no number
	BadSupport       // a support is outside the strip, on another one, or its stiffness is no number ≥ 0
	OutOfRange       // the numbers are too far apart for a result
)

// Error is the answer to a strip that cannot be solved. Index is the place of
// the load, force, couple or support in its list, −1 for the other faults.
type Error struct {
	Fault Fault
	Index int
}

// Error says the fault in words.
func (e Error) Error() string {
	switch e.Fault {
	case Mechanism:
		return "strip: the supports do not hold it"
	case BadTop:
		return "strip: height must be a positive number"
	case BadEI:
		return "strip: stiffness must be a positive number"
	case BadLoad:
		return fmt.Sprintf("strip: load %d must rise from its lower to its upper level inside the strip", e.Index)
	case BadPoint:
		return fmt.Sprintf("strip: line force %d must be a number inside the strip", e.Index)
	case BadCouple:
		return fmt.Sprintf("strip: couple %d must be a number inside the strip", e.Index)
	case BadSupport:
		return fmt.Sprintf("strip: support %d must stand by itself inside the strip", e.Index)
	}
	return "strip: the numbers are out of range"
}
