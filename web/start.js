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

let started = false;

async function start() {
  if (await takeWaitingVersion()) {
    location.reload();
    return;
  }
  const loader = document.getElementById("app-wasm-loader");
  try {
    const go = new Go();
    const instance = await loadProgram(go, document.getElementById("app-wasm-loader-bar"));
    started = true;
    go.run(instance).then(showStopped, showStopped);
    loader.remove();
  } catch (err) {
    console.error("starting failed:", err);
    document.getElementById("app-wasm-loader-label").textContent =
      "The calculator could not be loaded. Load the page again when there is a signal.";
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
// A new version installs itself whole beside the old one and waits. The page
// is told, and goes on with the version it has. The next load of the page
// takes the waiting version before anything can be typed.

const workers = (() => {
  try { return navigator.serviceWorker; } catch { return undefined; }
})();
let registration;
let lastLook = Date.now();

async function takeWaitingVersion() {
  try {
    const known = workers && await workers.getRegistration(base);
    const waiting = known && known.waiting;
    if (!waiting || !known.active) { return false; }
    return await new Promise((resolve) => {
      waiting.addEventListener("statechange", () => {
        if (waiting.state === "activated") { resolve(true); }
        if (waiting.state === "redundant") { resolve(false); }
      });
      setTimeout(resolve, 4000, false);
      waiting.postMessage("take over");
    });
  } catch {
    return false;
  }
}

async function keepForOffline() {
  if (!workers) { return; }
  try {
    registration = await workers.register(new URL("worker.js", base), { updateViaCache: "none" });
    registration.addEventListener("updatefound", watchInstalling);
    watchInstalling();
    if (registration.waiting && registration.active) { goappOnUpdate(); }
    lookForUpdate();
  } catch (err) {
    console.warn("working offline is not possible here:", err);
  }
}

function watchInstalling() {
  const installing = registration.installing;
  if (!installing) { return; }
  installing.addEventListener("statechange", () => {
    if (installing.state === "installed" && registration.active) { goappOnUpdate(); }
  });
}

function lookForUpdate() {
  lastLook = Date.now();
  if (registration) { registration.update().catch(() => { /* no network */ }); }
}

document.addEventListener("visibilitychange", () => {
  const hour = 60 * 60 * 1000;
  if (document.visibilityState === "visible" && Date.now() - lastLook > hour) { lookForUpdate(); }
});

// Another tab has let a new version take over.
if (workers && workers.controller) {
  workers.addEventListener("controllerchange", () => {
    if (started) { goappOnUpdate(); } else { location.reload(); }
  });
}

start();
