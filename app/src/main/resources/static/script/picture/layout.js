// Where everything of a time picture stands: panes, names of phases, findings, events.

import { extent, paneScale } from "./panes.js";

/** @typedef {import("./timechart.js").TimePicture} TimePicture */
/** @typedef {import("./panes.js").Line} Line */

export const FONT = "13px system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', sans-serif";
const FOOT = 40;
const GAP = 34;
const LEFT = 60;
const ROW = 18;
const BRACKET = 12;
const FINDING_ROW = 32;
const FINDING_ROWS = 4;
const EVENT_LANE = 34;
const NARROW = 470;

/** @typedef {{name: string, from: number, to: number, x: number, row: number, n: number}} PhaseName */
/** @typedef {{mark: import("./timechart.js").Mark, from: number, to: number, x: number, row: number, text: string}} FindingPlace */
/** @typedef {{events: import("./timechart.js").Event[], x: number, text: string}} EventPlace */

/** Widths of text in the picture's font. */
class Ruler {
  constructor() {
    this.pen = /** @type {CanvasRenderingContext2D} */ (document.createElement("canvas").getContext("2d"));
    this.pen.font = FONT;
  }

  /** @param {string} text */
  width(text) {
    return this.pen.measureText(text).width;
  }

  /** As much of a text as fits, or nothing. @param {string} text @param {number} room */
  cut(text, room) {
    if (this.width(text) <= room) {
      return text;
    }
    let length = Math.floor((text.length * room) / Math.max(1, this.width(text)));
    while (length > 6 && this.width(`${text.slice(0, length)}\u2026`) > room) {
      length--;
    }
    return length > 6 ? `${text.slice(0, length).trimEnd()}\u2026` : "";
  }
}

export class Layout {
  /**
   * @param {TimePicture} picture @param {Line[]} lines those that are shown
   * @param {[number, number]} view seconds @param {number} width pixels
   * @param {number} [top] pixels kept free above
   */
  constructor(picture, lines, view, width, top = 0) {
    this.top = top + 4;
    this.picture = picture;
    this.view = view;
    this.width = width;
    this.narrow = width < NARROW;
    this.left = LEFT;
    this.right = width - 10;
    this.ruler = new Ruler();
    this.placePhases();
    this.placeFindings();
    this.placePanes(lines);
    this.placeEvents();
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

  /** Names wider than their bracket stand a row higher, pushed apart, with a line down to it. */
  placePhases() {
    /** @type {PhaseName[]} */
    this.phases = [];
    this.picture.phases.forEach((phase, n) => {
      const from = Math.max(this.left, this.x(phase.from_s));
      const to = Math.min(this.right, this.x(phase.to_s));
      if (to > from - 0.5 && phase.to_s >= this.view[0] && phase.from_s <= this.view[1]) {
        const fits = this.ruler.width(phase.name) <= to - from - 6;
        this.phases.push({ name: phase.name, from, to, x: (from + to) / 2, row: fits ? 0 : 1, n });
      }
    });
    const raised = this.phases.filter((phase) => phase.row > 0);
    this.nameRows = this.phases.length === 0 ? 0 : 1 + this.pushApart(raised);
    this.bracketTop = this.top + this.nameRows * ROW + 4;
    this.findingsTop = this.phases.length === 0 ? this.top + 4 : this.bracketTop + BRACKET;
  }

  /** Puts names side by side in as few rows as needed; gives the number of rows. @param {PhaseName[]} raised */
  pushApart(raised) {
    const rows = /** @type {number[]} */ ([]);
    for (const phase of raised) {
      const half = this.ruler.width(phase.name) / 2;
      const wanted = Math.max(half + 2, Math.min(this.width - half - 2, phase.x));
      let row = rows.findIndex((end) => Math.max(wanted, end + 10 + half) + half <= this.width && end + 10 - (wanted - half) < 40);
      row = row < 0 ? rows.length : row;
      phase.x = Math.max(wanted, (rows[row] ?? -Infinity) + 10 + half);
      phase.row = row + 1;
      rows[row] = phase.x + half;
      this.makeWay(raised, phase);
    }
    return rows.length;
  }

  /** Names below a higher one step left of the line that comes down from it. @param {PhaseName[]} raised @param {PhaseName} higher */
  makeWay(raised, higher) {
    const line = (higher.from + higher.to) / 2 - 4;
    for (const lower of raised.filter((phase) => phase.row > 0 && phase.row < higher.row && phase.n < higher.n)) {
      const half = this.ruler.width(lower.name) / 2;
      const before = raised.filter((phase) => phase.row === lower.row && phase.n < lower.n).map((phase) => phase.x + this.ruler.width(phase.name) / 2 + 8);
      if (lower.x + half > line) {
        lower.x = Math.max(half + 2, line - half, ...before.map((end) => end + half));
      }
    }
  }

  /** Findings stand in rows of their own above the panes, so that no badge hides a line. */
  placeFindings() {
    /** @type {FindingPlace[]} */
    this.findings = [];
    const apart = this.narrow ? 46 : 34;
    /** @type {number[]} */
    const ends = [];
    const inSight = this.picture.marks
      .filter((mark) => mark.to_s >= this.view[0] && mark.from_s <= this.view[1])
      .sort((a, b) => a.from_s - b.from_s || a.n - b.n);
    for (const mark of inSight) {
      const from = Math.max(this.left, this.x(mark.from_s));
      const to = Math.min(this.right, Math.max(from + 2, this.x(mark.to_s)));
      const x = Math.max(this.left + 14, Math.min(this.right - 14, from + Math.min(14, (to - from) / 2)));
      let row = ends.findIndex((end) => end + apart / 2 + 4 <= x);
      row = row < 0 ? ends.length : row;
      this.findings.push({ mark, from, to, x, row, text: "" });
      ends[row] = x + apart / 2;
    }
    this.findingRows = Math.min(FINDING_ROWS, ends.length);
    for (const place of this.findings) {
      place.row = Math.min(place.row, FINDING_ROWS - 1);
    }
    this.nameFindings();
    this.head = this.findingsTop + this.findingRows * FINDING_ROW + 24;
  }

  /** Beside each badge as much of its text as the row leaves room for. */
  nameFindings() {
    for (const place of this.narrow ? [] : this.findings) {
      const next = this.findings.filter((other) => other.row === place.row && other.x > place.x).map((other) => other.x);
      const room = Math.min(this.right, ...next.map((x) => x - 18)) - place.x - 20;
      place.text = room > 60 ? this.ruler.cut(place.mark.name, room) : "";
    }
  }

  /** @param {FindingPlace} place */
  findingY(place) {
    return this.findingsTop + place.row * FINDING_ROW + FINDING_ROW / 2;
  }

  /** @param {Line[]} lines */
  placePanes(lines) {
    const base = this.narrow ? 300 : Math.min(560, Math.max(380, this.width * 0.42));
    let top = this.head;
    /** @type {import("./panes.js").Pane[]} */
    this.panes = this.picture.panes.map((pane) => {
      const placed = { ...pane, top, height: Math.round(base * pane.share) };
      top += placed.height + GAP;
      return placed;
    });
    this.laneTop = top - GAP + 4;
    this.bottom = top - GAP + ((this.picture.events ?? []).length > 0 ? EVENT_LANE : 0);
    this.height = this.bottom + FOOT;
    /** @type {Map<string, import("./scales.js").Scale>} */
    this.scales = new Map();
    for (const pane of this.panes) {
      const range = extent(pane, lines, this.picture.bands, this.picture.limits, this.view);
      this.scales.set(pane.key, paneScale(pane, range));
    }
  }

  /** Events that would stand on each other become one flag that says how many. */
  placeEvents() {
    /** @type {EventPlace[]} */
    this.events = [];
    const apart = this.narrow ? 46 : 32;
    for (const event of this.picture.events ?? []) {
      if (event.t_s < this.view[0] || event.t_s > this.view[1]) {
        continue;
      }
      const x = Math.max(this.left + 14, Math.min(this.right - 14, this.x(event.t_s)));
      const last = this.events[this.events.length - 1];
      if (last && x - last.x < apart) {
        last.events.push(event);
      } else {
        this.events.push({ events: [event], x, text: "" });
      }
    }
    this.events.forEach((place, i) => {
      const room = (this.events[i + 1]?.x ?? this.right + 12) - place.x - 32;
      const text = place.events.length === 1 ? place.events[0].text : "";
      place.text = room > 40 && text ? this.ruler.cut(text, room) : "";
    });
  }

  /** The middle of the event lane. */
  get laneY() {
    return this.laneTop + EVENT_LANE / 2;
  }
}
