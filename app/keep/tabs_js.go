package keep

import "syscall/js"

// lockTabs waits until no other tab holds the lock of this name, and returns
// what lets it go. Browsers without locks get none; a save that another tab
// crosses is then found by its revision.
func lockTabs(name string) (unlock func(), err error) {
	locks := js.Global().Get("navigator").Get("locks")
	if !locks.Truthy() {
		return func() {}, nil
	}
	got := make(chan js.Value, 1) // the function that ends the lock
	failed := make(chan struct{}, 1)
	var executor, granted, refused js.Func
	executor = js.FuncOf(func(_ js.Value, args []js.Value) any {
		got <- args[0]
		return nil
	})
	granted = js.FuncOf(func(js.Value, []js.Value) any {
		return js.Global().Get("Promise").New(executor)
	})
	refused = js.FuncOf(func(js.Value, []js.Value) any {
		failed <- struct{}{}
		return nil
	})
	release := func() {
		executor.Release()
		granted.Release()
		refused.Release()
	}
	locks.Call("request", name, granted).Call("catch", refused)
	select {
	case end := <-got:
		return func() {
			end.Invoke()
			release()
		}, nil
	case <-failed:
		release()
		return func() {}, nil // as in a browser without locks
	}
}

// localStorage is the page's, where there is one. Every fault is silence: a
// browser may refuse any of these.
type localStorage struct{}

func (localStorage) do(use func(storage js.Value)) {
	defer func() { _ = recover() }()
	if storage := global("localStorage"); storage.Truthy() {
		use(storage)
	}
}

func (l localStorage) Get(key string) (value string, found bool) {
	l.do(func(storage js.Value) {
		if v := storage.Call("getItem", key); v.Type() == js.TypeString {
			value, found = v.String(), true
		}
	})
	return value, found
}

func (l localStorage) Set(key, value string) {
	l.do(func(storage js.Value) { storage.Call("setItem", key, value) })
}

func (l localStorage) Remove(key string) {
	l.do(func(storage js.Value) { storage.Call("removeItem", key) })
}

func (l localStorage) Keys() (keys []string) {
	l.do(func(storage js.Value) {
		for i := range storage.Get("length").Int() {
			keys = append(keys, storage.Call("key", i).String())
		}
	})
	return keys
}
