// One picture over time: phases, bands of a plan, limits, measured lines, findings; zoom and brush.

import { Brush } from "./brush.js";
import { drawPicture } from "./drawing.js";
import { listen } from "./gestures.js";
import { element, ink, sharp, whenInkChanges } from "./ink.js";
import { Labels } from "./labels.js";
import { Layout } from "./layout.js";
import { Marks } from "./marks.js";
import { valueAt } from "./panes.js";
import { Clock, Elapsed } from "./scales.js";

/** @typedef {import("./panes.js").Line} Line */
/** @typedef {import("./panes.js").Band} Band */
/** @typedef {import("./panes.js").Limit} Limit */
/** @typedef {{name: string, from_s: number, to_s: number}} Phase */
/** @typedef {{keys: string[], from_s: number, to_s: number}} Evidence */
/** @typedef {{n: number, from_s: number, to_s: number, state: string, name: string, evidence?: Evidence[]}} Mark */
/** @typedef {{id: string, t_s: number, kind: string, name: string, text: string}} Event */
/**
 * @typedef {object} TimePicture
 * @property {string} zone @property {number|null} start_ms @property {number} duration_s
 * @property {{key: string, unit: string, scale: string, share: number, decimals?: number}[]} panes
 * @property {Line[]} lines @property {Band[]} bands @property {Limit[]} limits
 * @property {Phase[]} phases @property {Mark[]} marks @property {Event[]} [events]
 * @property {Record<string, string>} words
 */
/** @typedef {(from: number, to: number, pixels: number) => Promise<Line[]>} Loader */

const SHORTEST_VIEW_S = 20;
const CURSOR_TOP = 6;

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
    /** @type {string|null} */
    this.chosenEvent = null;
    /** @type {[number, number]|null} */
    this.selected = null;
    this.ticket = 0;
    this.build();
    listen(this);
    new ResizeObserver(() => this.draw()).observe(this.stage);
    whenInkChanges(() => this.draw());
    this.draw();
  }

  build() {
    this.buildTools();
    this.stage = element("div", "chart-stage");
    this.stage.tabIndex = 0;
    this.stage.setAttribute("role", "application");
    this.stage.setAttribute("aria-label", this.picture.words.keys);
    this.canvas = element("canvas", "chart-canvas");
    this.canvas.setAttribute("aria-hidden", "true");
    this.over = element("canvas", "chart-over");
    this.over.setAttribute("aria-hidden", "true");
    this.labels = new Labels(this.picture, () => this.draw());
    this.marks = new Marks(this.picture, {
      finding: (n) => this.tell("finding", n),
      events: (events) => this.pick(events),
    });
    this.stage.append(this.canvas, this.over, this.marks.box);
    this.said = element("p", "hidden-visually chart-said");
    this.said.setAttribute("role", "status");
    const frame = element("div", "chart-frame");
    frame.append(this.stage, this.labels.list);
    this.brush = this.loader ? new Brush(this) : null;
    this.place.replaceChildren(this.tools, frame, ...(this.brush ? [this.brush.canvas] : []), this.said);
  }

  buildTools() {
    const words = this.picture.words;
    this.tools = element("div", "chart-tools");
    this.readout = element("p", "chart-readout");
    this.tools.append(this.readout);
    const signs = /** @type {const} */ ([["back", "\u25c2"], ["on", "\u25b8"], ["in", "+"], ["out", "\u2212"], ["reset", words.reset]]);
    for (const [act, sign] of signs) {
      if (!words[act]) {
        continue;
      }
      const button = element("button", act === "reset" ? "" : "square", sign);
      button.type = "button";
      button.dataset.zoom = act;
      if (act !== "reset") {
        button.setAttribute("aria-label", words[act]);
        button.title = words[act];
      }
      button.addEventListener("click", () => this.zoomBy(act));
      this.tools.append(button);
    }
  }

  /** @param {string} name @param {unknown} detail */
  tell(name, detail) {
    this.place.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
  }

  /** Shows a finding. @param {number|null} n @param {boolean} zoom whether to zoom to it */
  choose(n, zoom) {
    const mark = this.picture.marks.find((m) => m.n === n);
    this.chosenMark = mark ? n : null;
    if (mark && zoom) {
      const all = [mark, ...(mark.evidence ?? [])];
      this.frame(Math.min(...all.map((m) => m.from_s)), Math.max(...all.map((m) => m.to_s)));
    } else {
      this.draw();
    }
  }

  /** Shows a stretch with some air around it. @param {number} from @param {number} to seconds */
  frame(from, to) {
    const air = Math.max(Math.min(1800, this.picture.duration_s / 20), (to - from) * 0.5);
    this.show(from - air, to + air);
  }

  /** Events at one flag: one is told about, several are zoomed apart. @param {Event[]} events */
  pick(events) {
    const last = events[events.length - 1];
    if (events.length > 1 && last.t_s - events[0].t_s > SHORTEST_VIEW_S / 10) {
      this.frame(events[0].t_s, last.t_s);
    } else {
      this.chosenEvent = events[0].id;
      this.point(events[0].t_s);
      this.draw();
      this.tell("event", events[0].id);
    }
  }

  /** @param {number} pixel */
  second(pixel) {
    return this.layout.second(pixel);
  }

  /** Whether the whole run is in sight. */
  isWhole() {
    return this.view[1] - this.view[0] >= this.picture.duration_s;
  }

  // ---- drawing ----

  /** Draws with the next frame of the screen; many wishes in one frame are one drawing. */
  drawSoon() {
    this.frameAsked ??= requestAnimationFrame(() => {
      this.frameAsked = undefined;
      this.draw();
    });
  }

  draw() {
    if (this.stage.clientWidth === 0) {
      return;
    }
    const shown = this.labels.shown(this.lines);
    this.layout = new Layout(this.picture, shown, this.view, Math.max(280, this.stage.clientWidth));
    const colors = ink(this.place);
    const c = sharp(this.canvas, this.layout.width, this.layout.height);
    const chosen = this.picture.marks.find((mark) => mark.n === this.chosenMark);
    drawPicture(c, colors, this.layout, shown, this.clock, chosen);
    this.marks.place(this.layout, this.chosenMark, this.chosenEvent);
    this.labels.place(this.layout, this.lines, this.cursor);
    this.drawOver();
    this.brush?.draw(colors);
  }

  drawOver() {
    const { width, height, bottom, findingsTop } = this.layout;
    const c = sharp(this.over, width, height);
    const colors = ink(this.place);
    if (this.selected) {
      const [from, to] = this.selected;
      c.fillStyle = colors.action;
      c.globalAlpha = 0.15;
      c.fillRect(Math.min(from, to), findingsTop, Math.abs(to - from), bottom - findingsTop);
      c.globalAlpha = 1;
    }
    this.readout.textContent = this.cursor === null ? this.picture.words.hint : this.moment(this.cursor);
    if (this.cursor === null) {
      return;
    }
    const x = Math.round(this.layout.x(this.cursor)) + 0.5;
    c.strokeStyle = colors.ink;
    c.lineWidth = 1;
    c.beginPath();
    c.moveTo(x, this.layout.head - CURSOR_TOP);
    c.lineTo(x, bottom);
    c.stroke();
    for (const line of this.labels.shown(this.lines)) {
      const value = valueAt(line, this.cursor);
      const scale = this.layout.scales.get(line.pane);
      if (value !== null && scale) {
        c.beginPath();
        c.arc(x, scale.at(value), 3.5, 0, 2 * Math.PI);
        c.fillStyle = colors[line.role];
        c.fill();
        c.strokeStyle = colors.paper;
        c.stroke();
      }
    }
  }

  /** "Wed 5 Mar 14:32 · 12 h 20 min" @param {number} second */
  moment(second) {
    const seconds = this.view[1] - this.view[0] < 7200;
    const clock = this.picture.start_ms === null ? "" : `${this.clock.words(second, seconds)} \u00b7 `;
    return clock + elapsed(second, seconds);
  }

  // ---- moving ----

  /** Shows a stretch. @param {number} from @param {number} to seconds */
  show(from, to) {
    const whole = this.picture.duration_s;
    const span = Math.min(whole, Math.max(Math.min(SHORTEST_VIEW_S, whole), to - from));
    const start = Math.max(0, Math.min(whole - span, from));
    this.view = [start, start + span];
    if (this.isWhole()) {
      this.lines = this.whole;
      this.ticket++;
    }
    this.drawSoon();
    this.loadFiner();
    this.tell("view", this.view);
  }

  loadFiner() {
    const whole = this.picture.duration_s;
    if (!this.loader || this.isWhole()) {
      return;
    }
    const ticket = ++this.ticket;
    clearTimeout(this.timer);
    this.timer = setTimeout(async () => {
      const margin = (this.view[1] - this.view[0]) / 4;
      const from = Math.max(0, this.view[0] - margin);
      const to = Math.min(whole, this.view[1] + margin);
      const lines = await this.loader?.(from, to, Math.round((this.layout.right - this.layout.left) * 1.5));
      if (lines && lines.length > 0 && ticket === this.ticket) {
        this.lines = lines;
        this.drawSoon();
      }
    }, 60);
  }

  /** @param {"in"|"out"|"reset"|"back"|"on"} act */
  zoomBy(act) {
    if (act === "back" || act === "on") {
      this.pan(act === "back" ? -1 : 1);
    } else if (act === "reset") {
      this.chosenMark = null;
      this.show(0, this.picture.duration_s);
      this.tell("finding", null);
    } else {
      const factor = act === "in" ? 0.5 : 2;
      const [from, to] = this.view;
      const fixed = this.cursor !== null && this.cursor >= from && this.cursor <= to ? this.cursor : (from + to) / 2;
      this.show(fixed - (fixed - from) * factor, fixed + (to - fixed) * factor);
    }
  }

  /** Moves by a quarter of what is in sight. @param {number} way −1 back, 1 on */
  pan(way) {
    const by = ((this.view[1] - this.view[0]) / 4) * way;
    this.show(this.view[0] + by, this.view[1] + by);
  }

  /** A stretch being chosen, in pixels. @param {number|null} from @param {number|null} to */
  select(from, to) {
    this.selected = from === null || to === null ? null : [from, to];
  }

  /** @param {number|null} second */
  point(second) {
    this.cursor = second;
    this.drawOver();
    this.labels.place(this.layout, this.lines, second);
    this.tell("cursor", second);
  }

  /** Says the cursor's values to whoever cannot see them. */
  sayCursor() {
    this.said.textContent =
      this.cursor === null
        ? this.moment(this.view[0]) + " \u2013 " + this.moment(this.view[1])
        : `${this.moment(this.cursor)}: ${this.labels.sentence(this.lines, this.cursor)}`;
  }
}

/** @param {number} second @param {boolean} seconds whether seconds matter */
function elapsed(second, seconds) {
  const hours = Math.floor(second / 3600);
  const minutes = Math.floor((second % 3600) / 60);
  const words = `${hours}\u202fh ${String(minutes).padStart(2, "0")}\u202fmin`;
  return seconds ? `${words} ${String(Math.floor(second % 60)).padStart(2, "0")}\u202fs` : words;
}
