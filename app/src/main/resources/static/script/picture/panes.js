// Drawing of one time picture: panes above each other that share the time axis.

import { linear, logarithmic } from "./scales.js";

/** @typedef {import("./ink.js").Ink} Ink */
/**
 * @typedef {object} Line
 * @property {string} key @property {string} name @property {string} role
 * @property {string} pane @property {string} style solid, dash, dot or thin
 * @property {number[]} t seconds @property {(number|null)[]} lo @property {(number|null)[]} [hi]
 * @property {boolean} [other] whether it belongs to the run laid over this one
 */
/**
 * @typedef {object} Band
 * @property {string} name @property {string} role @property {string} pane
 * @property {number[]} t @property {(number|null)[]} lo @property {(number|null)[]} mid
 * @property {(number|null)[]} hi
 */
/** @typedef {{name: string, pane: string, value: number, lo?: number, hi?: number}} Limit */
/**
 * What draws: a canvas, or a record of the strokes (see svgpen.js).
 * @typedef {CanvasRenderingContext2D|import("./svgpen.js").SvgPen} Pen
 */
/** @typedef {{key: string, unit: string, scale: string, top: number, height: number}} Pane */

const DASHES = { solid: [], thin: [], dash: [7, 4], dot: [2, 4], dashdot: [8, 3, 2, 3] };

/** First index with t[index] >= second. @param {number[]} t @param {number} second */
export function indexAtOrAfter(t, second) {
  let low = 0;
  let high = t.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (t[middle] < second) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low;
}

/**
 * What a line shows at a moment: the lowest and highest value of that column, or null in a gap.
 * @param {Line} line @param {number} second @returns {[number, number]|null}
 */
export function rangeAt(line, second) {
  const i = indexAtOrAfter(line.t, second);
  if (i >= line.t.length || (i === 0 && line.t[0] > second + 1)) {
    return null;
  }
  const inGap = line.lo[i] === null && line.t[i] > second;
  const nearer = !inGap && i > 0 && second - line.t[i - 1] < line.t[i] - second ? i - 1 : i;
  const lo = line.lo[nearer];
  const hi = line.hi ? line.hi[nearer] : lo;
  return lo === null || hi === null || hi === undefined ? null : [lo, hi];
}

/** The middle of what a line shows at a moment, or null in a gap. @param {Line} line @param {number} second */
export function valueAt(line, second) {
  const range = rangeAt(line, second);
  return range === null ? null : (range[0] + range[1]) / 2;
}

/** Last value at or before a moment. @param {Line} line @param {number} to @returns {number|null} */
export function lastValue(line, to) {
  for (let i = Math.min(line.t.length - 1, indexAtOrAfter(line.t, to)); i >= 0; i--) {
    const lo = line.lo[i];
    if (line.t[i] <= to && lo !== null) {
      const hi = line.hi ? line.hi[i] : lo;
      return (lo + (hi ?? lo)) / 2;
    }
  }
  return null;
}

/**
 * Lowest and highest value in sight, with some air.
 * @param {Pane} pane @param {Line[]} lines @param {Band[]} bands @param {Limit[]} limits
 * @param {[number, number]} view
 * @returns {[number, number]}
 */
export function extent(pane, lines, bands, limits, view) {
  let low = Infinity;
  let high = -Infinity;
  const see = (/** @type {number|null|undefined} */ value) => {
    if (value !== null && value !== undefined && (pane.scale !== "log" || value > 0)) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  };
  for (const drawn of [...lines, ...bands]) {
    if (drawn.pane === pane.key) {
      const last = Math.min(drawn.t.length - 1, indexAtOrAfter(drawn.t, view[1]));
      for (let i = Math.max(0, indexAtOrAfter(drawn.t, view[0]) - 1); i <= last; i++) {
        see(drawn.lo[i]);
        see(drawn.hi ? drawn.hi[i] : drawn.lo[i]);
      }
    }
  }
  for (const limit of limits.filter((l) => l.pane === pane.key)) {
    see(limit.lo ?? limit.value);
    see(limit.hi ?? limit.value);
  }
  if (low > high) {
    return pane.scale === "log" ? [1, 100] : [0, 1];
  }
  if (pane.scale === "log") {
    return [low / 1.35, Math.max(high, low * 1.2) * 1.35];
  }
  const air = Math.max((high - low) * 0.06, 0.6);
  return [low - air, high + air];
}

/** @param {Pane} pane @param {[number, number]} range */
export function paneScale(pane, range) {
  const bottom = pane.top + pane.height;
  return pane.scale === "log"
    ? logarithmic(range[0], range[1], bottom, pane.top)
    : linear(range[0], range[1], bottom, pane.top, pane.height / 44);
}

/**
 * @param {Pen} c @param {Line} line @param {string} color
 * @param {(s: number) => number} x @param {(v: number) => number} y @param {[number, number]} view
 * @param {number} [more] how much wider than usual
 */
export function drawLine(c, line, color, x, y, view, more = 0) {
  const first = Math.max(0, indexAtOrAfter(line.t, view[0]) - 1);
  const last = Math.min(line.t.length - 1, indexAtOrAfter(line.t, view[1]) + 1);
  const thin = line.style === "thin" || line.style === "dot" || line.other;
  c.strokeStyle = color;
  c.lineWidth = (thin ? 1.25 : 1.75) + more;
  c.setLineDash(DASHES[/** @type {keyof typeof DASHES} */ (line.style)] ?? []);
  c.lineJoin = "round";
  c.beginPath();
  let pen = false;
  for (let i = first; i <= last; i++) {
    const lo = line.lo[i];
    const hi = line.hi ? line.hi[i] : lo;
    if (lo === null || hi === null || hi === undefined) {
      pen = false;
      continue;
    }
    const px = x(line.t[i]);
    const py = y(lo);
    if (pen) {
      c.lineTo(px, py);
    } else {
      c.moveTo(px, py);
      pen = true;
    }
    if (hi !== lo) {
      c.lineTo(px, y(hi));
    }
  }
  c.stroke();
  c.setLineDash([]);
}

/**
 * @param {Pen} c @param {Band} band @param {string} color
 * @param {(s: number) => number} x @param {(v: number) => number} y
 */
export function drawBand(c, band, color, x, y) {
  const known = band.t.map((_, i) => i).filter((i) => band.lo[i] !== null && band.hi[i] !== null);
  if (known.length < 2) {
    return;
  }
  c.fillStyle = color;
  c.globalAlpha = 0.16;
  c.beginPath();
  known.forEach((i, n) => {
    const py = y(/** @type {number} */ (band.hi[i]));
    if (n === 0) {
      c.moveTo(x(band.t[i]), py);
    } else {
      c.lineTo(x(band.t[i]), py);
    }
  });
  for (let n = known.length - 1; n >= 0; n--) {
    c.lineTo(x(band.t[known[n]]), y(/** @type {number} */ (band.lo[known[n]])));
  }
  c.closePath();
  c.fill();
  c.globalAlpha = 1;
  c.strokeStyle = color;
  c.lineWidth = 1;
  c.beginPath();
  known.forEach((i, n) => {
    const py = y(/** @type {number} */ (band.mid[i]));
    if (n === 0) {
      c.moveTo(x(band.t[i]), py);
    } else {
      c.lineTo(x(band.t[i]), py);
    }
  });
  c.stroke();
}

/**
 * A limit: dashed, with its doubt as a faint band and its name on it.
 * @param {Pen} c @param {Limit} limit @param {Ink} ink
 * @param {(v: number) => number} y @param {number} left @param {number} right
 */
export function drawLimit(c, limit, ink, y, left, right) {
  if (limit.lo !== undefined && limit.hi !== undefined) {
    c.globalAlpha = 0.1;
    c.fillStyle = ink.stop;
    c.fillRect(left, y(limit.hi), right - left, y(limit.lo) - y(limit.hi));
    c.globalAlpha = 1;
  }
  c.strokeStyle = ink.stop;
  c.lineWidth = 1.5;
  c.setLineDash([6, 5]);
  c.beginPath();
  c.moveTo(left, y(limit.value));
  c.lineTo(right, y(limit.value));
  c.stroke();
  c.setLineDash([]);
  writing(c, ink, limit.name, left + 8, y(limit.value) - 6, ink.stop, "left");
}

/**
 * Text with a thin paper edge so that lines behind do not disturb it.
 * @param {Pen} c @param {Ink} ink @param {string} text
 * @param {number} x @param {number} y @param {string} color @param {CanvasTextAlign} align
 */
export function writing(c, ink, text, x, y, color, align) {
  c.textAlign = align;
  c.lineWidth = 4;
  c.strokeStyle = ink.paper;
  c.lineJoin = "round";
  c.strokeText(text, x, y);
  c.fillStyle = color;
  c.fillText(text, x, y);
}
