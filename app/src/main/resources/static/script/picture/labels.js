// The names of the lines beside a time picture: each shows its value at the cursor and hides its line.

import { element } from "./ink.js";
import { lastValue, rangeAt } from "./panes.js";
import { figure, significant } from "./scales.js";

/** @typedef {import("./panes.js").Line} Line */
/** @typedef {import("./panes.js").Band} Band */
/** @typedef {import("./layout.js").Layout} Layout */

const STEP = 20;

export class Labels {
  /** @param {import("./timechart.js").TimePicture} picture @param {() => void} changed called when a line is hidden or shown */
  constructor(picture, changed) {
    this.list = element("ul", "chart-labels");
    this.panes = new Map(picture.panes.map((pane) => [pane.key, pane]));
    /** @type {Set<string>} */
    this.hidden = new Set();
    /** @type {Map<string, {item: HTMLElement, value: HTMLElement, drawn: Line|Band}>} */
    this.labelOf = new Map();
    for (const drawn of [...picture.lines, ...picture.bands]) {
      const key = "mid" in drawn ? `band ${drawn.name}` : drawn.key;
      this.labelOf.set(key, this.label(key, drawn, changed));
    }
  }

  /** @param {string} key @param {Line|Band} drawn @param {() => void} changed */
  label(key, drawn, changed) {
    const band = "mid" in drawn;
    const item = element("li", `role-${drawn.role}${"other" in drawn && drawn.other ? " other" : ""}`);
    const toggle = element(band ? "span" : "button", "label");
    const value = element("b", "");
    toggle.append(element("i", `swatch ${band ? "band" : drawn.style}`), element("span", "", drawn.name), value);
    if (toggle instanceof HTMLButtonElement) {
      toggle.type = "button";
      toggle.setAttribute("aria-pressed", "true");
      toggle.dataset.line = key;
      toggle.addEventListener("click", () => {
        const hide = !this.hidden.has(key);
        (hide ? this.hidden.add(key) : this.hidden.delete(key)) && item.classList.toggle("off", hide);
        toggle.setAttribute("aria-pressed", String(!hide));
        changed();
      });
    }
    item.append(toggle);
    this.list.append(item);
    return { item, value, drawn };
  }

  /** @param {Line[]} lines */
  shown(lines) {
    return this.hidden.size === 0 ? lines : lines.filter((line) => !this.hidden.has(line.key));
  }

  /** Values beside the lines; where there is room, at the lines' own height. @param {Layout} layout @param {Line[]} lines @param {number|null} cursor */
  place(layout, lines, cursor) {
    const beside = getComputedStyle(this.list).position === "absolute";
    this.list.style.height = beside ? `${layout.height}px` : "";
    for (const pane of layout.panes) {
      const scale = /** @type {import("./scales.js").Scale} */ (layout.scales.get(pane.key));
      const here = [...this.labelOf.values()].filter((label) => label.drawn.pane === pane.key);
      const spots = here.map((label) => {
        const end = lastValue(current(label.drawn, lines), layout.view[1]);
        return { label, y: end === null ? pane.top + pane.height : scale.at(end) };
      });
      spots.sort((a, b) => a.y - b.y);
      spread(spots, pane.top + 4, pane.top + pane.height + 17);
      for (const spot of spots) {
        spot.label.item.style.top = beside ? `${spot.y - STEP / 2}px` : "";
        spot.label.value.textContent = this.words(spot.label.drawn, lines, cursor);
      }
    }
  }

  /** "TP1 −33.1 °C, p 8.0 Pa" for whoever listens. @param {Line[]} lines @param {number} cursor */
  sentence(lines, cursor) {
    return [...this.labelOf.values()]
      .filter((label) => !("key" in label.drawn && this.hidden.has(label.drawn.key)))
      .map((label) => `${label.drawn.name} ${this.words(label.drawn, lines, cursor)}`)
      .join(", ");
  }

  /** @param {Line|Band} drawn @param {Line[]} lines @param {number|null} cursor */
  words(drawn, lines, cursor) {
    if (cursor === null) {
      return "";
    }
    const range = rangeAt(current(drawn, lines), cursor);
    return range === null ? "\u2013" : quantity(range, this.panes.get(drawn.pane));
  }
}

/**
 * One value, or both where a column of pixels hides more than a little.
 * @param {[number, number]} range @param {{unit: string, decimals?: number}|undefined} pane
 */
function quantity([lo, hi], pane) {
  const unit = pane?.unit ?? "";
  const decimals = pane?.decimals ?? (unit === "°C" ? 1 : -1);
  const words = (/** @type {number} */ value) => (decimals >= 0 ? figure(value, decimals) : significant(value));
  const wide = unit === "°C" ? hi - lo > 1 : hi > 0 && (hi - lo) / hi > 0.1;
  const number = wide ? `${words(lo)}\u2026${words(hi)}` : words((lo + hi) / 2);
  return unit ? `${number}\u202f${unit}` : number;
}

/** @param {Line|Band} drawn @param {Line[]} lines @returns {Line} */
function current(drawn, lines) {
  if ("mid" in drawn) {
    return /** @type {Line} */ (/** @type {unknown} */ ({ t: drawn.t, lo: drawn.mid }));
  }
  return lines.find((line) => line.key === drawn.key) ?? drawn;
}

/** Pushes labels apart. @param {{y: number}[]} spots sorted @param {number} top @param {number} bottom */
function spread(spots, top, bottom) {
  for (let i = 0; i < spots.length; i++) {
    const above = i === 0 ? top - STEP : spots[i - 1].y;
    spots[i].y = Math.max(spots[i].y, above + STEP);
  }
  let limit = bottom;
  for (let i = spots.length - 1; i >= 0 && spots[i].y > limit; i--) {
    spots[i].y = limit;
    limit -= STEP;
  }
}
