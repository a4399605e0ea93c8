// One-minute answers follow what is typed; without this script a button does.

const PAUSE_MS = 200;

/** @param {HTMLFormElement} form */
export function mountAsk(form) {
  const answer = /** @type {HTMLElement} */ (document.querySelector("#ask-answer"));
  let timer = 0;
  let ticket = 0;

  async function ask() {
    const mine = ++ticket;
    const query = new URLSearchParams(/** @type {any} */ (new FormData(form)));
    const address = `${form.action.split("?")[0]}?${query}`;
    const reply = await fetch(address);
    if (!reply.ok || mine !== ticket) {
      return;
    }
    const page = new DOMParser().parseFromString(await reply.text(), "text/html");
    const fresh = page.querySelector("#ask-answer");
    if (fresh) {
      answer.replaceChildren(...fresh.childNodes);
      history.replaceState(null, "", address);
    }
    for (const field of form.querySelectorAll(".question")) {
      take(/** @type {HTMLElement} */ (field), page);
    }
  }

  /** What was typed stays; only what stands around it changes. @param {HTMLElement} field @param {Document} page */
  function take(field, page) {
    const fresh = /** @type {HTMLElement|null} */ (page.querySelector(`.question[data-key="${field.dataset.key}"]`));
    if (!fresh) {
      return;
    }
    field.hidden = fresh.hidden;
    field.querySelector(".help")?.replaceWith(/** @type {Element} */ (fresh.querySelector(".help")));
    const input = field.querySelector("input");
    const other = fresh.querySelector("input");
    if (input && other) {
      input.placeholder = other.placeholder;
      input.toggleAttribute("aria-invalid", false);
      if (other.hasAttribute("aria-invalid")) {
        input.setAttribute("aria-invalid", "true");
      }
    }
  }

  form.addEventListener("input", () => {
    clearTimeout(timer);
    timer = setTimeout(ask, PAUSE_MS);
  });
}
