"use strict";
// Starts the program and keeps the page usable without a network. Every
// address is taken from this script's own, so the site runs at any path.
const version = "{{version}}";
const programLength = {{programLength}};
const programSum = "{{programSum}}";
const base = new URL("./", document.currentScript.src);
const programEnv = {
  GOAPP_VERSION: version,
  GOAPP_INTERNAL_URLS: "[]",
  GOAPP_ROOT_PREFIX: base.pathname,
  GOAPP_STATIC_RESOURCES_URL: base.pathname + "web",
};

// The framework wants both storages, which a browser may refuse to give. Then
// they last as long as the page.
function stubStorage() {
  const held = new Map();
  return {
    get length() { return held.size; },
    key: (i) => [...held.keys()][i] ?? null,
    getItem: (key) => held.get(String(key)) ?? null,
    setItem: (key, value) => { held.set(String(key), String(value)); },
    removeItem: (key) => { held.delete(String(key)); },
    clear: () => { held.clear(); },
  };
}
for (const name of ["localStorage", "sessionStorage"]) {
  try {
    window[name].length;
  } catch {
    Object.defineProperty(window, name, { value: stubStorage() });
  }
}

// What is said before the program has come, and when it cannot. The language is
// the one chosen before, else the browser's.
const words = {
  en: {
    loading: "Loading the calculator",
    unloaded: "The calculator has not come whole. Until it does, this page is an example only. It is tried again as soon as there is a signal.",
    again: "Try again",
    stopped: "The page has stopped working. What was saved is kept.",
    reload: "Load the page again",
  },
  es: {
    loading: "Se está cargando la calculadora",
    unloaded: "La calculadora no ha llegado entera. Hasta que llegue, esta página es solo un ejemplo. Se intenta de nuevo en cuanto haya señal.",
    again: "Intentar de nuevo",
    stopped: "La página dejó de funcionar. Lo guardado se conserva.",
    reload: "Cargar la página otra vez",
  },
};
const language = [localStorage.getItem("standing-beam language"), navigator.language]
  .map((tag) => (tag || "").slice(0, 2).toLowerCase()).find((tag) => words[tag]) || "en";
const say = words[language];
// element is one of the document's, or one that is nowhere when the document
// was cut off before it.
const element = (id) => document.getElementById(id) || document.createElement("i");
for (const [id, text] of [["app-stopped-text", say.stopped], ["app-stopped-reload", say.reload]]) {
  element(id).textContent = text;
}
element("app-wasm-loader-bar").setAttribute("aria-label", say.loading);
for (const id of ["app-wasm-loader", "app-stopped"]) { element(id).lang = language; }

// What the Go framework expects to find on window.
var goappUpdatedBeforeWasmLoaded = false;
var goappAppInstallChangedBeforeWasmLoaded = false;
var goappNav = function () {};
var goappOnUpdate = function () { goappUpdatedBeforeWasmLoaded = true; };
var goappOnAppInstallChange = function () { goappAppInstallChangedBeforeWasmLoaded = true; };
function goappGetenv(name) { return programEnv[name]; }
function goappTryUpdate() { lookForUpdate(); }
function goappIsAppInstallable() { return installPrompt !== null; }
function goappIsAppInstalled() { return matchMedia("(display-mode: standalone)").matches || navigator.standalone === true; }
function goappIsAppleBrowser() { return /iP(hone|ad|od)/.test(navigator.userAgent) || /Macintosh/.test(navigator.userAgent) && navigator.maxTouchPoints > 1; }
async function goappShowInstallPrompt() {
  const prompt = installPrompt;
  installPrompt = null;
  if (prompt) { await prompt.prompt(); }
  goappOnAppInstallChange();
}

let installPrompt = null;
addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault();
  installPrompt = event;
  goappOnAppInstallChange();
});
addEventListener("appinstalled", () => {
  installPrompt = null;
  goappOnAppInstallChange();
});

// keepStorage asks, once, that the browser does not clear what is kept when
// room gets short. Some browsers ask a person in turn.
function keepStorage() {
  const asked = "standing-beam asked to stay";
  if (!navigator.storage?.persist || localStorage.getItem(asked)) { return; }
  localStorage.setItem(asked, "1");
  navigator.storage.persist().catch(() => { /* then it may be cleared */ });
}

// --- the program -----------------------------------------------------------
// A load that is cut off anywhere is made whole again by itself, as soon as
// there is a signal. Until then the example wall stays, with a word about it.

// Seconds between one try and the next; the last one repeats.
const pauses = [1, 3, 10, 30, 60];
const pauseAfter = (tries) => pauses[Math.min(tries, pauses.length - 1)] * 1000;

async function start() {
  element("app-waits").hidden = true;
  let promised; // a signal came while a try from before it was failing
  addEventListener("online", () => { promised = true; });
  for (let tries = 0; ; tries++) {
    promised = false;
    try {
      await run();
      break;
    } catch (err) {
      console.warn("starting failed, and is tried again:", err);
    }
    await signal(showWaits(), pauseAfter(promised ? 0 : tries));
  }
  keepForOffline();
}

// run starts the program, after mending what has not come of the page.
async function run() {
  if (!document.getElementById("app-end")) { await renew(); }
  await Promise.all([mendStyles(), mendScript()]);
  const go = new Go();
  const instance = await loadProgram(go);
  // The framework takes the first element for its own.
  for (const id of ["app-wasm-loader", "app-waits"]) { element(id).remove(); }
  go.run(instance).then(showStopped, showStopped);
}

// showWaits says that the calculator is not there, and returns what is pressed
// to try again. The document itself may have been cut off before either.
function showWaits() {
  let waits = document.getElementById("app-waits");
  if (!waits) {
    waits = document.createElement("aside");
    waits.id = "app-waits";
    waits.append(document.createElement("p"), document.createElement("a"));
    document.body.prepend(waits);
  }
  const again = waits.querySelector("a");
  if (waits.hidden || !again.textContent) {
    waits.setAttribute("role", "alert");
    waits.lang = language;
    waits.querySelector("p").textContent = say.unloaded;
    again.textContent = say.again;
    again.href = location.href;
    waits.hidden = false;
  }
  return again;
}

// signal waits for a try: asked for, promising, or due.
function signal(again, wait) {
  const over = new AbortController();
  return new Promise((done) => {
    setTimeout(done, wait);
    addEventListener("online", done, { signal: over.signal });
    again.addEventListener("click", (event) => { event.preventDefault(); done(); }, { signal: over.signal });
  }).finally(() => over.abort());
}

// renew loads the page again once the whole of it can be had, and never ends.
async function renew() {
  const response = await fetch(location.pathname + location.search, { cache: "no-cache" });
  const text = response.ok ? await response.text() : "";
  if (!text.includes('id="app-end"')) { throw new Error("the page is not whole"); }
  const same = text.includes('data-version="' + version + '"');
  if (same && document.getElementById("app-end")) { throw new Error("the host has files of two versions"); }
  location.reload();
  await new Promise(() => { /* this page ends here */ });
}

function mendStyles() {
  const missing = [...document.querySelectorAll('link[rel="stylesheet"]')].filter((link) => !link.sheet);
  return Promise.all(missing.map((link) => {
    const again = link.cloneNode();
    link.replaceWith(again);
    return come(again);
  }));
}

async function mendScript() {
  if (typeof Go === "function") { return; }
  const again = document.createElement("script");
  again.src = new URL("wasm_exec.js?v=" + version, base);
  document.head.append(again);
  await come(again);
}

function come(element) {
  return new Promise((done, failed) => {
    element.addEventListener("load", done);
    element.addEventListener("error", () => failed(new Error((element.src || element.href) + " has not come")));
  });
}

// loadProgram fetches the program of this version. When the host has another
// by now, the page is loaded again with it.
async function loadProgram(go) {
  const response = await fetch(new URL("web/app.wasm?v=" + version, base));
  if (!response.ok) { throw new Error("web/app.wasm: status " + response.status); }
  const [, instance] = await Promise.all([check(response.clone()), instantiate(response, go)]);
  return instance;
}

async function instantiate(response, go) {
  const type = response.headers.get("Content-Type") || "";
  if (WebAssembly.instantiateStreaming && type.startsWith("application/wasm")) {
    return (await WebAssembly.instantiateStreaming(response, go.importObject)).instance;
  }
  return (await WebAssembly.instantiate(await response.arrayBuffer(), go.importObject)).instance;
}

// check reads the program while the bar shows the share that has come, counted
// after decompression, as programLength is. The worker has checked what it
// keeps; what comes from the network is checked here.
async function check(response) {
  const bar = element("app-wasm-loader-bar");
  const reader = response.body.getReader();
  const whole = new Uint8Array(navigator.serviceWorker?.controller ? 0 : programLength);
  let come = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) { break; }
    if (come + value.byteLength <= whole.byteLength) { whole.set(value, come); }
    come += value.byteLength;
    bar.value = Math.min(1, come / programLength);
  }
  if (come !== programLength || whole.byteLength && self.crypto?.subtle && await sumOf(whole) !== programSum) {
    await renew();
  }
}

async function sumOf(bytes) {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

// showStopped runs when the program has ended, which only a fault does.
function showStopped() {
  document.documentElement.dataset.stopped = "1";
  element("app-stopped").hidden = false;
}
element("app-stopped-reload").addEventListener("click", () => location.reload());

// --- offline and updates ---------------------------------------------------
// The worker stores a new version whole beside the one that is shown. The page
// is then told, and goes on with what it has. The next load of the page gets
// the new version.

const workers = (() => {
  try { return navigator.serviceWorker; } catch { return undefined; }
})();
let registration;
let keepings = 0;
let told = false;
let lastLook = Date.now();

async function keepForOffline() {
  if (!workers) { return; }
  keepings++;
  try {
    const found = await workers.register(new URL("worker.js", base), { updateViaCache: "none" });
    if (found !== registration) {
      registration = found;
      registration.addEventListener("updatefound", watchInstalling);
    }
    watchInstalling();
    if (registration.active) { registration.active.postMessage("started"); }
    tellOfUpdate();
    lookForUpdate();
  } catch (err) {
    console.warn("working offline is not possible now:", err);
    if (err instanceof TypeError) { keepLater(); } // the network, and no refusal
  }
}

// keepLater tries again what was cut off: some times by itself, and whenever
// there is a signal again.
function keepLater() {
  const wait = keepings > pauses.length ? undefined : setTimeout(again, pauseAfter(keepings));
  addEventListener("online", again, { once: true });
  function again() {
    clearTimeout(wait);
    removeEventListener("online", again);
    keepForOffline();
  }
}

function watchInstalling() {
  const installing = registration.installing;
  if (!installing) { return; }
  const from = registration;
  installing.addEventListener("statechange", () => {
    if (installing.state === "installed") { tellOfUpdate(); }
    if (installing.state === "redundant" && !from.active) { keepLater(); }
  });
}

// tellOfUpdate tells the page, once, when the next load will get another
// version than this.
async function tellOfUpdate() {
  const note = await caches.match(new URL("current-version", base),
    { cacheName: "standing-beam " + base.pathname + " note" });
  if (!told && note && await note.text() !== version) {
    told = true;
    goappOnUpdate();
  }
}

function lookForUpdate() {
  lastLook = Date.now();
  if (registration) { registration.update().catch(() => { /* no network */ }); }
}

addEventListener("online", lookForUpdate);
document.addEventListener("visibilitychange", () => {
  const hour = 60 * 60 * 1000;
  if (document.visibilityState === "visible" && Date.now() - lastLook > hour) { lookForUpdate(); }
});

start();
