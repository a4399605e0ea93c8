// The numbered findings and lettered events over a time picture: buttons, so that keys reach them too.

import { element } from "./ink.js";

/** @typedef {import("./timechart.js").TimePicture} TimePicture */
/** @typedef {import("./layout.js").Layout} Layout */

export class Marks {
  /**
   * @param {TimePicture} picture
   * @param {{finding: (n: number) => void, events: (events: import("./timechart.js").Event[]) => void}} on
   */
  constructor(picture, on) {
    this.on = on;
    this.box = element("div", "chart-badges");
    this.flags = element("div", "chart-flags");
    this.box.append(this.flags);
    /** @type {Map<number, HTMLButtonElement>} */
    this.badgeOf = new Map();
    for (const mark of picture.marks) {
      const badge = element("button", `badge ${mark.state}`, String(mark.n));
      badge.type = "button";
      badge.setAttribute("aria-label", `${mark.n}: ${mark.name}`);
      badge.addEventListener("click", () => on.finding(mark.n));
      this.box.append(badge);
      this.badgeOf.set(mark.n, badge);
    }
  }

  /** @param {Layout} layout @param {number|null} chosen number of the chosen finding @param {string|null} event id of the chosen event */
  place(layout, chosen, event) {
    const places = new Map(layout.findings.map((place) => [place.mark.n, place]));
    for (const [n, badge] of this.badgeOf) {
      const place = places.get(n);
      badge.hidden = !place;
      if (place) {
        badge.style.left = `${place.x}px`;
        badge.style.top = `${layout.findingY(place)}px`;
      }
      badge.classList.toggle("chosen", n === chosen);
    }
    this.placeFlags(layout, event);
  }

  /** @param {Layout} layout @param {string|null} chosen */
  placeFlags(layout, chosen) {
    const focused = this.flags.contains(document.activeElement)
      ? /** @type {HTMLElement} */ (document.activeElement).dataset.first
      : undefined;
    this.flags.replaceChildren(
      ...layout.events.map((place) => {
        const one = place.events.length === 1 ? place.events[0] : null;
        const flag = element("button", `flag ${one ? one.kind : "many"}`, one ? one.id : `+${place.events.length}`);
        flag.type = "button";
        flag.dataset.first = place.events[0].id;
        flag.setAttribute("aria-label", place.events.map((e) => `${e.id}: ${e.name}, ${e.text}`).slice(0, 6).join("; "));
        flag.title = place.events.map((e) => `${e.id} ${e.name}: ${e.text}`).slice(0, 12).join("\n");
        flag.style.left = `${place.x}px`;
        flag.style.top = `${layout.laneY}px`;
        flag.classList.toggle("chosen", place.events.some((e) => e.id === chosen));
        flag.addEventListener("click", () => this.on.events(place.events));
        const parts = [flag];
        if (place.text) {
          const text = element("span", "flag-text", place.text);
          text.style.left = `${place.x + 18}px`;
          text.style.top = `${layout.laneY}px`;
          text.setAttribute("aria-hidden", "true");
          parts.push(/** @type {any} */ (text));
        }
        return parts;
      }).flat(),
    );
    if (focused) {
      /** @type {HTMLElement|null} */ (this.flags.querySelector(`[data-first="${focused}"]`))?.focus({ preventScroll: true });
    }
  }
}
