// Draws a laid-out time picture with any pen: on the screen, as PNG, as SVG.

import { FONT } from "./layout.js";
import { drawBand, drawLimit, drawLine, writing } from "./panes.js";

/** @typedef {import("./panes.js").Pen} Pen */
/** @typedef {import("./panes.js").Line} Line */
/** @typedef {import("./layout.js").Layout} Layout */
/** @typedef {import("./ink.js").Ink} Ink */
/** @typedef {import("./timechart.js").Mark} Mark */

/**
 * The whole picture without cursor, badges and labels.
 * @param {Pen} c @param {Ink} ink @param {Layout} layout @param {Line[]} lines
 * @param {{ticks: (from: number, to: number, wanted: number) => {value: number, label: string, day: string}[]}} clock
 * @param {Mark|undefined} chosen the finding whose evidence is brought out
 */
export function drawPicture(c, ink, layout, lines, clock, chosen) {
  c.font = FONT;
  drawPhases(c, ink, layout);
  drawFindings(c, ink, layout, chosen);
  for (const pane of layout.panes) {
    drawPane(c, ink, layout, pane);
    drawLines(c, ink, layout, pane, lines, chosen);
  }
  drawTimeAxis(c, ink, layout, clock);
}

/** @param {Pen} c @param {Ink} ink @param {Layout} layout */
function drawPhases(c, ink, layout) {
  for (const phase of layout.phases) {
    const { from, to } = phase;
    if (phase.n % 2 === 0) {
      c.fillStyle = ink.tint;
      c.fillRect(from, layout.bracketTop, Math.max(1, to - from), layout.bottom - layout.bracketTop);
    }
    const y = layout.bracketTop + 0.5;
    c.strokeStyle = ink.axis;
    c.lineWidth = 1;
    path(c, [[from + 0.5, y + 6], [from + 0.5, y], [Math.max(from + 1, to - 0.5), y], [Math.max(from + 1, to - 0.5), y + 6]]);
    const top = layout.top + (layout.nameRows - phase.row) * 18;
    if (phase.row > 0) {
      path(c, [[phase.x, top - 2], [phase.x, top + 1], [(from + to) / 2, y - 3], [(from + to) / 2, y]]);
    }
    writing(c, ink, phase.name, phase.x, top - 5, ink.quiet, "center");
  }
}

/** Each finding lies as a bar over its time, and tints the panes below it. @param {Pen} c @param {Ink} ink @param {Layout} layout @param {Mark|undefined} chosen */
function drawFindings(c, ink, layout, chosen) {
  for (const place of layout.findings) {
    const { mark, from, to } = place;
    const color = mark.state === "noted" ? ink.quiet : ink[mark.state];
    c.fillStyle = color;
    const short = to - from < (layout.right - layout.left) / 3;
    c.globalAlpha = mark.n === chosen?.n ? 0.14 : 0.06;
    if (mark.n === chosen?.n || (short && mark.state !== "noted")) {
      c.fillRect(from, layout.head - 6, to - from, layout.bottom - layout.head + 6);
    }
    c.globalAlpha = 1;
    const y = layout.findingY(place);
    c.fillRect(from, y + 12, to - from, 2);
    if (place.text) {
      writing(c, ink, place.text, place.x + 18, y + 5, color, "left");
    }
  }
}

/** @param {Pen} c @param {Ink} ink @param {Layout} layout @param {import("./panes.js").Pane} pane */
function drawPane(c, ink, layout, pane) {
  const scale = /** @type {import("./scales.js").Scale} */ (layout.scales.get(pane.key));
  c.lineWidth = 1;
  for (const tick of scale.ticks) {
    const y = Math.round(scale.at(tick.value)) + 0.5;
    c.strokeStyle = ink.rule;
    c.globalAlpha = tick.minor ? 0.6 : 1;
    path(c, [[layout.left, y], [layout.right, y]]);
    c.globalAlpha = 1;
    c.fillStyle = ink.quiet;
    c.textAlign = "right";
    c.fillText(tick.label, layout.left - 8, y + 4);
  }
  c.strokeStyle = ink.axis;
  path(c, [[layout.left + 0.5, pane.top], [layout.left + 0.5, pane.top + pane.height]]);
  c.textAlign = "right";
  c.fillStyle = ink.ink;
  c.fillText(pane.unit, layout.left - 8, pane.top - 12);
}

/** @param {Pen} c @param {Ink} ink @param {Layout} layout @param {import("./panes.js").Pane} pane @param {Line[]} lines @param {Mark|undefined} chosen */
function drawLines(c, ink, layout, pane, lines, chosen) {
  const scale = /** @type {import("./scales.js").Scale} */ (layout.scales.get(pane.key));
  const x = (/** @type {number} */ s) => layout.x(s);
  const evidence = chosen?.evidence ?? [];
  c.save();
  c.beginPath();
  c.rect(layout.left, pane.top - 4, layout.right - layout.left, pane.height + 8);
  c.clip();
  for (const band of layout.picture.bands.filter((b) => b.pane === pane.key)) {
    drawBand(c, band, ink[band.role], x, scale.at);
  }
  for (const line of lines.filter((l) => l.pane === pane.key)) {
    const seen = evidence.filter((e) => e.keys.includes(line.key));
    c.globalAlpha = line.other ? 0.6 : evidence.length > 0 && seen.length === 0 ? 0.35 : 1;
    drawLine(c, line, ink[line.role], x, scale.at, layout.view);
    for (const stretch of seen) {
      bringOut(c, ink, layout, pane, line, stretch);
    }
    c.globalAlpha = 1;
  }
  for (const limit of layout.picture.limits.filter((l) => l.pane === pane.key)) {
    drawLimit(c, limit, ink, scale.at, layout.left, layout.right);
  }
  c.restore();
}

/**
 * The stretch of a line in which a finding can be seen: a broad line under it.
 * @param {Pen} c @param {Ink} ink @param {Layout} layout @param {import("./panes.js").Pane} pane @param {Line} line
 * @param {{from_s: number, to_s: number}} stretch
 */
function bringOut(c, ink, layout, pane, line, stretch) {
  const scale = /** @type {import("./scales.js").Scale} */ (layout.scales.get(pane.key));
  const from = layout.x(stretch.from_s);
  const to = Math.max(from + 3, layout.x(stretch.to_s));
  c.save();
  c.beginPath();
  c.rect(from, pane.top - 4, to - from, pane.height + 8);
  c.clip();
  c.globalAlpha = 0.35;
  drawLine(c, { ...line, style: "solid" }, ink.action, (s) => layout.x(s), scale.at, layout.view, 8);
  c.globalAlpha = 1;
  drawLine(c, line, ink[line.role], (s) => layout.x(s), scale.at, layout.view, 0.75);
  c.restore();
}

/**
 * @param {Pen} c @param {Ink} ink @param {Layout} layout
 * @param {{ticks: (from: number, to: number, wanted: number) => {value: number, label: string, day: string}[]}} clock
 */
function drawTimeAxis(c, ink, layout, clock) {
  const y = layout.bottom + 0.5;
  c.strokeStyle = ink.axis;
  c.lineWidth = 1;
  path(c, [[layout.left, y], [layout.right, y]]);
  let free = -Infinity;
  const wanted = (layout.right - layout.left) / (layout.width < 480 ? 62 : 88);
  for (const tick of clock.ticks(layout.view[0], layout.view[1], wanted)) {
    const x = Math.round(layout.x(tick.value)) + 0.5;
    path(c, [[x, y], [x, y + 5]]);
    c.textAlign = "center";
    c.fillStyle = ink.quiet;
    const room = layout.ruler.width(tick.label) / 2;
    c.fillText(tick.label, Math.min(x, layout.width - room), y + 18);
    if (tick.day) {
      const half = layout.ruler.width(tick.day) / 2;
      const at = Math.max(layout.left + half, Math.min(layout.right - half, x));
      if (at - half > free) {
        c.fillStyle = ink.ink;
        c.fillText(tick.day, at, y + 34);
        free = at + half + 12;
      }
    }
  }
}

/** @param {Pen} c @param {[number, number][]} points */
function path(c, points) {
  c.beginPath();
  points.forEach(([x, y], i) => (i === 0 ? c.moveTo(x, y) : c.lineTo(x, y)));
  c.stroke();
}
