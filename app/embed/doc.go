// Package embed is what a page of another site and the calculator in it say to
// each other. It is pure: no browser, nothing kept.
//
// The page around says what it wants in the fragment of the address, in the
// form of a query: #embed&condition=free+top&height=6+ft&units=metric. Every
// field of the wall file can stand there, with a dash for each point and blank
// of its path, and besides:
//
//	show         picture | answer (the picture and the answer) | all
//	lesson       the name of a lesson that stands in the place of a wall
//	units        us | metric
//	decimal      point | comma
//	lang         a language, as "es" or "es-US"
//	theme        light | dark | glare | device
//	color-paper  the ground, as #rgb or #rrggbb; color-ink what is written on
//	             it, color-push what pushes, color-steel the bars
//	keep         changes are kept on the device, under this name
//	host         the origin of the page around, which alone is spoken with
//
// What cannot be used is refused by name and left as if it were not there.
//
// Afterwards both speak by messages, texts of JSON with the version of this
// language; see [Read] and [Message].
package embed

// Version of the messages. It rises when a meaning changes.
const Version = 1

// Limits of what another site may say.
const (
	MaxFragment = 8 << 10  // bytes
	MaxMessage  = 64 << 10 // bytes
	maxRefused  = 20
)
