// A pen that writes SVG: it takes the strokes of a canvas and keeps them as a drawing without pixels.

import { FONT } from "./layout.js";

const SPACE = "http://www.w3.org/2000/svg";
const ANCHORS = /** @type {Record<string, string>} */ ({ left: "start", center: "middle", right: "end" });

/** What of a canvas our drawings use, as SVG. */
export class SvgPen {
  /** @param {number} width @param {number} height @param {string} title @param {string} paper color */
  constructor(width, height, title, paper) {
    this.fillStyle = paper;
    this.strokeStyle = "#000";
    this.lineWidth = 1;
    this.globalAlpha = 1;
    /** @type {CanvasTextAlign} */
    this.textAlign = "left";
    /** @type {CanvasLineJoin} */
    this.lineJoin = "round";
    this.font = FONT;
    /** @type {number[]} */
    this.dash = [];
    this.d = "";
    this.clips = 0;
    this.svg = node("svg", {
      width, height, viewBox: `0 0 ${width} ${height}`, role: "img",
      "font-family": "system-ui, 'Segoe UI', Roboto, 'Noto Sans', sans-serif", "font-size": 13,
    });
    const heading = node("title", {});
    heading.textContent = title;
    this.svg.append(heading);
    /** @type {SVGElement} */
    this.into = this.svg;
    /** @type {SVGElement[]} */
    this.saved = [];
    this.fillRect(0, 0, width, height);
  }

  beginPath() {
    this.d = "";
  }

  /** @param {number} x @param {number} y */
  moveTo(x, y) {
    this.d += `M${short(x)} ${short(y)}`;
  }

  /** @param {number} x @param {number} y */
  lineTo(x, y) {
    this.d += `L${short(x)} ${short(y)}`;
  }

  closePath() {
    this.d += "Z";
  }

  /** @param {number} x @param {number} y @param {number} width @param {number} height */
  rect(x, y, width, height) {
    this.d += `M${short(x)} ${short(y)}h${short(width)}v${short(height)}h${short(-width)}Z`;
  }

  /** A whole circle, whatever the angles. @param {number} x @param {number} y @param {number} r */
  arc(x, y, r) {
    this.d += `M${short(x - r)} ${short(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
  }

  /** @param {number[]} dash */
  setLineDash(dash) {
    this.dash = dash;
  }

  stroke() {
    this.add("path", {
      d: this.d, fill: "none", stroke: this.strokeStyle, "stroke-width": this.lineWidth, "stroke-linejoin": this.lineJoin,
      ...(this.dash.length > 0 ? { "stroke-dasharray": this.dash.join(" ") } : {}),
    });
  }

  fill() {
    this.add("path", { d: this.d, fill: this.fillStyle });
  }

  /** @param {number} x @param {number} y @param {number} width @param {number} height */
  fillRect(x, y, width, height) {
    this.add("rect", { x: short(x), y: short(y), width: short(width), height: short(height), fill: this.fillStyle });
  }

  /** The outline of the text that is filled next. */
  strokeText() {
    this.outlined = true;
  }

  /** @param {string} text @param {number} x @param {number} y */
  fillText(text, x, y) {
    const outline = { stroke: this.strokeStyle, "stroke-width": 4, "paint-order": "stroke", "stroke-linejoin": "round" };
    const made = this.add("text", {
      x: short(x), y: short(y), "text-anchor": ANCHORS[this.textAlign] ?? "start", fill: this.fillStyle, ...(this.outlined ? outline : {}),
    });
    made.textContent = text;
    this.outlined = false;
  }

  save() {
    this.saved.push(this.into);
  }

  restore() {
    this.into = this.saved.pop() ?? this.svg;
  }

  /** What follows, until restore, is drawn inside the path only. */
  clip() {
    const id = `clip-${++this.clips}`;
    const clip = node("clipPath", { id });
    clip.append(node("path", { d: this.d }));
    const group = node("g", { "clip-path": `url(#${id})` });
    this.into.append(clip, group);
    this.into = group;
  }

  /** The drawing as a file. */
  text() {
    return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(this.svg)}\n`;
  }

  /** @param {string} tag @param {Record<string, string|number>} attributes */
  add(tag, attributes) {
    const made = node(tag, attributes);
    if (this.globalAlpha < 1) {
      made.setAttribute("opacity", String(this.globalAlpha));
    }
    this.into.append(made);
    return made;
  }
}

/** @param {string} tag @param {Record<string, string|number>} attributes @returns {SVGElement} */
function node(tag, attributes) {
  const made = /** @type {SVGElement} */ (document.createElementNS(SPACE, tag));
  for (const [name, value] of Object.entries(attributes)) {
    made.setAttribute(name, String(value));
  }
  return made;
}

/** @param {number} value */
function short(value) {
  return Math.round(value * 100) / 100;
}
