// Package pagetest drives the built page in a real browser. Its tests carry
// the build tag browser and run against the site in dist:
//
//	make test-browser
//	go test -tags browser -count=1 -run TestOffline ./app/pagetest
//
// SHOTS=dir keeps the pictures that the tests take.
package pagetest
