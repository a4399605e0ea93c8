// Wakes up what is on the page.

import { mountRun } from "./run.js";
import { mountDrop } from "./drop.js";
import { mountAsk } from "./ask.js";
import { mountPlan } from "./plan.js";

document.documentElement.classList.add("scripted");

for (const figure of document.querySelectorAll("#run-picture")) {
  mountRun(/** @type {HTMLElement} */ (figure));
}
for (const form of document.querySelectorAll("#drop")) {
  mountDrop(/** @type {HTMLFormElement} */ (form));
}
for (const form of document.querySelectorAll("#plan-form")) {
  mountPlan(/** @type {HTMLFormElement} */ (form));
}
for (const form of document.querySelectorAll("#ask-form")) {
  mountAsk(/** @type {HTMLFormElement} */ (form));
}
