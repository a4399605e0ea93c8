// The picture of a run and the findings beside it.

import { TimeChart } from "./picture/timechart.js";

/** @param {HTMLElement} figure */
export function mountRun(figure) {
  const place = /** @type {HTMLElement} */ (figure.querySelector(".chart-place"));
  const picture = JSON.parse(figure.dataset.picture ?? "{}");
  const chart = new TimeChart(place, picture, async (from, to, pixels) => {
    const answer = await fetch(`${figure.dataset.series}?from=${from}&to=${to}&pixels=${pixels}`);
    return answer.ok ? answer.json() : [];
  });
  for (const button of document.querySelectorAll("[data-finding]")) {
    button.addEventListener("click", () => {
      choose(Number(/** @type {HTMLElement} */ (button).dataset.finding));
      chart.choose(Number(/** @type {HTMLElement} */ (button).dataset.finding), true);
    });
  }
  place.addEventListener("finding", (event) => {
    const n = /** @type {CustomEvent<number>} */ (event).detail;
    choose(n);
    document.getElementById(`finding-${n}`)?.scrollIntoView({ block: "nearest", behavior: "smooth" });
  });
}

/** @param {number} n */
function choose(n) {
  for (const item of document.querySelectorAll(".finding-list > li")) {
    item.classList.toggle("chosen", item.id === `finding-${n}`);
  }
}
