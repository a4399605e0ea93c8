// Scales and ticks: from quantities to pixels and to the numbers beside an axis.

/**
 * @typedef {object} Scale
 * @property {(value: number) => number} at pixel of a value
 * @property {(pixel: number) => number} value value at a pixel
 * @property {{value: number, label: string, minor: boolean}[]} ticks
 */

const STEPS = [1, 2, 2.5, 5, 10];
const MINUS = "\u2212";

/** A number with a true minus sign. @param {number} value @param {number} decimals */
export function figure(value, decimals) {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? MINUS + text : text;
}

/** Three significant digits, never an exponent. @param {number} value */
export function significant(value) {
  if (value === 0 || !Number.isFinite(value)) {
    return value === 0 ? "0" : "\u2013";
  }
  const decimals = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  const rounded = Number(value.toPrecision(3));
  const text = figure(rounded, Math.min(decimals, 6));
  return decimals === 0 ? text.replace(/\B(?=(\d{3})+(?!\d))/g, "\u202f") : text;
}

/** A round number as an axis shows it. @param {number} value */
function plain(value) {
  const decimals = Math.max(0, -Math.floor(Math.log10(value) + 1e-9));
  return value.toFixed(decimals).replace(/\B(?=(\d{3})+(?!\d))/g, decimals === 0 ? "\u202f" : "");
}

/**
 * @param {number} low @param {number} high @param {number} from pixel of low
 * @param {number} to pixel of high @param {number} wanted about how many ticks
 * @returns {Scale}
 */
export function linear(low, high, from, to, wanted) {
  const span = high - low || 1;
  const rough = span / Math.max(1, wanted);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = (STEPS.find((s) => s * power >= rough) ?? 10) * power;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9) + (step / power === 2.5 ? 1 : 0));
  const ticks = [];
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * span; k++) {
    ticks.push({ value: k * step, label: figure(k * step, decimals), minor: false });
  }
  return {
    at: (value) => from + ((value - low) / span) * (to - from),
    value: (pixel) => low + ((pixel - from) / (to - from)) * span,
    ticks,
  };
}

/**
 * @param {number} low positive @param {number} high @param {number} from @param {number} to
 * @returns {Scale}
 */
export function logarithmic(low, high, from, to) {
  const a = Math.log10(low);
  const span = Math.log10(high) - a || 1;
  const few = span <= 2.2;
  const ticks = [];
  for (let decade = Math.floor(a); decade <= Math.ceil(a + span); decade++) {
    for (const m of [1, 2, 5]) {
      const value = m * 10 ** decade;
      if (value >= low * 0.9999 && value <= high * 1.0001 && (m === 1 || span < 4)) {
        const label = m === 1 || few ? plain(value) : "";
        ticks.push({ value, label, minor: m !== 1 });
      }
    }
  }
  return {
    at: (value) => from + ((Math.log10(Math.max(value, 1e-12)) - a) / span) * (to - from),
    value: (pixel) => 10 ** (a + ((pixel - from) / (to - from)) * span),
    ticks,
  };
}

const MINUTE = 60;
const HOUR = 3600;
const DAY = 86400;
const TIME_STEPS = [
  1, 2, 5, 10, 30, MINUTE, 2 * MINUTE, 5 * MINUTE, 10 * MINUTE, 15 * MINUTE, 30 * MINUTE,
  HOUR, 2 * HOUR, 3 * HOUR, 6 * HOUR, 12 * HOUR, DAY, 2 * DAY, 7 * DAY, 14 * DAY,
];

/** Clock times of one zone. */
export class Clock {
  /** @param {string} zone @param {number} start_ms time of second 0 */
  constructor(zone, start_ms) {
    this.start_ms = start_ms;
    const base = { timeZone: zone, hourCycle: "h23" };
    this.parts = new Intl.DateTimeFormat("en-GB", {
      ...base, year: "numeric", month: "numeric", day: "numeric",
      hour: "numeric", minute: "numeric", second: "numeric",
    });
    this.hourMinute = new Intl.DateTimeFormat("en-GB", { ...base, hour: "2-digit", minute: "2-digit" });
    this.withSeconds = new Intl.DateTimeFormat("en-GB", {
      ...base, hour: "2-digit", minute: "2-digit", second: "2-digit",
    });
    this.dayName = new Intl.DateTimeFormat("en-GB", { ...base, weekday: "short", day: "numeric", month: "short" });
  }

  /** Seconds that local time is ahead of UTC. @param {number} second */
  offset(second) {
    const ms = this.start_ms + second * 1000;
    const read = Object.fromEntries(this.parts.formatToParts(ms).map((p) => [p.type, Number(p.value)]));
    const local = Date.UTC(read.year, read.month - 1, read.day, read.hour, read.minute, read.second);
    return Math.round((local - Math.floor(ms / 1000) * 1000) / 1000);
  }

  /** The second of a time read from a clock here, "2026-03-05T14:32". @param {string} local @returns {number} */
  second(local) {
    const asUtc = Date.parse(`${local}Z`);
    const guess = (asUtc - this.start_ms) / 1000;
    const first = guess - this.offset(guess);
    return guess - this.offset(first);
  }

  /** "2026-03-05T14:32:00", as a field for date and time holds it. @param {number} second */
  local(second) {
    const whole = Math.round(second);
    return new Date(this.start_ms + (whole + this.offset(whole)) * 1000).toISOString().slice(0, 19);
  }

  /** "Wed 5 Mar 14:32" @param {number} second @param {boolean} seconds */
  words(second, seconds = false) {
    const ms = this.start_ms + second * 1000;
    return `${this.dayName.format(ms).replace(",", "")} ${(seconds ? this.withSeconds : this.hourMinute).format(ms)}`;
  }

  /**
   * @param {number} from @param {number} to seconds shown @param {number} wanted
   * @returns {{value: number, label: string, day: string}[]}
   */
  ticks(from, to, wanted) {
    const step = TIME_STEPS.find((s) => s >= (to - from) / Math.max(1, wanted)) ?? 30 * DAY;
    const startOfEpoch = this.start_ms / 1000;
    const ticks = [];
    let previousDay = "";
    let offset = this.offset(from);
    for (let k = Math.ceil((startOfEpoch + from + offset) / step); ; k++) {
      let second = k * step - offset - startOfEpoch;
      if (step >= HOUR) {
        offset = this.offset(second);
        second = k * step - offset - startOfEpoch;
      }
      if (second > to) {
        return ticks;
      }
      const ms = this.start_ms + second * 1000;
      const day = this.dayName.format(ms).replace(",", "");
      const label = (step < MINUTE ? this.withSeconds : this.hourMinute).format(ms);
      ticks.push({ value: second, label, day: day === previousDay ? "" : day });
      previousDay = day;
    }
  }
}

/** Hours since the start, where no clock is known. */
export class Elapsed {
  /** @param {number} second */
  words(second) {
    return `${figure(second / HOUR, 1)}\u202fh`;
  }

  /** @param {number} from @param {number} to @param {number} wanted */
  ticks(from, to, wanted) {
    const step = TIME_STEPS.find((s) => s >= (to - from) / Math.max(1, wanted)) ?? 30 * DAY;
    const ticks = [];
    for (let second = Math.ceil(from / step) * step; second <= to; second += step) {
      const label = elapsedLabel(second, step);
      ticks.push({ value: second, label, day: "" });
    }
    return ticks;
  }
}

/** @param {number} second @param {number} step */
function elapsedLabel(second, step) {
  if (step >= HOUR) {
    return `${Math.round(second / HOUR)}\u202fh`;
  }
  const hours = Math.floor(second / HOUR);
  const minutes = String(Math.floor((second % HOUR) / MINUTE)).padStart(2, "0");
  const seconds = String(Math.round(second % MINUTE)).padStart(2, "0");
  return step >= MINUTE ? `${hours}:${minutes}\u202fh` : `${hours}:${minutes}:${seconds}\u202fh`;
}
