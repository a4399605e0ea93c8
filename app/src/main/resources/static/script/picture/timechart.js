// One picture over time: phases, bands of a plan, limits, measured lines, findings; zoom and brush.

import { element, ink, sharp, whenInkChanges } from "./ink.js";
import { Clock, Elapsed, figure, significant } from "./scales.js";
import { drawBand, drawLimit, drawLine, extent, paneScale, valueAt, writing } from "./panes.js";

/** @typedef {import("./panes.js").Line} Line */
/** @typedef {import("./panes.js").Band} Band */
/** @typedef {import("./panes.js").Limit} Limit */
/** @typedef {{name: string, from_s: number, to_s: number}} Phase */
/** @typedef {{n: number, from_s: number, to_s: number, state: string, name: string}} Mark */
/**
 * @typedef {object} TimePicture
 * @property {string} zone @property {number|null} start_ms @property {number} duration_s
 * @property {{key: string, unit: string, scale: string, share: number}[]} panes
 * @property {Line[]} lines @property {Band[]} bands @property {Limit[]} limits
 * @property {Phase[]} phases @property {Mark[]} marks
 * @property {Record<string, string>} words
 */
/** @typedef {(from: number, to: number, pixels: number) => Promise<Line[]>} Loader */

const FONT = "13px system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', sans-serif";
const HEAD = 40;
const FOOT = 40;
const GAP = 34;
const LEFT = 60;
const NARROW = 620;
const SHORTEST_VIEW_S = 20;
const LABEL_STEP = 20;

export class TimeChart {
  /** @param {HTMLElement} place @param {TimePicture} picture @param {Loader} [loader] */
  constructor(place, picture, loader) {
    this.place = place;
    this.picture = picture;
    this.loader = loader;
    this.lines = picture.lines;
    this.whole = picture.lines;
    this.clock = picture.start_ms === null ? new Elapsed() : new Clock(picture.zone, picture.start_ms);
    /** @type {[number, number]} */
    this.view = [0, picture.duration_s];
    /** @type {number|null} */
    this.cursor = null;
    /** @type {number|null} */
    this.chosenMark = null;
    this.ticket = 0;
    this.build();
    this.listen();
    new ResizeObserver(() => this.draw()).observe(this.stage);
    whenInkChanges(() => this.draw());
    this.draw();
  }

  build() {
    const words = this.picture.words;
    this.tools = element("div", "chart-tools");
    this.readout = element("output", "chart-readout");
    this.tools.append(this.readout);
    for (const [act, sign] of /** @type {const} */ ([["in", "+"], ["out", "\u2212"], ["reset", words.reset]])) {
      const button = element("button", act === "reset" ? "" : "square", sign);
      button.type = "button";
      button.dataset.zoom = act;
      if (act !== "reset") {
        button.setAttribute("aria-label", words[act]);
      }
      button.addEventListener("click", () => this.zoomBy(act));
      this.tools.append(button);
    }
    this.stage = element("div", "chart-stage");
    this.stage.tabIndex = 0;
    this.stage.setAttribute("role", "application");
    this.stage.setAttribute("aria-label", words.keys);
    this.canvas = element("canvas", "chart-canvas");
    this.canvas.setAttribute("aria-hidden", "true");
    this.over = element("canvas", "chart-over");
    this.over.setAttribute("aria-hidden", "true");
    this.labels = element("ul", "chart-labels");
    this.badges = element("div", "chart-badges");
    this.stage.append(this.canvas, this.over, this.badges);
    this.brush = element("canvas", "chart-brush");
    this.brush.setAttribute("aria-hidden", "true");
    const frame = element("div", "chart-frame");
    frame.append(this.stage, this.labels);
    this.place.replaceChildren(this.tools, frame, ...(this.loader ? [this.brush] : []));
    this.buildLabels();
    this.buildBadges();
  }

  buildLabels() {
    /** @type {Map<string, {item: HTMLElement, value: HTMLElement, drawn: Line|Band}>} */
    this.labelOf = new Map();
    const drawn = [...this.picture.lines, ...this.picture.bands];
    for (const line of drawn) {
      const item = element("li", `role-${line.role}`);
      const swatch = element("i", `swatch ${"mid" in line ? "band" : line.style}`);
      const value = element("b", "");
      item.append(swatch, element("span", "", line.name), value);
      this.labels.append(item);
      this.labelOf.set("key" in line ? line.key : `band ${line.name}`, { item, value, drawn: line });
    }
  }

  buildBadges() {
    this.badgeOf = new Map();
    for (const mark of this.picture.marks) {
      const badge = element("button", `badge ${mark.state}`, String(mark.n));
      badge.type = "button";
      badge.setAttribute("aria-label", `${mark.n}: ${mark.name}`);
      badge.addEventListener("click", (event) => {
        event.stopPropagation();
        this.choose(mark.n, false);
        this.place.dispatchEvent(new CustomEvent("finding", { detail: mark.n, bubbles: true }));
      });
      this.badges.append(badge);
      this.badgeOf.set(mark.n, badge);
    }
  }

  /** Shows a finding. @param {number} n @param {boolean} zoom whether to zoom to it */
  choose(n, zoom) {
    const mark = this.picture.marks.find((m) => m.n === n);
    this.chosenMark = mark ? n : null;
    if (mark && zoom) {
      const air = Math.max(1800, (mark.to_s - mark.from_s) * 0.75);
      this.show(mark.from_s - air, mark.to_s + air);
    } else {
      this.draw();
    }
  }

  // ---- geometry ----

  measure() {
    this.width = Math.max(280, this.stage.clientWidth);
    this.narrow = this.width < NARROW - 150;
    const base = this.narrow ? 300 : Math.min(560, Math.max(380, this.width * 0.42));
    let top = HEAD;
    /** @type {import("./panes.js").Pane[]} */
    this.panes = this.picture.panes.map((pane) => {
      const placed = { ...pane, top, height: Math.round(base * pane.share) };
      top += placed.height + GAP;
      return placed;
    });
    this.height = top - GAP + FOOT;
    this.left = LEFT;
    this.right = this.width - 10;
  }

  /** @param {number} second */
  x(second) {
    return this.left + ((second - this.view[0]) / (this.view[1] - this.view[0])) * (this.right - this.left);
  }

  /** @param {number} pixel */
  second(pixel) {
    const share = (pixel - this.left) / (this.right - this.left);
    return this.view[0] + Math.max(0, Math.min(1, share)) * (this.view[1] - this.view[0]);
  }

  // ---- drawing ----

  draw() {
    if (this.stage.clientWidth === 0) {
      return;
    }
    this.measure();
    const colors = ink(this.place);
    const c = sharp(this.canvas, this.width, this.height);
    c.font = FONT;
    this.scales = new Map();
    for (const pane of this.panes) {
      const range = extent(pane, this.lines, this.picture.bands, this.picture.limits, this.view);
      this.scales.set(pane.key, paneScale(pane, range));
    }
    this.drawPhases(c, colors);
    this.drawMarks(c, colors);
    this.panes.forEach((pane) => this.drawPane(c, colors, pane));
    this.drawTimeAxis(c, colors);
    this.placeBadges();
    this.placeLabels();
    this.drawOver();
    this.drawBrush(colors);
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawPhases(c, colors) {
    const bottom = this.height - FOOT;
    this.picture.phases.forEach((phase, n) => {
      const from = Math.max(this.left, this.x(phase.from_s));
      const to = Math.min(this.right, this.x(phase.to_s));
      if (to - from < 1) {
        return;
      }
      if (n % 2 === 0) {
        c.fillStyle = colors.tint;
        c.fillRect(from, HEAD - 8, to - from, bottom - HEAD + 8);
      }
      c.strokeStyle = colors.axis;
      c.lineWidth = 1;
      c.beginPath();
      c.moveTo(from + 0.5, HEAD - 6);
      c.lineTo(from + 0.5, HEAD - 11.5);
      c.lineTo(to - 0.5, HEAD - 11.5);
      c.lineTo(to - 0.5, HEAD - 6);
      c.stroke();
      const name = this.fits(c, phase.name, to - from - 4);
      writing(c, colors, name, (from + to) / 2, HEAD - 18, colors.quiet, "center");
    });
  }

  /** The text, its first letters, or nothing. @param {CanvasRenderingContext2D} c @param {string} text @param {number} room */
  fits(c, text, room) {
    if (c.measureText(text).width <= room) {
      return text;
    }
    const first = text.split(" ")[0];
    return c.measureText(first).width <= room ? first : "";
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawMarks(c, colors) {
    for (const mark of this.picture.marks) {
      const from = Math.max(this.left, this.x(mark.from_s));
      const to = Math.min(this.right, Math.max(this.x(mark.to_s), this.x(mark.from_s) + 2));
      if (to < this.left || from > this.right) {
        continue;
      }
      c.globalAlpha = mark.n === this.chosenMark ? 0.18 : mark.state === "noted" ? 0 : 0.06;
      c.fillStyle = mark.state === "noted" ? colors.quiet : colors[mark.state];
      c.fillRect(from, HEAD, to - from, this.height - FOOT - HEAD);
      c.globalAlpha = 1;
    }
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors @param {import("./panes.js").Pane} pane */
  drawPane(c, colors, pane) {
    const scale = this.scales.get(pane.key);
    c.lineWidth = 1;
    for (const tick of scale.ticks) {
      const y = Math.round(scale.at(tick.value)) + 0.5;
      c.strokeStyle = colors.rule;
      c.globalAlpha = tick.minor ? 0.6 : 1;
      c.beginPath();
      c.moveTo(this.left, y);
      c.lineTo(this.right, y);
      c.stroke();
      c.globalAlpha = 1;
      c.fillStyle = colors.quiet;
      c.textAlign = "right";
      c.fillText(tick.label, this.left - 8, y + 4);
    }
    c.strokeStyle = colors.axis;
    c.beginPath();
    c.moveTo(this.left + 0.5, pane.top);
    c.lineTo(this.left + 0.5, pane.top + pane.height);
    c.stroke();
    c.textAlign = "right";
    c.fillStyle = colors.ink;
    c.fillText(pane.unit, this.left - 8, pane.top - 12);
    c.save();
    c.beginPath();
    c.rect(this.left, pane.top - 4, this.right - this.left, pane.height + 8);
    c.clip();
    const x = (/** @type {number} */ s) => this.x(s);
    for (const band of this.picture.bands.filter((b) => b.pane === pane.key)) {
      drawBand(c, band, colors[band.role], x, scale.at);
    }
    for (const line of this.lines.filter((l) => l.pane === pane.key)) {
      drawLine(c, line, colors[line.role], x, scale.at, this.view);
    }
    for (const limit of this.picture.limits.filter((l) => l.pane === pane.key)) {
      drawLimit(c, limit, colors, scale.at, this.left, this.right);
    }
    c.restore();
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawTimeAxis(c, colors) {
    const y = this.height - FOOT + 0.5;
    c.strokeStyle = colors.axis;
    c.beginPath();
    c.moveTo(this.left, y);
    c.lineTo(this.right, y);
    c.stroke();
    let free = -Infinity;
    for (const tick of this.clock.ticks(this.view[0], this.view[1], (this.right - this.left) / (this.width < 480 ? 62 : 88))) {
      const x = Math.round(this.x(tick.value)) + 0.5;
      c.beginPath();
      c.moveTo(x, y);
      c.lineTo(x, y + 5);
      c.stroke();
      c.textAlign = "center";
      c.fillStyle = colors.quiet;
      c.fillText(tick.label, x, y + 18);
      if (tick.day) {
        const half = c.measureText(tick.day).width / 2;
        const at = Math.max(this.left + half, Math.min(this.right - half, x));
        if (at - half > free) {
          c.fillStyle = colors.ink;
          c.fillText(tick.day, at, y + 34);
          free = at + half + 12;
        }
      }
    }
  }

  placeBadges() {
    const taken = [];
    for (const mark of this.picture.marks) {
      const badge = this.badgeOf.get(mark.n);
      const middle = this.x(Math.min((mark.from_s + mark.to_s) / 2, mark.from_s + (this.view[1] - this.view[0]) / 6));
      badge.hidden = this.x(mark.to_s) < this.left || this.x(mark.from_s) > this.right;
      const x = Math.max(this.left + 14, Math.min(this.right - 14, middle));
      let row = 0;
      while (taken.some((t) => t.row === row && Math.abs(t.x - x) < 30)) {
        row++;
      }
      if (!badge.hidden) {
        taken.push({ x, row });
      }
      badge.style.left = `${x}px`;
      badge.style.top = `${HEAD + 16 + row * 30}px`;
      badge.classList.toggle("chosen", mark.n === this.chosenMark);
    }
  }

  /** Values beside the lines; where there is room, at the lines' own height. */
  placeLabels() {
    const beside = getComputedStyle(this.labels).position === "absolute";
    this.labels.style.height = beside ? `${this.height}px` : "";
    for (const pane of this.panes) {
      const scale = this.scales.get(pane.key);
      const here = [...this.labelOf.values()].filter((label) => label.drawn.pane === pane.key);
      const spots = here.map((label) => {
        const line = this.current(label.drawn);
        const end = lastValue(line, this.view[1]);
        return { label, y: end === null ? pane.top + pane.height : scale.at(end) };
      });
      spots.sort((a, b) => a.y - b.y);
      spread(spots, pane.top + 4, pane.top + pane.height + GAP / 2);
      for (const spot of spots) {
        spot.label.item.style.top = beside ? `${spot.y - LABEL_STEP / 2}px` : "";
        spot.label.value.textContent = this.valueWords(spot.label.drawn, pane.unit);
      }
    }
  }

  /** @param {Line|Band} drawn @returns {Line} */
  current(drawn) {
    if ("mid" in drawn) {
      return /** @type {Line} */ (/** @type {unknown} */ ({ t: drawn.t, lo: drawn.mid }));
    }
    return this.lines.find((line) => line.key === drawn.key) ?? drawn;
  }

  /** @param {Line|Band} drawn @param {string} unit */
  valueWords(drawn, unit) {
    if (this.cursor === null) {
      return "";
    }
    const value = valueAt(this.current(drawn), this.cursor);
    if (value === null) {
      return "\u2013";
    }
    return `${unit === "°C" ? figure(value, 1) : significant(value)}\u202f${unit}`;
  }

  drawOver() {
    const c = sharp(this.over, this.width, this.height);
    const colors = ink(this.place);
    if (this.dragFrom !== undefined && this.cursor !== null) {
      const from = this.x(this.dragFrom);
      const to = this.x(this.cursor);
      c.fillStyle = colors.action;
      c.globalAlpha = 0.15;
      c.fillRect(Math.min(from, to), HEAD, Math.abs(to - from), this.height - FOOT - HEAD);
      c.globalAlpha = 1;
    }
    if (this.cursor === null) {
      this.readout.textContent = this.picture.words.hint;
      return;
    }
    const x = Math.round(this.x(this.cursor)) + 0.5;
    c.strokeStyle = colors.ink;
    c.lineWidth = 1;
    c.beginPath();
    c.moveTo(x, HEAD - 6);
    c.lineTo(x, this.height - FOOT);
    c.stroke();
    for (const line of this.lines) {
      const value = valueAt(line, this.cursor);
      const scale = this.scales.get(line.pane);
      if (value !== null && scale) {
        c.beginPath();
        c.arc(x, scale.at(value), 3.5, 0, 2 * Math.PI);
        c.fillStyle = colors[line.role];
        c.fill();
        c.strokeStyle = colors.paper;
        c.stroke();
      }
    }
    const seconds = this.view[1] - this.view[0] < 7200;
    const clock = this.picture.start_ms === null ? "" : `${this.clock.words(this.cursor, seconds)} \u00b7 `;
    this.readout.textContent = clock + elapsed(this.cursor);
  }

  /** @param {import("./ink.js").Ink} colors */
  drawBrush(colors) {
    if (!this.loader) {
      return;
    }
    const width = this.width;
    const height = 44;
    const c = sharp(this.brush, width, height);
    const first = this.picture.panes[0];
    const pane = { ...first, top: 4, height: height - 8 };
    const all = /** @type {[number, number]} */ ([0, this.picture.duration_s]);
    const scale = paneScale(pane, extent(pane, this.whole, [], [], all));
    const x = (/** @type {number} */ s) => this.left + (s / all[1]) * (this.right - this.left);
    c.fillStyle = colors.tint;
    c.fillRect(this.left, 0, this.right - this.left, height);
    for (const line of this.whole.filter((l) => l.pane === first.key && l.style === "solid")) {
      drawLine(c, { ...line, style: "thin" }, colors[line.role], x, scale.at, all);
    }
    const from = x(this.view[0]);
    const to = x(this.view[1]);
    c.globalAlpha = 0.72;
    c.fillStyle = colors.paper;
    c.fillRect(this.left, 0, from - this.left, height);
    c.fillRect(to, 0, this.right - to, height);
    c.globalAlpha = 1;
    c.strokeStyle = colors.action;
    c.lineWidth = 2;
    c.strokeRect(from + 1, 1, Math.max(2, to - from - 2), height - 2);
    c.fillStyle = colors.action;
    c.fillRect(from, height / 2 - 9, 5, 18);
    c.fillRect(to - 5, height / 2 - 9, 5, 18);
  }

  // ---- moving ----

  /** Shows a stretch. @param {number} from @param {number} to seconds */
  show(from, to) {
    const whole = this.picture.duration_s;
    const span = Math.min(whole, Math.max(Math.min(SHORTEST_VIEW_S, whole), to - from));
    const start = Math.max(0, Math.min(whole - span, from));
    this.view = [start, start + span];
    if (start <= 0 && span >= whole) {
      this.lines = this.whole;
      this.ticket++;
    }
    this.draw();
    this.loadFiner();
  }

  loadFiner() {
    const whole = this.picture.duration_s;
    if (!this.loader || this.view[1] - this.view[0] >= whole) {
      return;
    }
    const ticket = ++this.ticket;
    clearTimeout(this.timer);
    this.timer = setTimeout(async () => {
      const margin = (this.view[1] - this.view[0]) / 4;
      const from = Math.max(0, this.view[0] - margin);
      const to = Math.min(whole, this.view[1] + margin);
      const lines = await this.loader?.(from, to, Math.round((this.right - this.left) * 1.5));
      if (lines && ticket === this.ticket) {
        this.lines = lines;
        this.draw();
      }
    }, 60);
  }

  /** @param {"in"|"out"|"reset"} act @param {number} [around] second that stays where it is */
  zoomBy(act, around) {
    if (act === "reset") {
      this.chosenMark = null;
      this.show(0, this.picture.duration_s);
      return;
    }
    const factor = act === "in" ? 0.5 : 2;
    const fixed = around ?? this.cursor ?? (this.view[0] + this.view[1]) / 2;
    this.show(fixed - (fixed - this.view[0]) * factor, fixed + (this.view[1] - fixed) * factor);
  }

  /** @param {number|null} second */
  point(second) {
    this.cursor = second;
    this.drawOver();
    this.placeLabels();
  }

  listen() {
    this.over.addEventListener("pointermove", (event) => this.point(this.second(event.offsetX)));
    this.over.addEventListener("pointerleave", () => {
      if (this.dragFrom === undefined) {
        this.point(null);
      }
    });
    this.over.addEventListener("pointerdown", (event) => {
      if (event.button === 0) {
        this.stage.focus({ preventScroll: true });
        this.over.setPointerCapture(event.pointerId);
        this.dragFrom = this.second(event.offsetX);
      }
    });
    this.over.addEventListener("pointerup", (event) => this.endDrag(event));
    this.over.addEventListener("pointercancel", () => {
      this.dragFrom = undefined;
      this.point(null);
    });
    this.over.addEventListener("dblclick", () => this.zoomBy("reset"));
    this.stage.addEventListener("wheel", (event) => this.turnWheel(event), { passive: false });
    this.stage.addEventListener("keydown", (event) => this.press(event));
    this.listenToBrush();
  }

  /** @param {PointerEvent} event */
  endDrag(event) {
    const from = this.dragFrom;
    this.dragFrom = undefined;
    if (from === undefined) {
      return;
    }
    const to = this.second(event.offsetX);
    if (Math.abs(this.x(to) - this.x(from)) > 8) {
      this.show(Math.min(from, to), Math.max(from, to));
    } else {
      this.point(to);
    }
  }

  /** The wheel zooms once the picture was clicked, so that it never catches a passing scroll. @param {WheelEvent} event */
  turnWheel(event) {
    const meant = event.ctrlKey || document.activeElement === this.stage;
    const whole = this.view[1] - this.view[0] >= this.picture.duration_s;
    if (!meant || (whole && event.deltaY > 0)) {
      return;
    }
    event.preventDefault();
    const bounds = this.over.getBoundingClientRect();
    const fixed = this.second(event.clientX - bounds.left);
    const factor = Math.exp(Math.max(-60, Math.min(60, event.deltaY)) / 200);
    this.show(fixed - (fixed - this.view[0]) * factor, fixed + (this.view[1] - fixed) * factor);
  }

  /** @param {KeyboardEvent} event */
  press(event) {
    const span = this.view[1] - this.view[0];
    const at = this.cursor ?? (this.view[0] + this.view[1]) / 2;
    const step = span / 100;
    /** @type {Record<string, () => void>} */
    const keys = {
      ArrowLeft: () => (event.shiftKey ? this.show(this.view[0] - span / 4, this.view[1] - span / 4) : this.point(Math.max(this.view[0], at - step))),
      ArrowRight: () => (event.shiftKey ? this.show(this.view[0] + span / 4, this.view[1] + span / 4) : this.point(Math.min(this.view[1], at + step))),
      Home: () => this.point(this.view[0]),
      End: () => this.point(this.view[1]),
      "+": () => this.zoomBy("in"),
      "=": () => this.zoomBy("in"),
      "-": () => this.zoomBy("out"),
      0: () => this.zoomBy("reset"),
      Escape: () => this.zoomBy("reset"),
    };
    const act = keys[event.key];
    if (act && !event.altKey && !event.metaKey && !event.ctrlKey) {
      event.preventDefault();
      act();
      this.readout.setAttribute("aria-live", "polite");
    }
  }

  listenToBrush() {
    const at = (/** @type {PointerEvent} */ event) =>
      ((event.offsetX - this.left) / (this.right - this.left)) * this.picture.duration_s;
    /** @type {{grip: string, from: number, view: [number, number]}|null} */
    let held = null;
    this.brush.addEventListener("pointerdown", (event) => {
      const second = at(event);
      const near = (12 / (this.right - this.left)) * this.picture.duration_s;
      const grip =
        Math.abs(second - this.view[0]) < near ? "from" : Math.abs(second - this.view[1]) < near ? "to" : "window";
      held = { grip, from: second, view: [...this.view] };
      this.brush.setPointerCapture(event.pointerId);
    });
    this.brush.addEventListener("pointermove", (event) => {
      if (!held) {
        return;
      }
      const moved = at(event) - held.from;
      if (held.grip === "from") {
        this.show(Math.min(held.view[0] + moved, held.view[1] - SHORTEST_VIEW_S), held.view[1]);
      } else if (held.grip === "to") {
        this.show(held.view[0], held.view[1] + moved);
      } else {
        this.show(held.view[0] + moved, held.view[1] + moved);
      }
    });
    for (const end of ["pointerup", "pointercancel"]) {
      this.brush.addEventListener(end, () => (held = null));
    }
  }
}

/** @param {number} second */
function elapsed(second) {
  const hours = Math.floor(second / 3600);
  const minutes = Math.floor((second % 3600) / 60);
  return `${hours}\u202fh ${String(minutes).padStart(2, "0")}\u202fmin`;
}

/** Last value at or before a moment. @param {Line} line @param {number} to @returns {number|null} */
function lastValue(line, to) {
  for (let i = line.t.length - 1; i >= 0; i--) {
    const lo = line.lo[i];
    if (line.t[i] <= to && lo !== null) {
      const hi = line.hi ? line.hi[i] : lo;
      return (lo + (hi ?? lo)) / 2;
    }
  }
  return null;
}

/** Pushes labels apart. @param {{y: number}[]} spots sorted @param {number} top @param {number} bottom */
function spread(spots, top, bottom) {
  for (let i = 0; i < spots.length; i++) {
    const above = i === 0 ? top - LABEL_STEP : spots[i - 1].y;
    spots[i].y = Math.max(spots[i].y, above + LABEL_STEP);
  }
  let limit = bottom;
  for (let i = spots.length - 1; i >= 0 && spots[i].y > limit; i--) {
    spots[i].y = limit;
    limit -= LABEL_STEP;
  }
}
