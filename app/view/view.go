// Package view turns the form of a wall into the strings and drawings that the
// page shows. It is pure: no browser, no clock, nothing kept between calls, so
// that everything a person reads can be tested natively.
package view

import "standingbeam/app/draw"

// View is one page, ready to be shown.
type View struct {
	Name     string
	Lines    [2]Line  // the headline: finished and today, what fails first
	Cautions []string // what matters today, under the headline
	Stale    string   // why the answer is not that of the form, "" when it is
	Announce string   // the headline as one sentence, to be read aloud

	Cards    []Card
	Steppers []Field
	Groups   []Group

	Picture  Picture
	Checks   []Check // that decide: fails, open, holds
	Compared []Check // shown to compare only
	Idle     []Check // that do not apply

	Bars      []Bar
	Rulebooks Rulebooks
	Chart     *Chart   // soil on both sides: how far each side may be filled
	Spread    []Spread // soil not known: what each class asks for

	Engineer    []string
	Assumptions []string
	Warnings    []string
	Safety      []string
	About       []string // what the program does, its limits, what becomes of what is typed
}

// State is a state of a line or a check, as the page writes it in data-state:
// "holds", "fails", "open" or "idle". Each has a word and a shape of its own.
type State string

// States.
const (
	Holds State = "holds"
	Fails State = "fails"
	Open  State = "open"
	Idle  State = "idle"
)

// Line is one line of the headline.
type Line struct {
	ID            string // "finished" or "today"
	State         State
	When          string // "Finished", "Today"
	Mark          string // the state in a word
	Title, Detail string
	Lesson        string // id of the lesson that says why
}

// Card is one of the four ways to be held.
type Card struct {
	Value, Label, SVG string
	Chosen            bool
}

// Picture is the section with what the page puts around it.
type Picture struct {
	SVG     string
	Width   float64
	Height  float64
	Window  draw.Window // for the form's Hold
	Handles []draw.Handle
	Title   string
	Desc    string
	Head    []string
	Rows    [][]string
	Shows   []Choice // which curve stands beside the wall
	Stages  []Choice // which stage is drawn, where there is more than one
	Stage   string   // what the drawn stage is called, where it is not the finished wall
}

// Choice is one answer to choose from.
type Choice struct {
	Value, Label string
	Chosen       bool
}

// Field is one question of the form.
type Field struct {
	Path    string
	Label   string
	Text    string // as typed
	Shown   string // what stands in the field while it is not being typed in
	Hint    string // what is taken when it is left out, or the unit
	Help    string
	Problem string
	Choices []Choice // chosen from, not typed
	Down    string   // what the steppers' buttons are called, "" = no steppers
	Up      string
	Short   bool // a length: the keys for feet, inches and fractions help
	Number  bool // a number pad suits it
}

// Group is one part of the questions, closed until it is opened.
type Group struct {
	ID, Title, Summary string
	Faulty             bool // a problem stands inside
	Fields             []Field
}

// Check is one line of what was checked.
type Check struct {
	Key      string // stable within a wall: id and stage
	ID       string
	Stage    string
	State    State
	Mark     string
	Name     string
	Amount   string // "4,040 of 5,980 lb-ft/ft"
	Figure   string // "0.68", "" when there is none
	Ratio    float64
	HasRatio bool
	Note     string // why it is open, short or does not apply
	Question string // what is being asked, in one sentence
	Source   string // edition and clause
	Working  Working
}

// Bar is one line of the bars.
type Bar struct {
	Mark, What, Where, Details, Source string
	Compare                            bool
}

// Rulebooks are the two rulebooks beside each other.
type Rulebooks struct {
	Choice  Field
	Decides Book
	Other   Book
	Why     string
	Reasons []string // why the wall is outside the table
}

// Book is what one rulebook says.
type Book struct {
	Name, Edition, Says, Role string
}

// Spread is what one possible soil asks for, by both rulebooks.
type Spread struct{ Soil, Engineered, Table string }

// Chart is how high the high side may stand for each level of the low side.
type Chart struct {
	Low, High, Governs, Note string
	Rows                     []ChartRow
}

// ChartRow is one level of the low side. Share is the height of the bar drawn
// for it, of the wall's height.
type ChartRow struct {
	Low, High, Why      string
	LowShare, HighShare float64
}
