// The picture as seen, as a file: PNG and SVG with title, legend, findings and events; drawn again for print.

import { drawPicture } from "./picture/drawing.js";
import { element, ink, sharp } from "./picture/ink.js";
import { Layout } from "./picture/layout.js";
import { SvgPen } from "./picture/svgpen.js";

/** @typedef {import("./picture/timechart.js").TimeChart} TimeChart */
/** @typedef {import("./picture/panes.js").Pen} Pen */

const TITLE = 56;
const LEGEND_ROW = 20;
const WIDTH = 1200;
const DASHES = /** @type {Record<string, number[]>} */ ({ dash: [7, 4], dot: [2, 4], dashdot: [8, 3, 2, 3] });

/** @param {HTMLElement} figure @param {TimeChart} chart */
export function mountExport(figure, chart) {
  const name = (figure.dataset.file ?? "run").replace(/[^\p{L}\p{N}._-]+/gu, "-");
  figure.querySelector("[data-save=svg]")?.addEventListener("click", () => {
    save(new Blob([asSvg(figure, chart).text()], { type: "image/svg+xml" }), `${name}.svg`);
  });
  figure.querySelector("[data-save=png]")?.addEventListener("click", () => {
    asCanvas(figure, chart).toBlob((blob) => blob && save(blob, `${name}.png`), "image/png");
  });
  const links = /** @type {NodeListOf<HTMLAnchorElement>} */ (figure.querySelectorAll("a[data-channels]"));
  const stretch = () => {
    for (const link of links) {
      link.href = `${link.dataset.channels}?${new URLSearchParams(asked(chart, link.dataset.units))}`;
    }
  };
  figure.addEventListener("view", stretch);
  chart.labels.list.addEventListener("click", stretch);
  mountPrint(figure, chart);
}

/** What of the run is in sight. @param {TimeChart} chart @param {string|undefined} units @returns {Record<string, string>} */
function asked(chart, units) {
  const shown = chart.labels.shown(chart.picture.lines).filter((line) => !line.other).map((line) => line.key);
  return {
    ...(units ? { units } : {}),
    ...(chart.isWhole() ? {} : { from: String(chart.view[0]), to: String(chart.view[1]) }),
    ...(chart.labels.hidden.size > 0 ? { channels: shown.join(",") } : {}),
  };
}

/** Paper gets lines, not pixels. @param {HTMLElement} figure @param {TimeChart} chart */
function mountPrint(figure, chart) {
  const sheet = element("div", "chart-print");
  figure.append(sheet);
  addEventListener("beforeprint", () => sheet.replaceChildren(asSvg(figure, chart).svg));
  addEventListener("afterprint", () => sheet.replaceChildren());
}

/** @param {HTMLElement} figure @param {TimeChart} chart */
function asSvg(figure, chart) {
  const { layout, height } = size(chart);
  const colors = ink(chart.place);
  const pen = new SvgPen(WIDTH, height, figure.dataset.title ?? "", colors.paper);
  draw(/** @type {Pen} */ (pen), figure, chart, layout);
  pen.svg.setAttribute("aria-label", figure.dataset.title ?? "");
  return pen;
}

/** @param {HTMLElement} figure @param {TimeChart} chart */
function asCanvas(figure, chart) {
  const { layout, height } = size(chart);
  const canvas = document.createElement("canvas");
  const c = sharp(canvas, WIDTH, height, 2);
  c.fillStyle = ink(chart.place).paper;
  c.fillRect(0, 0, WIDTH, height);
  draw(c, figure, chart, layout);
  return canvas;
}

/** @param {TimeChart} chart */
function size(chart) {
  const layout = new Layout(chart.picture, chart.labels.shown(chart.lines), chart.view, WIDTH, TITLE);
  const rows = Math.ceil(legend(chart).length / 4);
  return { layout, height: layout.height + 12 + rows * LEGEND_ROW + 12 };
}

/** @param {TimeChart} chart */
function legend(chart) {
  return [...chart.labels.shown(chart.picture.lines), ...chart.picture.bands];
}

/** @param {Pen} c @param {HTMLElement} figure @param {TimeChart} chart @param {Layout} layout */
function draw(c, figure, chart, layout) {
  const colors = ink(chart.place);
  const lines = chart.labels.shown(chart.lines);
  const chosen = chart.picture.marks.find((mark) => mark.n === chart.chosenMark);
  drawPicture(c, colors, layout, lines, chart.clock, chosen);
  c.textAlign = "left";
  c.fillStyle = colors.ink;
  c.fillText(figure.dataset.title ?? "", 12, 22);
  c.fillStyle = colors.quiet;
  c.fillText(`${chart.moment(chart.view[0])} \u2013 ${chart.moment(chart.view[1])}`, 12, 42);
  drawBadges(c, colors, layout);
  drawFlags(c, colors, layout);
  drawLegend(c, colors, layout, legend(chart));
}

/** @param {Pen} c @param {import("./picture/ink.js").Ink} colors @param {Layout} layout */
function drawBadges(c, colors, layout) {
  for (const place of layout.findings) {
    const y = layout.findingY(place);
    c.fillStyle = place.mark.state === "noted" ? colors.quiet : colors[place.mark.state];
    c.beginPath();
    if (place.mark.state === "stop") {
      c.rect(place.x - 11, y - 11, 22, 22);
    } else {
      c.arc(place.x, y, 11, 0, 2 * Math.PI);
    }
    c.fill();
    c.textAlign = "center";
    c.fillStyle = colors.paper;
    c.fillText(String(place.mark.n), place.x, y + 4.5);
  }
}

/** @param {Pen} c @param {import("./picture/ink.js").Ink} colors @param {Layout} layout */
function drawFlags(c, colors, layout) {
  for (const place of layout.events) {
    const one = place.events.length === 1;
    c.textAlign = "center";
    c.fillStyle = colors.ink;
    c.fillText(one ? place.events[0].id : `+${place.events.length}`, place.x, layout.laneY + 4);
    c.strokeStyle = colors.axis;
    c.lineWidth = 1;
    c.beginPath();
    c.rect(place.x - 11, layout.laneY - 10, 22, 20);
    c.stroke();
    if (place.text) {
      c.textAlign = "left";
      c.fillStyle = colors.quiet;
      c.fillText(place.text, place.x + 18, layout.laneY + 4);
    }
  }
}

/** @param {Pen} c @param {import("./picture/ink.js").Ink} colors @param {Layout} layout @param {any[]} drawn */
function drawLegend(c, colors, layout, drawn) {
  drawn.forEach((line, i) => {
    const x = layout.left + (i % 4) * ((WIDTH - layout.left) / 4);
    const y = layout.height + 20 + Math.floor(i / 4) * LEGEND_ROW;
    c.strokeStyle = colors[line.role];
    c.lineWidth = "mid" in line ? 8 : 2;
    c.globalAlpha = "mid" in line ? 0.35 : 1;
    c.setLineDash(DASHES[line.style] ?? []);
    c.beginPath();
    c.moveTo(x, y - 4);
    c.lineTo(x + 28, y - 4);
    c.stroke();
    c.setLineDash([]);
    c.globalAlpha = 1;
    c.textAlign = "left";
    c.fillStyle = colors.ink;
    c.fillText(layout.ruler.cut(line.name, (WIDTH - layout.left) / 4 - 48), x + 36, y);
  });
}

/** @param {Blob} blob @param {string} name */
function save(blob, name) {
  const link = element("a", "");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
