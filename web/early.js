"use strict";
// Runs before the page is first drawn. A page that comes for a lesson, or
// stands in a page of another site, does not show the example wall first.
{
  const at = location.hash;
  if (/^#why(\/|$)/.test(at)) { document.documentElement.dataset.coming = "why"; }
  if (/^#embed(&|$)/.test(at)) { document.documentElement.dataset.coming = "embed"; }
  // A document that was cut off never starts the calculator.
  addEventListener("online", () => {
    if (document.readyState === "loading") { location.reload(); }
  });
}
