package keep

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"strconv"
	"strings"
)

// Revision names one saved state of a piece, as "12-tab-7": the number of the
// save, from 1, the tab that made it, and the count of that tab's changes that
// are in it. "" is the state before anything was saved.
type Revision string

// unknown is the revision of a piece that cannot be read now.
const unknown Revision = "?"

// next is the revision that follows r when tab saves its change.
func (r Revision) next(tab string, change int) Revision {
	return Revision(fmt.Sprintf("%d-%s-%d", r.number()+1, tab, change))
}

// number counts the saves of a piece; 0 is none.
func (r Revision) number() int {
	number, _, _ := r.parts()
	return number
}

func (r Revision) parts() (number int, tab string, change int) {
	parts := strings.Split(string(r), "-")
	if len(parts) != 3 {
		return 0, "", 0
	}
	number, err := strconv.Atoi(parts[0])
	if err != nil {
		return 0, "", 0
	}
	change, err = strconv.Atoi(parts[2])
	if err != nil {
		return 0, "", 0
	}
	return number, parts[1], change
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
