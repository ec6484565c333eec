package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"sort"
	"strconv"
	"strings"
	"testing"
)

// callers are the functions of the calculation whose first argument is an id,
// and what that id names.
var callers = map[string]string{
	"note": "note.", "noteText": "note.", "assume": "note.", "warn": "note.", "engineer": "note.", "caution": "note.",
	"ask": "name.", "askFactor": "name.", "leaveOpen": "name.", "without": "name.", "failed": "name.",
}

// ids collects the ids in the sources of a folder. An id that is built at run
// time has a "*" for what is added to it.
func ids(t *testing.T, dir string, found map[string]string) {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if id := calledWith(n); id != "" {
					found[id] = name
				}
			case *ast.CompositeLit:
				if id := noteLiteral(n); id != "" {
					found[id] = name
				}
			}
			return true
		})
	}
}

// calledWith is the id in a call: note("…"), s.Word("…"), add("table-…").
func calledWith(call *ast.CallExpr) string {
	called := ""
	switch f := call.Fun.(type) {
	case *ast.Ident:
		called = f.Name
	case *ast.SelectorExpr:
		called = f.Sel.Name
	}
	if len(call.Args) == 0 {
		return ""
	}
	text := literal(call.Args[0])
	prefix, known := callers[called]
	switch {
	case text == "":
		return ""
	case known:
		return prefix + text
	case called == "add" && strings.HasPrefix(text, "table-"):
		return "note." + text
	case called == "choice" && len(call.Args) == 3:
		return "problem." + strings.TrimSuffix(literal(call.Args[1]), "*")
	case called == "Word" || called == "Sentence":
		return text
	}
	return ""
}

// noteLiteral is the id of Note{ID: "…"}.
func noteLiteral(lit *ast.CompositeLit) string {
	kind, ok := lit.Type.(*ast.Ident)
	if !ok || kind.Name != "Note" && kind.Name != "RangeError" {
		return ""
	}
	for _, e := range lit.Elts {
		if kv, ok := e.(*ast.KeyValueExpr); ok {
			if key, ok := kv.Key.(*ast.Ident); ok && key.Name == "ID" {
				if text := literal(kv.Value); text != "" {
					return map[string]string{"Note": "note.", "RangeError": "problem."}[kind.Name] + text
				}
			}
		}
	}
	return ""
}

// literal is a text in quotes; "…*" or "*…" when more is added to it.
func literal(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.BasicLit:
		if text, err := strconv.Unquote(e.Value); err == nil && e.Kind == token.STRING {
			return text
		}
	case *ast.BinaryExpr:
		if text := literal(e.X); text != "" && text[0] != '*' && e.Op == token.ADD {
			return strings.TrimSuffix(text, "*") + "*"
		}
		if text := literal(e.Y); len(text) > 1 && e.Op == token.ADD {
			return "*" + text
		}
	}
	return ""
}

// A word that is asked for anywhere in the program stands in the table.
func TestEveryIDHasAWord(t *testing.T) {
	found := map[string]string{}
	for _, root := range []string{"../../calc", ".."} {
		err := filepath.WalkDir(root, func(path string, d os.DirEntry, err error) error {
			if err == nil && d.IsDir() {
				ids(t, path, found)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if len(found) < 150 {
		t.Errorf("only %d ids were found: the search no longer fits the sources", len(found))
	}
	s := Speaker{}
	all := make([]string, 0, len(found))
	for id := range found {
		all = append(all, id)
	}
	sort.Strings(all)
	for _, id := range all {
		if before, after, built := strings.Cut(id, "*"); built {
			if !hasBuilt(before, after) {
				t.Errorf("%s: no word fits %q", found[id], id)
			}
		} else if !s.Has(id) {
			t.Errorf("%s: no word for %q", found[id], id)
		}
	}
}
