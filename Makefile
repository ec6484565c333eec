# Standing Beam. `make run` shows the page on this machine, `make test` checks
# everything. What is fetched or built stays in .cache and dist.

SHELL := /bin/bash
.SHELLFLAGS := -euo pipefail -c
.DEFAULT_GOAL := build
.DELETE_ON_ERROR:

CACHE := $(CURDIR)/.cache
LOGS  := $(CACHE)/logs
export HOME ?= $(CACHE)/home
export PORT ?= 8000

# Exact versions of what is fetched outside of go.mod.
STATICCHECK := v0.8.2
AXE         := 4.14.1
AXE_SHA256  := e6b0ce02b84d892e2e33e403485e7f3d6c29e2be6df65daf44d89ba564139745
DXF         := 1.1.2
DXF_SHA256  := 7d0dd662abab9a3e9a0335a5ff9c112f637c6c994be4961d04fc44ddbcb7c489

WASM  := GOOS=js GOARCH=wasm
# Inlining costs a tenth of what travels; the runtime keeps it.
INLINE := -gcflags=all=-l -gcflags=runtime= -gcflags=internal/runtime/...=
APP   := $(CACHE)/bin/standingbeam
CHECK := $(CACHE)/bin/staticcheck-$(STATICCHECK)

# Packages that run without a browser, and so under node too.
PURE = $(shell $(WASM) go list -f '{{.ImportPath}} {{join .Deps " "}}' ./... | grep -v -e go-app -e '^standingbeam/app/pagetest' | cut -d' ' -f1)

.NOTPARALLEL:
.PHONY: build run test bench size clean lint wasm program tools browser axe dxf servers \
	test-native test-wasm test-browser site-quick

# --- the site ---------------------------------------------------------------

build: program wasm ## the whole static site in dist/
	$(APP) build -wasm .cache/app.wasm -out dist

site-quick: program wasm
	$(APP) build -quick -wasm .cache/app.wasm -out dist

run: site-quick ## build fast and serve on http://localhost:8000 (PORT=…)
	exec $(APP) serve -dir dist -port $(PORT)

wasm:
	go run ./app/site/framework .cache/framework
	$(WASM) go build -modfile=.cache/framework/go.mod -ldflags='-s -w' -trimpath $(INLINE) -o .cache/app.wasm ./app

program:
	go build -o $(APP) ./app

size: build ## bytes that a first visit transfers
	@ls -l dist/web/app.wasm dist/web/app.wasm.br dist/web/app.wasm.gz | awk '{print $$5, $$9}'
	@find dist -name '*.br' -printf '%s\n' | awk '{n += $$1} END {print n, "all .br together"}'

clean:
	rm -rf dist dist.new dist.old .cache/app.wasm .cache/bin/standingbeam .cache/logs .cache/compressed

# --- checks -----------------------------------------------------------------

test: lint test-native test-wasm test-browser ## everything, browser last

lint: $(CHECK) ## gofmt, vet and staticcheck for both targets
	@bad=$$(gofmt -l app calc web testdata); test -z "$$bad" || { echo "gofmt: $$bad"; exit 1; }
	go vet -tags browser,bench ./...
	$(WASM) go vet ./...
	$(CHECK) -tags browser,bench ./...
	$(WASM) $(CHECK) ./...

# $(call tests,NAME,COMMAND): runs the tests with their whole output in a log;
# shows the packages, and on failure all but the passed tests.
define tests
	@mkdir -p $(LOGS); echo '$(1)'; \
	$(2) > $(LOGS)/$(1).log 2>&1 || { grep -vE '^ *(=== (RUN|PAUSE|CONT|NAME)|--- PASS|PASS)' $(LOGS)/$(1).log; exit 1; }; \
	grep -E '^(ok|---|FAIL)' $(LOGS)/$(1).log | grep -vE '^--- PASS' || true
endef

test-native:
	$(call tests,native,go test -v ./...)

# A small environment: node's bridge refuses more than some 8 kB of it.
NODE = "env -i PATH=$$PATH HOME=$$HOME $$(go env GOROOT)/lib/wasm/go_js_wasm_exec"
test-wasm:
	$(call tests,wasm,$(WASM) go test -v -exec $(NODE) $(PURE))

test-browser: browser axe dxf servers site-quick
	$(call tests,browser,go test -tags browser -v -p 1 -count=1 -timeout 40m ./app/pagetest)

bench: browser axe build ## speed and size, printed; nothing is judged
	@echo 'BenchmarkDesign is one full answer: aim below 50 µs, natively'
	go test -run '^$$' -bench . -benchmem ./calc/... ./app/...
	@echo 'the same under WebAssembly in node, inlined as the page is'
	$(WASM) go test -run '^$$' -bench 'Design|Explain' $(INLINE) -exec $(NODE) ./calc
	BENCH=1 go test -tags browser,bench -run '^TestBench' -v -p 1 -count=1 -timeout 30m ./app/pagetest | grep -vE '^(=== |PASS)'

# --- what has to be there ---------------------------------------------------

$(CHECK):
	GOBIN=$(CACHE)/bin/install go install honnef.co/go/tools/cmd/staticcheck@$(STATICCHECK)
	mv $(CACHE)/bin/install/staticcheck $(CHECK)

# One apt-get line for all, since a second update would delete what the first
# has downloaded.
browser:
	@command -v chromium > /dev/null && command -v firefox-esr > /dev/null && command -v pdftotext > /dev/null && command -v brotli > /dev/null || { \
		as_root=$$([ "$$(id -u)" = 0 ] || echo sudo); \
		export DEBIAN_FRONTEND=noninteractive; \
		$$as_root apt-get update && $$as_root apt-get -o DPkg::Lock::Timeout=900 install -y --no-install-recommends chromium firefox-esr poppler-utils brotli; }

# Servers as Debian builds them, for the tests of hosting: unpacked, not
# installed, so that nothing begins to serve on this machine.
servers: $(CACHE)/servers/ready

$(CACHE)/servers/ready:
	rm -rf $(CACHE)/servers
	mkdir -p $(CACHE)/servers/debs
	cd $(CACHE)/servers/debs; \
	get() { apt-get download nginx apache2-bin $$(apt-cache depends apache2-bin | sed -nE 's/^ *[|]?Depends: (libapr[a-z0-9]+)$$/\1/p'); }; \
	get || { as_root=$$([ "$$(id -u)" = 0 ] || echo sudo); $$as_root apt-get update && get; }
	for deb in $(CACHE)/servers/debs/*.deb; do dpkg-deb -x $$deb $(CACHE)/servers; done
	rm -r $(CACHE)/servers/debs
	touch $@

axe: $(CACHE)/axe-$(AXE).min.js

$(CACHE)/axe-$(AXE).min.js:
	mkdir -p $(CACHE)/npm
	cd $(CACHE)/npm && npm pack --silent axe-core@$(AXE)
	echo '$(AXE_SHA256)  $(CACHE)/npm/axe-core-$(AXE).tgz' | sha256sum -c -
	tar -xzf $(CACHE)/npm/axe-core-$(AXE).tgz -C $(CACHE)/npm package/axe.min.js
	mv $(CACHE)/npm/package/axe.min.js $@

# A general reader of DXF files, for the drawings.
dxf: $(CACHE)/dxf-parser-$(DXF).js

$(CACHE)/dxf-parser-$(DXF).js:
	mkdir -p $(CACHE)/npm
	cd $(CACHE)/npm && npm pack --silent dxf-parser@$(DXF)
	echo '$(DXF_SHA256)  $(CACHE)/npm/dxf-parser-$(DXF).tgz' | sha256sum -c -
	tar -xzf $(CACHE)/npm/dxf-parser-$(DXF).tgz -C $(CACHE)/npm package/dist/dxf-parser.js
	mv $(CACHE)/npm/package/dist/dxf-parser.js $@
