// The strip under a long picture: the whole run small, with the stretch in sight to drag and resize.

import { element, sharp } from "./ink.js";
import { drawLine, extent, paneScale } from "./panes.js";

const HEIGHT = 44;
const GRIP = 14;

export class Brush {
  /** @param {import("./timechart.js").TimeChart} chart */
  constructor(chart) {
    this.chart = chart;
    this.canvas = element("canvas", "chart-brush");
    this.canvas.setAttribute("aria-hidden", "true");
    this.listen();
  }

  /** @param {number} second */
  x(second) {
    const { left, right } = this.chart.layout;
    return left + (second / this.chart.picture.duration_s) * (right - left);
  }

  /** @param {import("./ink.js").Ink} ink */
  draw(ink) {
    const { layout, picture, view } = this.chart;
    const c = sharp(this.canvas, layout.width, HEIGHT);
    const first = picture.panes[0];
    if (!first) {
      return;
    }
    const pane = { ...first, top: 4, height: HEIGHT - 8 };
    const all = /** @type {[number, number]} */ ([0, picture.duration_s]);
    const lines = this.chart.labels.shown(this.chart.whole).filter((line) => line.pane === first.key);
    const scale = paneScale(pane, extent(pane, lines, [], [], all));
    c.fillStyle = ink.tint;
    c.fillRect(layout.left, 0, layout.right - layout.left, HEIGHT);
    for (const line of lines.filter((l) => l.style === "solid" && !l.other)) {
      drawLine(c, { ...line, style: "thin" }, ink[line.role], (s) => this.x(s), scale.at, all);
    }
    const from = this.x(view[0]);
    const to = this.x(view[1]);
    c.globalAlpha = 0.72;
    c.fillStyle = ink.paper;
    c.fillRect(layout.left, 0, from - layout.left, HEIGHT);
    c.fillRect(to, 0, layout.right - to, HEIGHT);
    c.globalAlpha = 1;
    c.strokeStyle = ink.action;
    c.lineWidth = 2;
    c.strokeRect(from + 1, 1, Math.max(2, to - from - 2), HEIGHT - 2);
    c.fillStyle = ink.action;
    c.fillRect(from, HEIGHT / 2 - 9, 5, 18);
    c.fillRect(to - 5, HEIGHT / 2 - 9, 5, 18);
  }

  listen() {
    const at = (/** @type {PointerEvent} */ event) => {
      const { left, right } = this.chart.layout;
      return ((event.offsetX - left) / (right - left)) * this.chart.picture.duration_s;
    };
    /** @type {{grip: string, from: number, view: [number, number]}|null} */
    let held = null;
    this.canvas.addEventListener("pointerdown", (event) => {
      const view = /** @type {[number, number]} */ ([...this.chart.view]);
      held = { grip: this.grip(event.offsetX, view), from: at(event), view };
      this.canvas.setPointerCapture(event.pointerId);
    });
    this.canvas.addEventListener("pointermove", (event) => {
      if (held) {
        this.drag(held, at(event) - held.from);
      }
    });
    for (const end of ["pointerup", "pointercancel"]) {
      this.canvas.addEventListener(end, () => (held = null));
    }
  }

  /** What a finger is on: an end of the window, the window, or the strip beside it. @param {number} pixel @param {[number, number]} view */
  grip(pixel, view) {
    if (Math.abs(pixel - this.x(view[0])) < GRIP) {
      return "from";
    }
    if (Math.abs(pixel - this.x(view[1])) < GRIP) {
      return "to";
    }
    return "window";
  }

  /** @param {{grip: string, view: [number, number]}} held @param {number} moved seconds */
  drag(held, moved) {
    const [from, to] = held.view;
    if (held.grip === "from") {
      this.chart.show(Math.min(from + moved, to - 20), to);
    } else if (held.grip === "to") {
      this.chart.show(from, Math.max(to + moved, from + 20));
    } else {
      this.chart.show(from + moved, to + moved);
    }
  }
}
