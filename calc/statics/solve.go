package statics

// Solve returns the diagrams of the strip, or an [Error] that says what is
// wrong with it. All values of a diagram are finite numbers.
func Solve(s Strip) (Diagram, error) {
	if err := s.check(); err != nil {
		return Diagram{}, err
	}
	var room [8]hold
	hs := holds(&s, room[:0])
	b, ok := chooseBase(hs)
	if !ok {
		return Diagram{}, Error{Mechanism, -1}
	}
	first, second := b.react(s.resultant())
	hs[0].force = first
	if b.fixed {
		hs[0].moment = second
	} else {
		hs[1].force = second
	}
	segs := cuts(&s)
	if len(hs) > b.count() {
		s.bend(segs, hs)
		if !settle(segs, b, hs) {
			return Diagram{}, Error{OutOfRange, -1}
		}
	}
	s.bend(segs, hs)
	s.sway(segs, b, hs)
	d := Diagram{ei: s.EI, segments: segs, reactions: reactions(&s, hs)}
	if !sound(hs) || !d.sound() {
		return Diagram{}, Error{OutOfRange, -1}
	}
	return d, nil
}
