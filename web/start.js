"use strict";
// Starts the program and keeps the page usable without a network. Every
// address is taken from this script's own, so the site runs at any path.
const version = "{{version}}";
const programLength = {{programLength}};
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
    unloaded: "The calculator could not be loaded. Load the page again when there is a signal.",
    stopped: "The page has stopped working. What was saved is kept.",
    reload: "Load the page again",
  },
  es: {
    loading: "Se está cargando la calculadora",
    unloaded: "La calculadora no se pudo cargar. Cargue la página otra vez cuando haya señal.",
    stopped: "La página dejó de funcionar. Lo guardado se conserva.",
    reload: "Cargar la página otra vez",
  },
};
const language = [localStorage.getItem("standing-beam language"), navigator.language]
  .map((tag) => (tag || "").slice(0, 2).toLowerCase()).find((tag) => words[tag]) || "en";
const say = words[language];
for (const [id, text] of [["app-stopped-text", say.stopped], ["app-stopped-reload", say.reload]]) {
  document.getElementById(id).textContent = text;
}
document.getElementById("app-wasm-loader-bar").setAttribute("aria-label", say.loading);
for (const id of ["app-wasm-loader", "app-stopped"]) { document.getElementById(id).lang = language; }

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
function goappIsAppleBrowser() { return /iP(hone|ad|od)/.test(navigator.userAgent); }
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

// --- the program -----------------------------------------------------------

async function start() {
  const loader = document.getElementById("app-wasm-loader");
  try {
    const go = new Go();
    const instance = await loadProgram(go, document.getElementById("app-wasm-loader-bar"));
    go.run(instance).then(showStopped, showStopped);
    loader.remove();
  } catch (err) {
    console.error("starting failed:", err);
    document.getElementById("app-wasm-loader-label").textContent = say.unloaded;
  }
  keepForOffline();
}

// loadProgram fetches the program while bar shows the share that has come,
// counted after decompression, as programLength is.
async function loadProgram(go, bar) {
  const response = await fetch(new URL("web/app.wasm?v=" + version, base));
  if (!response.ok) { throw new Error("web/app.wasm: status " + response.status); }
  showProgress(response.clone(), bar);
  const type = response.headers.get("Content-Type") || "";
  if (WebAssembly.instantiateStreaming && type.startsWith("application/wasm")) {
    return (await WebAssembly.instantiateStreaming(response, go.importObject)).instance;
  }
  return (await WebAssembly.instantiate(await response.arrayBuffer(), go.importObject)).instance;
}

async function showProgress(response, bar) {
  try {
    const reader = response.body.getReader();
    let come = 0;
    for (;;) {
      const { done, value } = await reader.read();
      if (done) { break; }
      come += value.byteLength;
      bar.value = Math.min(1, come / programLength);
    }
  } catch { /* the load itself reports what went wrong */ }
}

// showStopped runs when the program has ended, which only a fault does.
function showStopped() {
  document.documentElement.dataset.stopped = "1";
  document.getElementById("app-stopped").hidden = false;
}
document.getElementById("app-stopped-reload").addEventListener("click", () => location.reload());

// --- offline and updates ---------------------------------------------------
// The worker stores a new version whole beside the one that is shown. The page
// is then told, and goes on with what it has. The next load of the page gets
// the new version.

const workers = (() => {
  try { return navigator.serviceWorker; } catch { return undefined; }
})();
let registration;
let told = false;
let lastLook = Date.now();

async function keepForOffline() {
  if (!workers) { return; }
  try {
    registration = await workers.register(new URL("worker.js", base), { updateViaCache: "none" });
    registration.addEventListener("updatefound", watchInstalling);
    watchInstalling();
    if (registration.active) { registration.active.postMessage("started"); }
    tellOfUpdate();
    lookForUpdate();
  } catch (err) {
    console.warn("working offline is not possible here:", err);
  }
}

function watchInstalling() {
  const installing = registration.installing;
  if (!installing) { return; }
  installing.addEventListener("statechange", () => {
    if (installing.state === "installed") { tellOfUpdate(); }
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

document.addEventListener("visibilitychange", () => {
  const hour = 60 * 60 * 1000;
  if (document.visibilityState === "visible" && Date.now() - lastLook > hour) { lookForUpdate(); }
});

start();
