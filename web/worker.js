"use strict";
// Keeps the site, so that it works without a network. Each version lies whole
// in a cache of its own, and one entry names the version that the next load
// of the page gets. Files are asked for with their version, as ?v=…, so any
// worker can serve any version it finds, and no page mixes two.
const version = "{{version}}";
const files = {{files}};

const root = self.registration.scope;
const family = "standing-beam " + new URL(root).pathname + " ";
const noteCache = family + "note";
const comingFamily = "standing-beam-coming " + new URL(root).pathname + " ";
const noteAddress = new URL("current-version", root);

// --- keeping a version -----------------------------------------------------

self.addEventListener("install", (event) => event.waitUntil(install()));

// install fetches everything past the HTTP cache and checks that each file is
// the one this version was built with. One that differs or is missing, as
// while a host is being changed, stops the whole, and the page goes on with
// the version it has. So does a network that goes: what has come by then is
// laid aside, and the next install, which the page or the browser begins,
// fetches the rest.
async function install() {
  await deleteComing(comingFamily + version);
  const coming = await caches.open(comingFamily + version);
  const bodies = await Promise.all(files.map((file) => have(file, coming)));
  const cache = await caches.open(family + version);
  try {
    await Promise.all(files.map((file, i) => cache.put(new URL(file.path, root), new Response(bodies[i], {
      headers: { "Content-Type": file.type, "Content-Length": String(bodies[i].byteLength) },
    }))));
  } catch (err) {
    if (await currentVersion() !== version) { await caches.delete(family + version); }
    throw err;
  } finally {
    await deleteComing();
  }
  const before = await currentVersion();
  await setCurrentVersion(version);
  await deleteAllBut(version, before);
  self.skipWaiting(); // not awaited: it may itself wait for the end of this
}

// have returns a file of this version: what an earlier install has laid aside,
// or what the host has.
async function have(file, coming) {
  const address = new URL(file.path, root);
  const aside = await coming.match(address);
  if (aside) {
    const body = await aside.arrayBuffer();
    if (await sumOf(body) === file.sha256) { return body; }
  }
  const asked = new URL(address);
  if (file.path !== "./") { asked.searchParams.set("v", version); }
  const body = await fetchWhole(asked);
  if (await sumOf(body) !== file.sha256) { throw new Error(file.path + ": not the file of version " + version); }
  await coming.put(address, new Response(body)).catch(() => { /* no room for both */ });
  return body;
}

// fetchWhole tries again when the network fails, which is a TypeError.
async function fetchWhole(address) {
  for (const wait of [1, 4, 0]) {
    try {
      const response = await fetch(address, { cache: "no-cache" });
      if (!response.ok) { throw new Error(address + ": status " + response.status); }
      return await response.arrayBuffer();
    } catch (err) {
      if (!wait || !(err instanceof TypeError)) { throw err; }
    }
    await new Promise((done) => setTimeout(done, wait * 1000));
  }
}

async function sumOf(body) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

// deleteComing removes what was laid aside, but for one version's.
async function deleteComing(but) {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(comingFamily) && name !== but).map((name) => caches.delete(name)));
}

async function currentVersion() {
  const note = await caches.match(noteAddress, { cacheName: noteCache });
  return note ? note.text() : "";
}

async function setCurrentVersion(name) {
  const cache = await caches.open(noteCache);
  await cache.put(noteAddress, new Response(name));
}

// deleteAllBut removes this site's versions other than those named. Caches of
// other sites of the origin are not touched.
async function deleteAllBut(...keep) {
  const names = await caches.keys();
  await Promise.all(names
    .filter((name) => name.startsWith(family) && name !== noteCache && !keep.includes(name.slice(family.length)))
    .map((name) => caches.delete(name)));
}

// A page that has started says so. When it is the only one, no other version
// is needed any more.
self.addEventListener("message", (event) => {
  if (event.data === "started") { event.waitUntil(tidy()); }
});

async function tidy() {
  const tabs = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (tabs.filter((tab) => tab.url.startsWith(root)).length <= 1) {
    await deleteAllBut(await currentVersion());
  }
}

// --- serving it ------------------------------------------------------------

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const address = new URL(request.url);
  if (request.method !== "GET" || !address.href.startsWith(root)) { return; }
  if (request.mode !== "navigate") {
    event.respondWith(answer(address, address.searchParams.get("v"), request));
    return;
  }
  const path = address.pathname;
  if (path === new URL(root).pathname || path === new URL("index.html", root).pathname) {
    event.respondWith(answer(root, null, request));
  }
});

// answer looks an address up in the version wanted, or else in the current
// one. What is not kept comes from the network.
async function answer(address, wanted, request) {
  const cacheName = family + (wanted || await currentVersion());
  return await caches.match(address, { cacheName, ignoreSearch: true }) || fetch(request);
}
