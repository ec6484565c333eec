// Package footing takes the toe and the heel of a footing as cantilevers from
// the faces of the stem and returns what they must carry. The bearing and the
// weights are given at factored level; the package knows no factors.
package footing
