"use strict";
// Runs before anything is drawn. The look and the language that were chosen,
// which the program notes for this script, hold from the first frame on. A page
// that comes for a lesson, or stands in a page of another site, does not show
// the example wall first.
{
  const root = document.documentElement;
  const tried = (get) => { try { return get(); } catch { return null; } };
  const noted = (what) => tried(() => localStorage.getItem("standing-beam " + what));
  const elsewhere = /^#(?:(why)(\/|$)|(embed)(&|$))/.exec(location.hash);
  if (elsewhere) { root.dataset.coming = elsewhere[1] || elsewhere[3]; }
  const theme = root.dataset.coming !== "embed" && noted("theme");
  if (theme) { root.dataset.theme = theme; }
  if (theme === "glare") {
    const watch = new MutationObserver(layGlare);
    watch.observe(document, { childList: true, subtree: true });
    layGlare();
    // layGlare needs the link, which may be still to come.
    function layGlare() {
      const glare = document.getElementById("glare");
      if (!glare) { return; }
      watch.disconnect();
      glare.media = "screen and (forced-colors: none)";
    }
  }
  const language = (noted("language") || navigator.language || "").slice(0, 2).toLowerCase();
  if ({{languages}}.includes(language)) {
    root.lang = language;
    if (!elsewhere) { showIn(language); }
  }

  // showIn puts the page in another language in the place of the document's
  // own, which stays hidden until then, for some seconds at most. What is kept
  // starts as fast as this could come.
  function showIn(language) {
    root.dataset.coming = "words";
    if (tried(() => navigator.serviceWorker.controller)) { return; }
    const come = fetch(language + ".html?v=" + root.dataset.version).then((r) => r.ok ? r.text() : "").catch(() => "");
    const whole = document.readyState !== "loading" ||
      new Promise((done) => document.addEventListener("readystatechange", done, { once: true }));
    Promise.all([come, whole]).then(([page]) => {
      const front = document.getElementById("front");
      if (page && document.getElementById("app-wasm-loader") && getComputedStyle(front).visibility === "hidden") {
        front.outerHTML = page;
        delete root.dataset.coming;
      }
    });
  }

  // A document that was cut off never starts the calculator, nor does one whose
  // starting script has not come. What has come offers to try again, after a while.
  addEventListener("online", () => {
    const state = document.readyState;
    if (state === "loading" || state === "complete" && typeof pauses === "undefined") { location.reload(); }
  });
}
