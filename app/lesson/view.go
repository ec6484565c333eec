package lesson

// View is one screen, ready to be shown.
type View struct {
	ID       string // of the lesson, "" = the list
	Title    string
	Lead     string
	Count    string // "Lesson 3 of 12"
	Fragment string // what the address says of this screen
	Cards    []Card // the list of all
	Picture  Picture
	Bent     bool // something in the picture is bent, more than it would be
	Question Question
	Control  Control
	Picks    []Pick
	Say      string // what the picture shows now
	Meters   []Meter
	Keep     string // what to keep of it
	Table    Table
	Cases    []Case // the walls to judge
	Score    string
	Prev     Link
	Next     Link
}

// Link leads to another screen.
type Link struct{ Fragment, Text string }

// Card is one lesson in the list.
type Card struct {
	Fragment, Number, Title, Idea, SVG string
}

// Picture is a drawing with what is read instead of it.
type Picture struct {
	SVG, Desc string
	Width     float64
	Height    float64
	Boxes     []Box    // every line of type
	Lost      []string // labels that found no place
}

// Question is asked before anything is shown.
type Question struct {
	Text    string
	Choices []Choice
	Asked   bool // the answer is not shown yet
	Guessed bool
	Right   bool
	Verdict string // "Right", "Not this time"; "" where nobody guessed
	Answer  string
}

// Choice is one answer to choose from.
type Choice struct {
	Letter, Text string
	Chosen       bool
	Right        bool // known once the answer is shown
}

// Control is what moves the picture: a slider over stops, or a choice.
type Control struct {
	Label      string
	Named      bool // it chooses out of a few
	Stops      []string
	At         int
	Less, More string // what the buttons beside it are called
}

// Pick is one more choice beside the control.
type Pick struct {
	Label string
	Stops []string
	At    int
}

// Table is the values at every stop.
type Table struct {
	Head []string
	Rows [][]string
}

// Paper is the hand-out of a lesson: its question, and under a fold the answer
// with the control in three places. It does not change while the control moves.
type Paper struct {
	Asking       string // the picture of the question
	Answer, Keep string
	Panels       []Panel
}

// Panel is one picture of the hand-out.
type Panel struct {
	SVG, At, Say string
	Boxes        []Box
	Width        float64
	Height       float64
	Lost         []string
}

// Case is one wall to judge.
type Case struct {
	Title    string
	Picture  Picture
	Question Question
}
