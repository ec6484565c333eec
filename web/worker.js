"use strict";
// Keeps one whole version of the site, so that it works without a network.
const version = "{{version}}";
const files = {{files}};

const root = self.registration.scope;
const family = "standing-beam " + new URL(root).pathname + " ";
const cacheName = family + version;
const known = new Set(files.map((file) => new URL(file.path, root).pathname));
const start = new URL(root).pathname;

self.addEventListener("install", (event) => event.waitUntil(install()));

// install fetches everything past the HTTP cache and checks that each file is
// the one this version was built with. One that differs or is missing, as
// while a host is being updated, stops the whole: versions never mix. The
// browser tries again later.
async function install() {
  const bodies = await Promise.all(files.map(fetchChecked));
  const cache = await caches.open(cacheName);
  try {
    await Promise.all(files.map((file, i) => cache.put(new URL(file.path, root), new Response(bodies[i], {
      headers: { "Content-Type": file.type, "Content-Length": String(bodies[i].byteLength) },
    }))));
  } catch (err) {
    await caches.delete(cacheName);
    throw err;
  }
}

async function fetchChecked(file) {
  const address = new URL(file.path, root);
  if (file.path !== "./") { address.searchParams.set("v", version); }
  const response = await fetch(address, { cache: "no-cache" });
  if (!response.ok) { throw new Error(file.path + ": status " + response.status); }
  const body = await response.arrayBuffer();
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
  const found = Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
  if (found !== file.sha256) { throw new Error(file.path + ": not the file of version " + version); }
  return body;
}

self.addEventListener("activate", (event) => event.waitUntil(deleteOlder()));

async function deleteOlder() {
  const names = await caches.keys();
  await Promise.all(names
    .filter((name) => name.startsWith(family) && name !== cacheName)
    .map((name) => caches.delete(name)));
}

// A new version waits until no tab shows the old one, or until a page that
// has only begun to load asks for it.
self.addEventListener("message", (event) => {
  if (event.data === "take over") { event.waitUntil(self.skipWaiting()); }
});

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const address = new URL(request.url);
  if (request.method !== "GET" || address.origin !== self.location.origin) { return; }
  if (request.mode === "navigate") {
    if (address.pathname === start || address.pathname === start + "index.html") {
      event.respondWith(answer(root, request));
    }
    return;
  }
  if (!known.has(address.pathname)) { return; }
  const wanted = address.searchParams.get("v");
  event.respondWith(wanted && wanted !== version ? Response.error() : answer(address, request));
});

async function answer(address, request) {
  const cache = await caches.open(cacheName);
  return await cache.match(address, { ignoreSearch: true }) || fetch(request);
}
