// A single-hue ramp whose lightness falls evenly (mixed in OKLab, Ottosson 2020).

import { rgb } from "./ink.js";

/** @param {number} c 0 to 255 */
const toLinear = (c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4);
/** @param {number} c linear */
const toByte = (c) => Math.round(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * Math.max(0, c) ** (1 / 2.4) - 0.055));

/** @param {string} hex @returns {[number, number, number]} */
function oklab(hex) {
  const [r, g, b] = rgb(hex).map(toLinear);
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

/** @param {[number, number, number]} lab @returns {[number, number, number]} */
function bytes([L, a, b]) {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    toByte(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
    toByte(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
    toByte(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s),
  ];
}

/**
 * @param {string} from @param {string} to
 * @returns {(share: number) => [number, number, number]} color for 0 to 1
 */
export function ramp(from, to) {
  const a = oklab(from);
  const b = oklab(to);
  const table = Array.from({ length: 256 }, (_, i) =>
    bytes(/** @type {[number, number, number]} */ (a.map((v, k) => v + ((b[k] - v) * i) / 255))),
  );
  return (share) => table[Math.max(0, Math.min(255, Math.round(share * 255)))];
}
