// Package stability checks a wall and its footing as one rigid body on the
// ground: overturning, sliding, where the resultant meets the ground, and the
// bearing under it. Everything is at service level and per length of wall.
package stability
