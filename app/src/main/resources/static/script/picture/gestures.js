// Moving about in a time picture: mouse, fingers, wheel and keys.

/** @typedef {import("./timechart.js").TimeChart} TimeChart */

const CLICK = 8;
const DOUBLE_MS = 320;

/** @param {TimeChart} chart */
export function listen(chart) {
  new Pointers(chart).listen();
  chart.stage.addEventListener("wheel", (event) => turnWheel(chart, event), { passive: false });
  chart.stage.addEventListener("keydown", (event) => press(chart, event));
}

/** Mouse: drag chooses a stretch, Shift and drag moves it. One finger moves, two fingers zoom. */
class Pointers {
  /** @param {TimeChart} chart */
  constructor(chart) {
    this.chart = chart;
    /** @type {Map<number, number>} pixel of each pointer that is down */
    this.down = new Map();
    /** @type {{from: number, view: [number, number], pan: boolean, moved: boolean}|null} */
    this.held = null;
    this.tapped = 0;
  }

  listen() {
    const over = this.chart.over;
    over.addEventListener("pointerdown", (event) => this.press(event));
    over.addEventListener("pointermove", (event) => this.move(event));
    over.addEventListener("pointerup", (event) => this.release(event));
    over.addEventListener("pointercancel", (event) => this.drop(event));
    over.addEventListener("pointerleave", (event) => {
      if (!this.held && event.pointerType === "mouse") {
        this.chart.point(null);
      }
    });
  }

  /** @param {PointerEvent} event */
  press(event) {
    if (event.button !== 0) {
      return;
    }
    this.chart.stage.focus({ preventScroll: true });
    this.chart.over.setPointerCapture(event.pointerId);
    this.down.set(event.pointerId, event.offsetX);
    const onAxis = event.offsetY > this.chart.layout.bottom;
    const pan = event.pointerType === "touch" || event.shiftKey || onAxis;
    this.held = { from: event.offsetX, view: [...this.chart.view], pan, moved: false };
    if (this.down.size === 2) {
      this.pinch = [...this.down.values()].map((pixel) => this.chart.second(pixel));
    }
  }

  /** @param {PointerEvent} event */
  move(event) {
    if (this.down.has(event.pointerId)) {
      this.down.set(event.pointerId, event.offsetX);
    }
    if (this.down.size === 2 && this.pinch) {
      this.spread(this.pinch);
    } else if (this.held?.pan) {
      this.pan(event, this.held);
    } else {
      if (this.held) {
        this.chart.select(this.held.from, event.offsetX);
      }
      this.chart.point(this.chart.second(event.offsetX));
    }
  }

  /** Keeps what lay under two fingers under them. @param {number[]} seconds */
  spread(seconds) {
    const [a, b] = [...this.down.values()];
    if (Math.abs(b - a) < 12 || seconds[0] === seconds[1]) {
      return;
    }
    const { left, right } = this.chart.layout;
    const perPixel = Math.abs((seconds[1] - seconds[0]) / (b - a));
    const from = Math.min(...seconds) - (Math.min(a, b) - left) * perPixel;
    if (this.held) {
      this.held.moved = true;
    }
    this.chart.show(from, from + (right - left) * perPixel);
  }

  /** @param {PointerEvent} event @param {{from: number, view: [number, number], moved: boolean}} held */
  pan(event, held) {
    const { left, right } = this.chart.layout;
    const [from, to] = held.view;
    held.moved ||= Math.abs(event.offsetX - held.from) > CLICK;
    if (this.chart.isWhole()) {
      this.chart.point(this.chart.second(event.offsetX));
    } else if (held.moved) {
      const by = ((held.from - event.offsetX) / (right - left)) * (to - from);
      this.chart.show(from + by, to + by);
    }
  }

  /** @param {PointerEvent} event */
  release(event) {
    this.down.delete(event.pointerId);
    const held = this.held;
    if (this.down.size > 0 || !held) {
      return;
    }
    this.held = null;
    this.pinch = undefined;
    this.chart.select(null, null);
    if (!held.pan && Math.abs(event.offsetX - held.from) > CLICK) {
      this.chart.show(...inOrder(this.chart.second(held.from), this.chart.second(event.offsetX)));
    } else if (!held.moved) {
      this.tap(event);
    }
  }

  /** A tap puts the cursor there; two show the whole run. @param {PointerEvent} event */
  tap(event) {
    this.chart.point(this.chart.second(event.offsetX));
    if (event.timeStamp - this.tapped < DOUBLE_MS) {
      this.chart.zoomBy("reset");
    }
    this.tapped = event.timeStamp;
  }

  /** @param {PointerEvent} event */
  drop(event) {
    this.down.delete(event.pointerId);
    this.held = null;
    this.pinch = undefined;
    this.chart.select(null, null);
  }
}

/** @param {number} a @param {number} b @returns {[number, number]} */
function inOrder(a, b) {
  return a < b ? [a, b] : [b, a];
}

/** The wheel zooms once the picture was clicked, so that it never catches a passing scroll. @param {TimeChart} chart @param {WheelEvent} event */
function turnWheel(chart, event) {
  const span = chart.view[1] - chart.view[0];
  const sideways = Math.abs(event.deltaX) > Math.abs(event.deltaY);
  if (sideways && !chart.isWhole()) {
    event.preventDefault();
    const by = (event.deltaX / (chart.layout.right - chart.layout.left)) * span;
    chart.show(chart.view[0] + by, chart.view[1] + by);
    return;
  }
  const meant = event.ctrlKey || chart.stage.contains(document.activeElement);
  if (!meant || sideways || (chart.isWhole() && event.deltaY > 0)) {
    return;
  }
  event.preventDefault();
  const fixed = chart.second(event.clientX - chart.over.getBoundingClientRect().left);
  const factor = Math.exp(Math.max(-60, Math.min(60, event.deltaY)) / 200);
  chart.show(fixed - (fixed - chart.view[0]) * factor, fixed + (chart.view[1] - fixed) * factor);
}

/** @param {TimeChart} chart @param {KeyboardEvent} event */
function press(chart, event) {
  const [from, to] = chart.view;
  const at = chart.cursor ?? (from + to) / 2;
  const step = (to - from) / 100;
  const move = (/** @type {number} */ by) =>
    event.shiftKey ? chart.pan(Math.sign(by)) : chart.point(Math.max(from, Math.min(to, at + by)));
  /** @type {Record<string, () => void>} */
  const keys = {
    ArrowLeft: () => move(-step),
    ArrowRight: () => move(step),
    PageUp: () => chart.pan(-1),
    PageDown: () => chart.pan(1),
    Home: () => chart.point(from),
    End: () => chart.point(to),
    "+": () => chart.zoomBy("in"),
    "=": () => chart.zoomBy("in"),
    "-": () => chart.zoomBy("out"),
    0: () => chart.zoomBy("reset"),
    Escape: () => chart.zoomBy("reset"),
  };
  const act = keys[event.key];
  if (act && event.target === chart.stage && !event.altKey && !event.metaKey && !event.ctrlKey) {
    event.preventDefault();
    act();
    chart.sayCursor();
  }
}
