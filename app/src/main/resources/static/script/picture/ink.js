// Colors of the stylesheet, for canvases.

/** @typedef {Record<string, string>} Ink */

const NAMES = [
  "paper", "sheet", "ink", "quiet", "axis", "rule", "tint", "action", "action-tint",
  "pass", "watch", "stop", "product", "shelf", "pressure", "collector", "room", "other",
  "ramp-short", "ramp-long",
];

/** The colors as they are now (day or night). @param {Element} element @returns {Ink} */
export function ink(element) {
  const style = getComputedStyle(element);
  return Object.fromEntries(NAMES.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]));
}

/** Calls back when the colors change. @param {() => void} redraw */
export function whenInkChanges(redraw) {
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", redraw);
  matchMedia("print").addEventListener("change", redraw);
}

/**
 * A canvas as sharp as the screen.
 * @param {HTMLCanvasElement} canvas @param {number} width @param {number} height
 * @param {number} [least] pixels of the canvas per pixel of the page, at least
 */
export function sharp(canvas, width, height, least = 1) {
  const ratio = Math.max(least, Math.min(3, devicePixelRatio || 1));
  canvas.width = Math.round(width * ratio);
  canvas.height = Math.round(height * ratio);
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  const context = /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d"));
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  return context;
}

/** @param {string} hex "#rrggbb" @returns {[number, number, number]} */
export function rgb(hex) {
  const n = parseInt(hex.slice(1), 16);
  return [(n >> 16) & 255, (n >> 8) & 255, n & 255];
}

/**
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} tag @param {string} className @param {string} [text]
 * @returns {HTMLElementTagNameMap[K]}
 */
export function element(tag, className, text) {
  const made = document.createElement(tag);
  made.className = className;
  if (text !== undefined) {
    made.textContent = text;
  }
  return made;
}
