// The drop zone: a file let go over it is read at once. Without a script the form works as it stands.

/** @param {HTMLFormElement} form */
export function mountDrop(form) {
  const input = /** @type {HTMLInputElement} */ (form.querySelector("input[type=file]"));
  for (const over of ["dragenter", "dragover"]) {
    form.addEventListener(over, (event) => {
      event.preventDefault();
      form.classList.add("over");
    });
  }
  for (const away of ["dragleave", "drop"]) {
    form.addEventListener(away, () => form.classList.remove("over"));
  }
  form.addEventListener("drop", (event) => {
    event.preventDefault();
    const files = event.dataTransfer?.files;
    if (files && files.length > 0) {
      input.files = files;
      form.requestSubmit();
    }
  });
  form.addEventListener("submit", () => {
    const busy = /** @type {HTMLElement} */ (form.querySelector(".drop-busy"));
    setTimeout(() => (busy.hidden = false), 300);
  });
}
