// The picture of a run and what belongs to it on its page: findings, events, fields, export.

import { mountExport } from "./export.js";
import { TimeChart } from "./picture/timechart.js";

/** @typedef {import("./picture/panes.js").Line} Line */
/** @typedef {{t: number[], lines: Line[]}} Columns */

/** @param {HTMLElement} figure */
export function mountRun(figure) {
  const place = /** @type {HTMLElement} */ (figure.querySelector(".chart-place"));
  const picture = JSON.parse(figure.dataset.picture ?? "{}");
  const other = picture.other;
  picture.lines = linesOf(picture.columns);
  if (other) {
    picture.lines.push(...beside(linesOf(other.columns), other));
  }
  const chart = new TimeChart(place, picture, (from, to, pixels) => load(figure, picture, from, to, pixels));
  mountFindings(place, chart);
  mountEvents(place, chart, picture);
  mountFields(figure, chart, picture);
  mountExport(figure, chart);
}

/** Every line has the same times. @param {Columns} columns @returns {Line[]} */
function linesOf(columns) {
  return columns.lines.map((line) => ({ ...line, t: columns.t }));
}

/** The lines of another run, moved to where they are compared. @param {Line[]} lines @param {{offset_s: number, suffix: string}} other @returns {Line[]} */
function beside(lines, other) {
  const moved = (lines[0]?.t ?? []).map((second) => second + other.offset_s);
  return lines.map((line) => ({
    ...line, key: `other ${line.key}`, name: `${line.name} ${other.suffix}`, t: moved, other: true,
  }));
}

/**
 * @param {HTMLElement} figure @param {any} picture @param {number} from @param {number} to @param {number} pixels
 * @returns {Promise<Line[]>}
 */
async function load(figure, picture, from, to, pixels) {
  const ask = async (/** @type {string} */ address, /** @type {number} */ offset) => {
    const answer = await fetch(`${address}?from=${from - offset}&to=${to - offset}&pixels=${pixels}`);
    return answer.ok ? linesOf(await answer.json()) : [];
  };
  const other = picture.other;
  const [own, compared] = await Promise.all([
    ask(figure.dataset.series ?? "", 0),
    other ? ask(other.series, other.offset_s).then((lines) => beside(lines, other)) : [],
  ]);
  return own.length > 0 ? [...own, ...compared] : [];
}

/** @param {HTMLElement} place @param {TimeChart} chart */
function mountFindings(place, chart) {
  for (const button of document.querySelectorAll("[data-finding]")) {
    button.addEventListener("click", () => {
      const { finding, from, to } = /** @type {HTMLElement} */ (button).dataset;
      const n = Number(finding);
      markFinding(n);
      chart.choose(n, from === undefined);
      if (from !== undefined) {
        chart.frame(Number(from), Number(to));
      }
      showPicture(place);
    });
  }
  place.addEventListener("finding", (event) => {
    const n = /** @type {CustomEvent<number|null>} */ (event).detail;
    markFinding(n);
    if (n !== null) {
      chart.choose(n, false);
      const item = document.getElementById(`finding-${n}`);
      item?.scrollIntoView({ block: "nearest" });
      /** @type {HTMLElement|null|undefined} */ (item?.querySelector("button.finding"))?.focus({ preventScroll: true });
    }
  });
}

/** Brings the picture back into sight where it stands above a long list. @param {HTMLElement} place */
function showPicture(place) {
  const box = place.getBoundingClientRect();
  if (box.bottom < 120 || box.top > innerHeight - 120) {
    place.scrollIntoView({ block: "start" });
  }
}

/** @param {number|null} n */
function markFinding(n) {
  for (const item of document.querySelectorAll(".finding-list > li")) {
    item.classList.toggle("chosen", item.id === `finding-${n}`);
  }
}

/** @param {HTMLElement} place @param {TimeChart} chart @param {any} picture */
function mountEvents(place, chart, picture) {
  for (const button of document.querySelectorAll("[data-event]")) {
    button.addEventListener("click", () => {
      const id = /** @type {HTMLElement} */ (button).dataset.event ?? "";
      const event = picture.events.find((/** @type {{id: string}} */ e) => e.id === id);
      if (event) {
        chart.chosenEvent = id;
        chart.frame(event.t_s, event.t_s);
        chart.point(event.t_s);
        markEvent(id);
        showPicture(place);
      }
    });
  }
  place.addEventListener("event", (event) => {
    const id = /** @type {CustomEvent<string>} */ (event).detail;
    const list = document.querySelector("details.events");
    list?.setAttribute("open", "");
    markEvent(id);
    document.getElementById(`event-${id}`)?.scrollIntoView({ block: "nearest" });
  });
}

/** @param {string} id */
function markEvent(id) {
  for (const row of document.querySelectorAll(".event-list > li")) {
    row.classList.toggle("chosen", row.id === `event-${id}`);
  }
}

/** From and to as fields, and the phases as a choice: what dragging does, without dragging. @param {HTMLElement} figure @param {TimeChart} chart @param {any} picture */
function mountFields(figure, chart, picture) {
  const form = /** @type {HTMLFormElement|null} */ (figure.querySelector("form.stretch"));
  if (!form) {
    return;
  }
  const [from, to] = /** @type {HTMLInputElement[]} */ ([form.elements.namedItem("from"), form.elements.namedItem("to")]);
  const phase = /** @type {HTMLSelectElement} */ (form.elements.namedItem("phase"));
  const known = picture.start_ms !== null;
  const clock = /** @type {import("./picture/scales.js").Clock} */ (chart.clock);
  const write = (/** @type {number} */ second) => (known ? clock.local(second) : (second / 3600).toFixed(3));
  const read = (/** @type {HTMLInputElement} */ field) => (known ? clock.second(field.value) : Number(field.value) * 3600);
  const fill = () => {
    for (const [field, second] of /** @type {const} */ ([[from, chart.view[0]], [to, chart.view[1]]])) {
      if (document.activeElement !== field) {
        field.value = write(second);
      }
    }
  };
  form.hidden = false;
  fill();
  figure.addEventListener("view", fill);
  figure.addEventListener("cursor", (event) => {
    const second = /** @type {CustomEvent<number|null>} */ (event).detail;
    if (second !== null) {
      document.dispatchEvent(new CustomEvent("cursor-moment", { detail: write(second) }));
    }
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const [a, b] = [read(from), read(to)];
    if (Number.isFinite(a) && Number.isFinite(b) && b > a) {
      chart.show(a, b);
    }
  });
  phase.addEventListener("change", () => {
    const chosen = picture.phases[Number(phase.value)];
    chart.show(...(phase.value === "" ? [0, picture.duration_s] : [chosen.from_s, chosen.to_s]));
  });
}
