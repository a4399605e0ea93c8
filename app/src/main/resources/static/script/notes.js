// Notes: at the reading line with one touch, and kept in the browser while the laboratory cannot be reached.

/** @typedef {{text: string, at: string}} Waiting */

/** @param {HTMLFormElement} form */
export function mountNotes(form) {
  const text = /** @type {HTMLTextAreaElement} */ (form.elements.namedItem("text"));
  const at = /** @type {HTMLInputElement} */ (form.elements.namedItem("at"));
  const button = /** @type {HTMLButtonElement|null} */ (form.querySelector("[data-at-cursor]"));
  /** @type {string|null} */
  let moment = null;
  document.addEventListener("cursor-moment", (event) => {
    moment = /** @type {CustomEvent<string>} */ (event).detail;
    if (button) {
      button.disabled = false;
    }
  });
  if (button) {
    button.disabled = true;
    button.addEventListener("click", () => {
      at.value = moment ?? "";
      text.focus();
    });
  }
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (await isReached()) {
      form.submit();
    } else {
      keep(form, { text: text.value, at: at.value || now(form) });
      text.value = "";
      at.value = "";
      say(form);
    }
  });
  addEventListener("online", () => send(form));
  send(form);
}

/** Whether the laboratory answers. */
async function isReached() {
  try {
    return (await fetch("/image/firnline.svg", { method: "HEAD", cache: "no-store" })).ok;
  } catch {
    return false;
  }
}

/** This moment as the field writes it; nothing where the log has no clock. @param {HTMLFormElement} form */
function now(form) {
  if (form.dataset.known !== "true") {
    return "";
  }
  const here = new Date();
  return new Date(here.getTime() - here.getTimezoneOffset() * 60_000).toISOString().slice(0, 19);
}

/** @param {HTMLFormElement} form @returns {Waiting[]} */
function waiting(form) {
  return JSON.parse(localStorage.getItem(form.dataset.kept ?? "") ?? "[]");
}

/** @param {HTMLFormElement} form @param {Waiting} note */
function keep(form, note) {
  localStorage.setItem(form.dataset.kept ?? "", JSON.stringify([...waiting(form), note]));
}

/** @param {HTMLFormElement} form */
function say(form) {
  const status = form.querySelector("[role=status]");
  const notes = waiting(form);
  if (status) {
    status.textContent = notes.length > 0 ? `${form.dataset.waiting} ${notes.map((note) => note.text).join(" \u00b7 ")}` : "";
  }
}

/** Sends what waited; what does not arrive goes on waiting. @param {HTMLFormElement} form */
async function send(form) {
  const notes = waiting(form);
  say(form);
  if (notes.length === 0 || !(await isReached())) {
    return;
  }
  localStorage.removeItem(form.dataset.kept ?? "");
  for (const note of notes) {
    const body = new FormData(form);
    body.set("text", note.text);
    body.set("at", note.at);
    try {
      const answer = await fetch(form.action, { method: "POST", body: new URLSearchParams(/** @type {any} */ (body)) });
      if (!answer.ok) {
        keep(form, note);
      }
    } catch {
      keep(form, note);
    }
  }
  if (waiting(form).length < notes.length) {
    location.reload();
  }
}
