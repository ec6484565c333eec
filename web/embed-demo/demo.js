"use strict";
// What the page does with what the calculator says, and what it asks of it.
const east = document.getElementById("east");
const says = document.getElementById("says");

function show({ detail }) {
  says.textContent = `${detail.finished.mark}: ${detail.finished.title}. Today: ${detail.today.title}.`;
}
east.addEventListener("ready", show);
east.addEventListener("change", show);

document.getElementById("lower").addEventListener("click", () => {
  const file = structuredClone(east.wall);
  file.walls[0].grade.a = "6 ft";
  east.wall = file;
});

document.getElementById("metric").addEventListener("click", (event) => {
  const metric = east.getAttribute("units") === "metric";
  east.setAttribute("units", metric ? "us" : "metric");
  event.currentTarget.textContent = metric ? "In metric" : "In feet and inches";
});
