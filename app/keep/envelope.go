package keep

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"strconv"
	"strings"
)

// Revision names one saved state of a piece. "" is the state before anything
// was saved.
type Revision string

// unknown is the revision of a piece that cannot be read now.
const unknown Revision = "?"

// next is the revision that follows r when tab saves.
func (r Revision) next(tab string) Revision {
	return Revision(strconv.Itoa(r.number()+1) + "-" + tab)
}

// number counts the saves of a piece, from 1.
func (r Revision) number() int {
	digits, _, _ := strings.Cut(string(r), "-")
	n, err := strconv.Atoi(digits)
	if err != nil {
		return 0
	}
	return n
}

// tab is the one that saved this revision.
func (r Revision) tab() string {
	_, tab, _ := strings.Cut(string(r), "-")
	return tab
}

// A file is one line, then the data as it is:
//
//	kept 1 <revision> <sha256 of the data>
//
// The 1 is the form of the file. The hash tells a whole file from a torn one.
const fileForm = "kept 1"

func seal(revision Revision, data []byte) []byte {
	line := fmt.Sprintf("%s %s %x\n", fileForm, revision, sha256.Sum256(data))
	return append([]byte(line), data...)
}

// unseal returns what a file holds. It is false for one that is torn or not
// of this form.
func unseal(file []byte) (Revision, []byte, bool) {
	line, data, found := bytes.Cut(file, []byte("\n"))
	rest, ours := bytes.CutPrefix(line, []byte(fileForm+" "))
	revision, sum, parted := bytes.Cut(rest, []byte(" "))
	if !found || !ours || !parted || Revision(revision).number() < 1 {
		return "", nil, false
	}
	if string(sum) != fmt.Sprintf("%x", sha256.Sum256(data)) {
		return "", nil, false
	}
	return Revision(revision), data, true
}
