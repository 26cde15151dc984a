// Moving through the parts list by keyboard: Enter to the next field, up and down in a column, and from the last
// field of the last row on to a new one.
const cells = ".rows :is(input:not([type=checkbox]), select, textarea)";

const fields = (root) =>
  [...root.querySelectorAll(cells)].filter((f) => f.offsetParent !== null);

const go = (field) => {
  field.focus();
  if (field.select) field.select();
};

const sideways = (root, field, back) => {
  const all = fields(root);
  const next = all[all.indexOf(field) + (back ? -1 : 1)];
  if (next) go(next);
  else if (!back) {
    field.blur();
    root.querySelector("#add-part:enabled")?.click();
  }
};

const upDown = (field, up) => {
  const row = field.closest(".part-row");
  const other = up ? row?.previousElementSibling : row?.nextElementSibling;
  const same = other?.querySelector(`[data-column="${field.closest("[data-column]")?.dataset.column}"] :is(input, select, textarea)`);
  if (same) go(same);
};

export const watch = (root) =>
  root.addEventListener("keydown", (event) => {
    const field = event.target;
    if (!field.matches(cells)) return;
    if (event.isComposing || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === "Enter") {
      event.preventDefault();
      sideways(root, field, event.shiftKey);
    } else if ((event.key === "ArrowUp" || event.key === "ArrowDown") && field.matches("input")) {
      event.preventDefault();
      upDown(field, event.key === "ArrowUp");
    }
  });

export const focus = (id) => {
  const place = document.getElementById(id);
  const field = place?.matches(".part-row") ? place.querySelector("[data-column=name] input") : place;
  if (field) go(field);
};

export const linesIn = (area) => area.value.split("\n").filter((line) => line.trim()).length;

// The pasted text stays here until it is asked for, in pieces: it may be far longer than one message may be.
export const textOf = (area) => new TextEncoder().encode(area.value);
