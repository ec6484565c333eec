//go:build !js

package lean

import (
	"bytes"
	"errors"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// A program that leans on the tables that are kept: the stack grows, moves and
// is scanned, below calls by reflection too; faults are caught, from inlined
// code and deferred calls; the runtime takes a method's name apart.
const source = `package main

import (
	"fmt"
	"reflect"
	"runtime"
	"strings"
)

type square struct{ side float64 }

func (s square) Area() float64 { return s.side * s.side }

type shape interface{ Area() float64 }

// Called by reflection, the stack below it is scanned and moved.
func (s square) Join(parts *[]string, end string) string {
	deep(3000, nil)
	runtime.GC()
	return strings.Join(*parts, "-") + end
}

func deep(n int, kept []string) int {
	if n == 0 {
		runtime.GC()
		return len(strings.Join(kept, ""))
	}
	return deep(n-1, append(kept, fmt.Sprint(n))) + 1
}

func caught(f func()) {
	defer func() { fmt.Println("caught:", recover()) }()
	f()
}

func byReflection() {
	join := reflect.ValueOf(square{}).MethodByName("Join").Interface().(func(*[]string, string) string)
	fmt.Println(join(&[]string{"a", fmt.Sprint("b")}, "."))
	made := reflect.MakeFunc(reflect.TypeFor[func(*string) string](), func(in []reflect.Value) []reflect.Value {
		deep(3000, nil)
		runtime.GC()
		return []reflect.Value{reflect.ValueOf(*in[0].Interface().(*string) + "!")}
	}).Interface().(func(*string) string)
	text := fmt.Sprint("c")
	fmt.Println(made(&text))
}

func main() {
	fmt.Println(deep(10000, nil))
	byReflection()
	caught(func() { var none *square; fmt.Println(shape(none).Area()) })
	caught(func() { var list []int; fmt.Println(list[runtime.NumCPU()+6]) })
	caught(func() { var m map[string]int; m["a"] = 1 })
	done := make(chan int)
	go func() { defer close(done); done <- deep(100, nil) }()
	fmt.Println(<-done)
	fmt.Println(runtime.NumGoroutine() <= 2)
	_, _, _, ok := runtime.Caller(0)
	fmt.Println(ok)
	runtime.Gosched()
	var wait chan int
	<-wait // the runtime finds that nothing can go on
}
`

// A lean program says what the program says, and travels in less than four
// fifths of its data.
func TestProgramRunsTheSame(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "main.go"), []byte(source))
	put(t, filepath.Join(dir, "go.mod"), []byte("module example\n\ngo 1.26\n"))
	whole := filepath.Join(dir, "whole.wasm")
	build := exec.Command("go", "build", "-ldflags=-s -w", "-o", whole, ".")
	build.Dir = dir
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOFLAGS=")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	file, err := os.ReadFile(whole)
	if err != nil {
		t.Fatal(err)
	}
	leaner, err := Program(file)
	if err != nil {
		t.Fatal(err)
	}
	small := filepath.Join(dir, "lean.wasm")
	put(t, small, leaner)

	want, got := run(t, whole), run(t, small)
	if strings.Count(want, "caught: ") != 3 || !strings.Contains(want, "a-b.\nc!\n") || !strings.Contains(want, "deadlock") {
		t.Fatalf("the program itself said:\n%s", want)
	}
	if got != want {
		t.Errorf("lean:\n%s\nwhole:\n%s", got, want)
	}
	if bytes.Contains(leaner, []byte("main.deep")) || bytes.Contains(leaner, []byte("runtime.gopark")) {
		t.Error("not the names that were to go are gone")
	}
	if !bytes.Contains(leaner, []byte("reflect.makeFuncStub\x00")) || !bytes.Contains(leaner, []byte("reflect.methodValueCall\x00")) {
		t.Error("names that the runtime looks for are gone")
	}
	again, err := Program(leaner)
	if err != nil || !bytes.Equal(again, leaner) {
		t.Errorf("a second time changes it again: %v", err)
	}
}

func put(t *testing.T, name string, data []byte) {
	t.Helper()
	if err := os.WriteFile(name, data, 0o644); err != nil {
		t.Fatal(err)
	}
}

// run is what a program says under node, without the places it names when it
// ends.
func run(t *testing.T, program string) string {
	t.Helper()
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	node := exec.Command(filepath.Join(strings.TrimSpace(string(root)), "lib/wasm/go_js_wasm_exec"), program)
	node.Env = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + os.Getenv("HOME")}
	out, _ := node.CombinedOutput() // it ends with a fault on purpose
	said, _, _ := strings.Cut(string(out), "\n\ngoroutine ")
	return said
}

// Memory laid out from pieces and written again is the same memory.
func TestMemoryIsKept(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		m := make(memory, rng.IntN(40_000))
		for i := 0; i < len(m); i += 1 + rng.IntN(1+rng.IntN(9000)) {
			m[i] = byte(rng.IntN(256))
		}
		again, err := readMemory(m.join())
		if err != nil {
			t.Fatal(err)
		}
		trimmed := bytes.TrimRight(m, "\x00")
		if !bytes.Equal(again, trimmed) {
			t.Fatalf("%d bytes came back as %d others", len(trimmed), len(again))
		}
	}
}

// Pieces may come in any order, and the later stands, as in the format.
func TestPiecesInOrder(t *testing.T) {
	m, err := readMemory([]byte{3,
		activePiece, i32Const, 4, end, 2, 'c', 'd',
		activePiece, i32Const, 0, end, 3, 'a', 'b', 'x',
		activePiece, i32Const, 2, end, 1, 'e',
	})
	if err != nil || string(m) != "abe\x00cd" {
		t.Errorf("%q, %v", m, err)
	}
}

func TestUnknownTables(t *testing.T) {
	file := join([]section{{dataSection, memory("no table of functions").join()}})
	again, err := Program(file)
	if !errors.Is(err, ErrNames) || !bytes.Equal(again, file) {
		t.Errorf("%q, %v", again, err)
	}
}

func FuzzProgram(f *testing.F) {
	f.Add([]byte(fileHead))
	f.Add(join([]section{{1, []byte{0}}, {dataSection, memory(tableMark).join()}}))
	f.Add(join([]section{{dataSection, []byte{1, activePiece, i32Const, 0x7f, end, 1, 'a'}}}))
	f.Fuzz(func(t *testing.T, file []byte) {
		if len(file) > 1<<16 {
			return
		}
		once, err := Program(file)
		if err != nil && !errors.Is(err, ErrNames) {
			return
		}
		again, err := Program(once)
		if err != nil && !errors.Is(err, ErrNames) {
			t.Fatalf("what was written is refused: %v", err)
		}
		if !bytes.Equal(once, again) {
			t.Fatal("a second time changes it again")
		}
	})
}
