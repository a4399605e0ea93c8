// Wakes up what is on the page.

import { mountRun } from "./run.js";
import { mountDrop } from "./drop.js";

for (const figure of document.querySelectorAll("#run-picture")) {
  mountRun(/** @type {HTMLElement} */ (figure));
}
for (const form of document.querySelectorAll("#drop")) {
  mountDrop(/** @type {HTMLFormElement} */ (form));
}
