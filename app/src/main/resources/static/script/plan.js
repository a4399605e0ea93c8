// The live plan: what is typed is answered while typing; what was typed always stays.

import { WindowMap } from "./picture/windowmap.js";
import { TimeChart } from "./picture/timechart.js";

const PAUSE_MS = 120;
const DESIGN_PAUSE_MS = 400;

/** @param {HTMLFormElement} form */
export function mountPlan(form) {
  const place = /** @type {HTMLElement} */ (form.querySelector("#answer"));
  const live = new LivePlan(form, place);
  live.drawPictures();
  live.askDesign();
  form.addEventListener("input", (event) => {
    if (/** @type {HTMLElement} */ (event.target).id !== "plan-title") {
      live.soon();
    }
  });
  form.addEventListener("recipe", (event) => {
    const { pressure, shelf } = /** @type {CustomEvent} */ (event).detail;
    live.set("recipe.pressure", `${pressure} Pa`);
    live.set("recipe.shelf", `${String(shelf).replace("-", "\u2212")} °C`);
    live.soon();
  });
  form.addEventListener("click", (event) => {
    if (/** @type {HTMLElement} */ (event.target).closest("[data-print]")) {
      print();
    }
  });
}

class LivePlan {
  /** @param {HTMLFormElement} form @param {HTMLElement} place */
  constructor(form, place) {
    this.form = form;
    this.place = place;
    this.ticket = 0;
    this.design = /** @type {HTMLElement} */ (form.querySelector("#design"));
    this.designTicket = 0;
    /** @type {WindowMap|undefined} */
    this.map = undefined;
  }

  /** @param {string} path @param {string} value */
  set(path, value) {
    /** @type {HTMLInputElement} */ (this.form.elements.namedItem(path)).value = value;
  }

  soon() {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.ask(), PAUSE_MS);
  }

  async ask() {
    const ticket = ++this.ticket;
    const busy = setTimeout(() => this.place.setAttribute("aria-busy", "true"), 300);
    try {
      const answer = await fetch(/** @type {string} */ (this.form.dataset.answer), {
        method: "POST",
        body: new URLSearchParams(/** @type {any} */ (new FormData(this.form))),
      });
      if (ticket === this.ticket && answer.ok) {
        this.take(await answer.text());
        clearTimeout(this.designTimer);
        this.designTimer = setTimeout(() => this.askDesign(), DESIGN_PAUSE_MS);
      }
    } finally {
      clearTimeout(busy);
      this.place.removeAttribute("aria-busy");
    }
  }

  /** The recipe takes a second: it follows the answer, and what stands there stays until then. */
  async askDesign() {
    const ticket = ++this.designTicket;
    this.design.setAttribute("aria-busy", "true");
    const answer = await fetch(/** @type {string} */ (this.design.dataset.design), {
      method: "POST",
      body: new URLSearchParams(/** @type {any} */ (new FormData(this.form))),
    });
    if (ticket !== this.designTicket) {
      return;
    }
    this.design.removeAttribute("aria-busy");
    if (answer.ok) {
      const markup = await answer.text();
      const fresh = new DOMParser().parseFromString(markup, "text/html").body.firstElementChild;
      if (fresh && fresh.firstElementChild) {
        this.design.replaceChildren(fresh);
        this.drawPath();
      }
    }
  }

  /** The steps of the recipe as a path in the map. */
  drawPath() {
    const path = this.design.firstElementChild?.getAttribute("data-path");
    if (this.map && path) {
      this.map.follow(JSON.parse(path));
    }
  }

  /** @param {string} markup */
  take(markup) {
    const fresh = new DOMParser().parseFromString(markup, "text/html").body.firstElementChild;
    const shown = this.place.firstElementChild;
    if (!fresh || !shown) {
      return;
    }
    this.showProblems(fresh);
    const answered = fresh.getAttribute("data-answered") === "true";
    const withoutMap = !answered && fresh.getAttribute("data-usable") === "true";
    if (answered && shown.querySelector("[data-part=map]")) {
      shown.querySelectorAll("[data-part=problems], [data-part=unanswered]").forEach((note) => note.remove());
      shown.classList.remove("outdated");
      for (const part of fresh.querySelectorAll("[data-part]")) {
        this.replace(part, shown);
      }
      this.drawPictures();
    } else if (answered || withoutMap) {
      this.place.replaceChildren(fresh);
      this.map = undefined;
      this.drawPictures();
    } else {
      shown.classList.add("outdated");
      shown.querySelectorAll("[data-part=problems], [data-part=unanswered]").forEach((note) => note.remove());
      shown.prepend(...fresh.querySelectorAll("[data-part=problems], [data-part=unanswered]"));
    }
  }

  /** Pictures keep their place and their focus; only their data changes. @param {Element} part @param {Element} shown */
  replace(part, shown) {
    const old = shown.querySelector(`[data-part=${part.getAttribute("data-part")}]`);
    if (old instanceof HTMLElement && part instanceof HTMLElement && part.dataset.picture) {
      old.dataset.picture = part.dataset.picture;
      old.querySelector("figcaption")?.replaceWith(/** @type {Element} */ (part.querySelector("figcaption")));
    } else {
      const open = old?.querySelector("details")?.open;
      old?.replaceWith(part);
      const details = part.querySelector("details");
      if (details && open) {
        details.open = true;
      }
    }
  }

  drawPictures() {
    for (const figure of this.place.querySelectorAll("[data-picture]")) {
      const { kind, picture } = /** @type {HTMLElement} */ (figure).dataset;
      const spot = /** @type {HTMLElement} */ (figure.querySelector(".picture-place"));
      const data = JSON.parse(picture ?? "{}");
      if (kind === "run") {
        new TimeChart(spot, data);
      } else if (this.map && spot.contains(this.map.stage)) {
        this.map.show(data);
      } else {
        this.map = new WindowMap(spot, data);
      }
      this.drawPath();
    }
  }

  /** Puts each problem beside its field. @param {Element} fresh */
  showProblems(fresh) {
    const problems = new Map();
    for (const item of fresh.querySelectorAll(".field-problems > li")) {
      problems.set(item.getAttribute("data-path"), item.textContent);
    }
    for (const field of this.form.querySelectorAll(".question")) {
      const text = problems.get(/** @type {HTMLElement} */ (field).dataset.path);
      const input = field.querySelector("input, select, textarea");
      const help = field.querySelector(".help");
      help?.querySelector(".problem")?.remove();
      if (text) {
        input?.setAttribute("aria-invalid", "true");
        const problem = document.createElement("span");
        problem.className = "problem";
        problem.textContent = text;
        help?.prepend(problem);
      } else {
        input?.removeAttribute("aria-invalid");
      }
    }
  }
}
