// The window map: chamber pressure across, shelf temperature up, drying time as depth of color,
// limits as named dashed lines, the recipe as a dot that can be moved.

import { contours } from "./contours.js";
import { element, ink, sharp, whenInkChanges } from "./ink.js";
import { writing } from "./panes.js";
import { ramp } from "./ramp.js";
import { figure, linear, significant } from "./scales.js";

/**
 * @typedef {object} LimitLine
 * @property {string} name @property {string} side which side is refused: above, left or right
 * @property {number[]} pressure @property {(number|null)[]} shelf
 * @property {(number|null)[]} [lo] @property {(number|null)[]} [hi]
 */
/**
 * @typedef {object} WindowMapPicture
 * @property {number[]} pressure Pa, rising @property {number[]} shelf °C, rising
 * @property {(number|null)[][]} time_h one row for each shelf temperature
 * @property {LimitLine[]} limits
 * @property {{pressure: number, shelf: number}|null} recipe
 * @property {Record<string, string>} words
 */

const FONT = "13px system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', sans-serif";
const LEVELS = [2, 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 24, 30, 36, 42, 48, 60, 72, 96, 120, 144, 168, 240, 336, 480];
const MOST_LEVELS = 7;
const LEFT = 52;
const TOP = 12;
const RIGHT = 12;
const BOTTOM = 44;

export class WindowMap {
  /** @param {HTMLElement} place @param {WindowMapPicture} picture */
  constructor(place, picture) {
    this.place = place;
    this.stage = element("div", "map-stage");
    this.stage.tabIndex = 0;
    this.stage.setAttribute("role", "application");
    this.stage.setAttribute("aria-label", picture.words.keys);
    this.canvas = element("canvas", "map-canvas");
    this.canvas.setAttribute("aria-hidden", "true");
    this.readout = element("output", "chart-readout");
    this.stage.append(this.canvas);
    place.replaceChildren(this.stage, this.readout);
    this.listen();
    new ResizeObserver(() => this.draw()).observe(this.stage);
    whenInkChanges(() => this.draw());
    this.show(picture);
  }

  /** @param {WindowMapPicture} picture */
  show(picture) {
    this.picture = picture;
    this.logTime = picture.time_h.map((row) => row.map((v) => (v === null ? null : Math.log(v))));
    this.draw();
    this.say(null);
  }

  /** Shows the steps of a recipe. @param {{pressure: number, shelf: number}[]} path */
  follow(path) {
    this.path = path;
    this.draw();
  }

  draw() {
    const width = this.stage.clientWidth;
    if (width === 0) {
      return;
    }
    const height = Math.round(Math.max(280, Math.min(420, width * 0.72)));
    const colors = ink(this.place);
    const c = sharp(this.canvas, width, height);
    c.font = FONT;
    const { pressure, shelf } = this.picture;
    this.box = { left: LEFT, right: width - RIGHT, top: TOP, bottom: height - BOTTOM };
    this.x = linear(pressure[0], pressure[pressure.length - 1], this.box.left, this.box.right, (width - 60) / 60);
    this.y = linear(shelf[0], shelf[shelf.length - 1], this.box.bottom, this.box.top, (height - 60) / 44);
    this.paintTime(c, colors);
    this.clip(c, () => {
      this.veil(c, colors);
      this.taken = [];
      this.drawLimits(c, colors);
      this.drawContours(c, colors);
      this.nameTheNever(c, colors);
    });
    this.drawAxes(c, colors);
    this.clip(c, () => this.drawPath(c, colors));
    this.drawRecipe(c, colors);
  }

  /** @param {CanvasRenderingContext2D} c @param {() => void} inside */
  clip(c, inside) {
    c.save();
    c.beginPath();
    c.rect(this.box.left, this.box.top, this.box.right - this.box.left, this.box.bottom - this.box.top);
    c.clip();
    inside();
    c.restore();
  }

  /** Colors every spot between the grid points. @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  paintTime(c, colors) {
    const width = Math.round(this.box.right - this.box.left);
    const height = Math.round(this.box.bottom - this.box.top);
    const known = this.logTime.flat().filter((v) => v !== null).sort((a, b) => a - b);
    this.shortest = known[0] ?? 0;
    this.longest = Math.max(this.shortest + 1, Math.min(known[Math.floor(known.length * 0.97)] ?? 1, this.atRecipe() + Math.log(4)));
    const color = ramp(colors["ramp-short"], colors["ramp-long"]);
    const image = new ImageData(width, height);
    for (let py = 0; py < height; py++) {
      for (let px = 0; px < width; px++) {
        const value = this.logTimeAt(px / (width - 1), 1 - py / (height - 1));
        const share = value === null ? 1 : (value - this.shortest) / (this.longest - this.shortest || 1);
        const [r, g, b] = color(share);
        image.data.set([r, g, b, 255], (py * width + px) * 4);
      }
    }
    const raster = document.createElement("canvas");
    raster.width = width;
    raster.height = height;
    raster.getContext("2d")?.putImageData(image, 0, 0);
    c.drawImage(raster, this.box.left, this.box.top, width, height);
  }

  /** Logarithm of the hours at the recipe; colors deepen up to four times that. */
  atRecipe() {
    const recipe = this.picture.recipe;
    if (!recipe) {
      return Infinity;
    }
    const { pressure, shelf } = this.picture;
    const across = (recipe.pressure - pressure[0]) / (pressure[pressure.length - 1] - pressure[0]);
    const up = (recipe.shelf - shelf[0]) / (shelf[shelf.length - 1] - shelf[0]);
    return this.logTimeAt(Math.max(0, Math.min(1, across)), Math.max(0, Math.min(1, up))) ?? Infinity;
  }

  /** Logarithm of the hours at a place of the map, or null. @param {number} across @param {number} up 0 to 1 */
  logTimeAt(across, up) {
    const grid = this.logTime;
    const column = Math.min(grid[0].length - 2, Math.max(0, Math.floor(across * (grid[0].length - 1))));
    const row = Math.min(grid.length - 2, Math.max(0, Math.floor(up * (grid.length - 1))));
    const u = across * (grid[0].length - 1) - column;
    const v = up * (grid.length - 1) - row;
    const [a, b, d, e] = [grid[row][column], grid[row][column + 1], grid[row + 1][column], grid[row + 1][column + 1]];
    if (a === null || b === null || d === null || e === null) {
      return null;
    }
    return (a * (1 - u) + b * u) * (1 - v) + (d * (1 - u) + e * u) * v;
  }

  /** Lightens and hatches what a limit refuses. @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  veil(c, colors) {
    for (const limit of this.picture.limits) {
      const spots = this.spots(limit, limit.shelf);
      if (spots.length < 2) {
        continue;
      }
      const far = limit.side === "above" ? this.box.top - 5 : this.box.bottom + 5;
      c.save();
      c.beginPath();
      spots.forEach(([x, y], i) => (i === 0 ? c.moveTo(x, y) : c.lineTo(x, y)));
      c.lineTo(spots[spots.length - 1][0], far);
      c.lineTo(spots[0][0], far);
      c.closePath();
      c.clip();
      c.globalAlpha = 0.45;
      c.fillStyle = colors.paper;
      c.fillRect(0, 0, this.box.right + 20, this.box.bottom + 20);
      c.globalAlpha = 0.35;
      c.strokeStyle = colors.stop;
      c.lineWidth = 1;
      c.beginPath();
      for (let x = this.box.left - this.box.bottom; x < this.box.right; x += 12) {
        c.moveTo(x, this.box.bottom);
        c.lineTo(x + this.box.bottom, 0);
      }
      c.stroke();
      c.restore();
    }
  }

  /** @param {LimitLine} limit @param {(number|null)[]} shelf @returns {[number, number][]} */
  spots(limit, shelf) {
    const spots = /** @type {[number, number][]} */ ([]);
    limit.pressure.forEach((p, i) => {
      const t = shelf[i];
      if (t !== null) {
        spots.push([this.x.at(p), this.y.at(t)]);
      }
    });
    return spots;
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawContours(c, colors) {
    const rows = this.logTime.length - 1;
    const columns = this.logTime[0].length - 1;
    const x = (/** @type {number} */ column) => this.box.left + (column / columns) * (this.box.right - this.box.left);
    const y = (/** @type {number} */ row) => this.box.bottom - (row / rows) * (this.box.bottom - this.box.top);
    const shown = LEVELS.filter((h) => Math.log(h) > this.shortest && Math.log(h) < this.longest);
    const stride = Math.ceil(shown.length / MOST_LEVELS);
    shown.filter((_, i) => i % stride === 0).forEach((hours, n) => {
      for (const path of contours(this.logTime, Math.log(hours))) {
        const line = path.map(([column, row]) => /** @type {[number, number]} */ ([x(column), y(row)]));
        c.strokeStyle = colors.ink;
        c.globalAlpha = 0.55;
        c.lineWidth = 1;
        trace(c, line);
        c.stroke();
        c.globalAlpha = 1;
        this.label(c, colors, line, `${hours}\u202fh`, colors.ink, [0.3 + 0.12 * (n % 3), 0.2, 0.5, 0.8, 0.1]);
      }
    });
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawLimits(c, colors) {
    this.picture.limits.forEach((limit, n) => {
      const line = this.spots(limit, limit.shelf);
      if (line.length < 2) {
        return;
      }
      if (limit.lo && limit.hi) {
        const low = this.spots(limit, limit.lo);
        const high = this.spots(limit, limit.hi);
        c.globalAlpha = 0.18;
        c.fillStyle = colors.stop;
        trace(c, [...low, ...high.reverse()]);
        c.fill();
        c.globalAlpha = 1;
      }
      c.strokeStyle = colors.paper;
      c.lineWidth = 4;
      trace(c, line);
      c.stroke();
      c.strokeStyle = colors.stop;
      c.lineWidth = 2;
      c.setLineDash(n === 0 ? [8, 5] : [3, 4]);
      trace(c, line);
      c.stroke();
      c.setLineDash([]);
      this.label(c, colors, line, limit.name, colors.stop, n === 0 ? [0.7, 0.5, 0.3] : [0.35, 0.6], -8);
    });
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawAxes(c, colors) {
    c.strokeStyle = colors.axis;
    c.lineWidth = 1;
    c.strokeRect(this.box.left + 0.5, this.box.top + 0.5, this.box.right - this.box.left - 1, this.box.bottom - this.box.top - 1);
    c.fillStyle = colors.quiet;
    for (const tick of this.y.ticks) {
      const y = this.y.at(tick.value);
      c.textAlign = "right";
      c.fillText(tick.label, this.box.left - 8, y + 4);
      c.beginPath();
      c.moveTo(this.box.left - 4, y);
      c.lineTo(this.box.left, y);
      c.stroke();
    }
    let free = -Infinity;
    for (const tick of this.x.ticks) {
      const x = this.x.at(tick.value);
      c.beginPath();
      c.moveTo(x, this.box.bottom);
      c.lineTo(x, this.box.bottom + (tick.minor ? 3 : 5));
      c.stroke();
      c.textAlign = "center";
      if (x > free && tick.label) {
        c.fillText(tick.label, x, this.box.bottom + 19);
        free = x + 30;
      }
    }
    writing(c, colors, this.picture.words.shelf, this.box.left + 8, this.box.top + 18, colors.ink, "left");
    c.textAlign = "right";
    c.fillStyle = colors.ink;
    c.fillText(this.picture.words.pressure, this.box.right, this.box.bottom + 37);
  }

  /** @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawRecipe(c, colors) {
    const recipe = this.moving ?? this.picture.recipe;
    if (!recipe) {
      return;
    }
    const x = this.x.at(recipe.pressure);
    const y = this.y.at(recipe.shelf);
    c.beginPath();
    c.arc(x, y, 8, 0, 2 * Math.PI);
    c.fillStyle = colors.action;
    c.fill();
    c.lineWidth = 3;
    c.strokeStyle = colors.paper;
    c.stroke();
    c.beginPath();
    c.arc(x, y, 11, 0, 2 * Math.PI);
    c.lineWidth = 1.5;
    c.strokeStyle = colors.action;
    c.stroke();
  }

  /** The steps of the recipe, one after the other. @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  drawPath(c, colors) {
    const spots = (this.path ?? []).map((step) => /** @type {[number, number]} */ ([this.x.at(step.pressure), this.y.at(step.shelf)]));
    if (spots.length < 2) {
      return;
    }
    for (const [width, color] of /** @type {[number, string][]} */ ([[6, colors.paper], [3, colors.action]])) {
      c.strokeStyle = color;
      c.lineWidth = width;
      trace(c, spots);
      c.stroke();
    }
    spots.forEach(([x, y], i) => {
      c.beginPath();
      c.arc(x, y, 5, 0, 2 * Math.PI);
      c.fillStyle = colors.action;
      c.fill();
      writing(c, colors, String(i + 1), x + 10, y - 6, colors.action, "left");
    });
  }

  /** Names the dark corner where nothing dries, if there is one. @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors */
  nameTheNever(c, colors) {
    const last = this.logTime[0].length - 1;
    const rows = this.logTime.filter((row) => row[Math.floor(last * 0.75)] === null).length;
    const height = (rows / this.logTime.length) * (this.box.bottom - this.box.top);
    if (height > 28) {
      c.textAlign = "center";
      c.fillStyle = "#fbfaf7";
      c.fillText(this.picture.words.never, this.box.left + 0.75 * (this.box.right - this.box.left), this.box.bottom - height / 2 + 5);
    }
  }

  /**
   * Writes along a line, upright, at the first of the places that is free.
   * @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors
   * @param {[number, number][]} line @param {string} text @param {string} color
   * @param {number[]} places shares of the line's length @param {number} [lift] pixels
   */
  label(c, colors, line, text, color, places, lift = 4) {
    const room = c.measureText(text).width;
    const lengths = line.map(([x, y], i) => (i === 0 ? 0 : Math.hypot(x - line[i - 1][0], y - line[i - 1][1])));
    const whole = lengths.reduce((a, b) => a + b, 0);
    if (whole < room + 24) {
      return;
    }
    for (const share of places) {
      let wanted = Math.max(room / 2 + 4, Math.min(whole - room / 2 - 4, whole * share));
      let i = 1;
      while (i < line.length - 1 && wanted > lengths[i]) {
        wanted -= lengths[i++];
      }
      const [x, y] = line[i];
      const free = !this.taken.some((t) => Math.abs(t.x - x) < (t.room + room) / 2 + 6 && Math.abs(t.y - y - lift) < 20);
      const inside = y > this.box.top + 14 && y < this.box.bottom - 6;
      if (free && inside) {
        this.taken.push({ x, y: y + lift, room });
        this.write(c, colors, line, i, text, color, lift);
        return;
      }
    }
  }

  /**
   * @param {CanvasRenderingContext2D} c @param {import("./ink.js").Ink} colors
   * @param {[number, number][]} line @param {number} i @param {string} text @param {string} color @param {number} lift
   */
  write(c, colors, line, i, text, color, lift) {
    const before = line[Math.max(0, i - 3)];
    const after = line[Math.min(line.length - 1, i + 2)];
    let angle = Math.atan2(after[1] - before[1], after[0] - before[0]);
    if (Math.abs(angle) > Math.PI / 2) {
      angle += Math.PI;
    }
    c.save();
    c.translate(line[i][0], line[i][1]);
    c.rotate(angle);
    writing(c, colors, text, 0, lift, color, "center");
    c.restore();
  }

  // ---- moving ----

  /** @param {PointerEvent} event */
  spotOf(event) {
    const across = Math.max(this.box.left, Math.min(this.box.right, event.offsetX));
    const up = Math.max(this.box.top, Math.min(this.box.bottom, event.offsetY));
    return { pressure: this.x.value(across), shelf: this.y.value(up) };
  }

  listen() {
    this.canvas.addEventListener("pointerdown", (event) => {
      if (event.button === 0 && event.pointerType !== "touch") {
        this.stage.focus({ preventScroll: true });
        this.canvas.setPointerCapture(event.pointerId);
        this.moving = this.spotOf(event);
        this.draw();
        this.say(this.moving);
      }
    });
    this.canvas.addEventListener("pointermove", (event) => {
      const spot = this.spotOf(event);
      if (this.moving) {
        this.moving = spot;
        this.draw();
      }
      this.say(spot);
    });
    this.canvas.addEventListener("pointerup", (event) => this.settle(this.spotOf(event)));
    this.canvas.addEventListener("pointercancel", () => (this.moving = undefined));
    this.canvas.addEventListener("pointerleave", () => this.say(null));
    this.stage.addEventListener("keydown", (event) => this.press(event));
  }

  /** @param {{pressure: number, shelf: number}} spot */
  settle(spot) {
    this.moving = undefined;
    const rounded = { pressure: Number(spot.pressure.toPrecision(2)), shelf: Math.round(spot.shelf * 2) / 2 };
    this.picture = { ...this.picture, recipe: rounded };
    this.draw();
    this.say(rounded);
    this.place.dispatchEvent(new CustomEvent("recipe", { detail: rounded, bubbles: true }));
  }

  /** @param {KeyboardEvent} event */
  press(event) {
    const recipe = this.picture.recipe;
    /** @type {Record<string, [number, number]>} factor on pressure, kelvin on shelf */
    const moves = { ArrowLeft: [1 / 1.08, 0], ArrowRight: [1.08, 0], ArrowUp: [1, 0.5], ArrowDown: [1, -0.5] };
    const move = moves[event.key];
    if (!move || !recipe) {
      return;
    }
    event.preventDefault();
    const { pressure, shelf } = this.picture;
    this.settle({
      pressure: Math.max(pressure[0], Math.min(pressure[pressure.length - 1], recipe.pressure * move[0])),
      shelf: Math.max(shelf[0], Math.min(shelf[shelf.length - 1], recipe.shelf + move[1])),
    });
  }

  /** @param {{pressure: number, shelf: number}|null} spot */
  say(spot) {
    if (!spot || !this.box) {
      this.readout.textContent = this.picture.words.hint;
      return;
    }
    const across = (this.x.at(spot.pressure) - this.box.left) / (this.box.right - this.box.left);
    const up = (this.box.bottom - this.y.at(spot.shelf)) / (this.box.bottom - this.box.top);
    const log = this.logTimeAt(across, up);
    const hours = log === null ? this.picture.words.never : `${significant(Math.exp(log))}\u202fh`;
    this.readout.textContent = `${significant(spot.pressure)}\u202fPa \u00b7 ${figure(spot.shelf, 1)}\u202f°C \u00b7 ${hours}`;
  }
}

/** @param {CanvasRenderingContext2D} c @param {[number, number][]} line */
function trace(c, line) {
  c.beginPath();
  line.forEach(([x, y], i) => (i === 0 ? c.moveTo(x, y) : c.lineTo(x, y)));
}
