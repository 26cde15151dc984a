// Logging a board, one screen after the other. The screens work without this script; with it a weak signal loses nothing:
// what is typed stays on the phone until the class has it, and the next screen comes without a new page.
const KEY = "shopclass-entry ";
const PATIENCE = 20000;
const LONGEST_SIDE = 1280;

const here = () => KEY + location.pathname + location.search;
const ours = "form[data-logging], form[data-photo]";

function keep(form) {
  if (form.matches("[data-photo]")) return;
  const typed = {};
  for (const field of form.elements) {
    if (!field.name?.startsWith("Entry.") || field.type === "hidden" || field.type === "submit") continue;
    if (field.type === "checkbox") typed[field.name] = field.checked;
    else if (field.type !== "radio" || field.checked) typed[field.name] = field.value;
  }
  try {
    localStorage.setItem(here(), JSON.stringify(typed));
  } catch {
    // A full or forbidden store: then only what was sent is kept.
  }
}

function bringBack() {
  let typed = null;
  try {
    typed = JSON.parse(localStorage.getItem(here()));
  } catch {
    return;
  }
  if (!typed) return;
  for (const form of document.querySelectorAll("form[data-logging]")) {
    for (const field of form.elements) {
      if (!(field.name in typed) || field.type === "hidden") continue;
      if (field.type === "checkbox") field.checked = typed[field.name] === true;
      else if (field.type === "radio") field.checked = field.value === typed[field.name];
      else if (field.type !== "submit") field.value = typed[field.name];
    }
  }
}

const forget = (address) => {
  try {
    localStorage.removeItem(address);
  } catch {
    // Nothing was kept.
  }
};

// A photo is made small before it is sent: a weak signal carries it, and its place and time stay behind.
async function shrink(file) {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST_SIDE / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.8));
  } catch {
    return null;
  }
}

async function bodyOf(form, button) {
  const body = new FormData(form);
  if (button?.name) body.set(button.name, button.value);
  if (!form.matches("[data-photo]")) return new URLSearchParams(body);
  const file = form.elements.photo.files[0];
  const small = file && (await shrink(file));
  // What the phone cannot read the server says a sentence about.
  if (small) body.set("photo", small, "board.jpg");
  return body;
}

const away = (words) => {
  const bar = document.querySelector("[data-away]");
  if (!bar) return;
  bar.hidden = !words;
  bar.textContent = words ?? "";
};

let unsent = null;

async function send(form, button) {
  if (form.getAttribute("aria-busy")) return;
  form.setAttribute("aria-busy", "true");
  const abort = new AbortController();
  const patience = setTimeout(() => abort.abort(), form.matches("[data-photo]") ? 4 * PATIENCE : PATIENCE);
  try {
    keep(form);
    const address = here();
    const answer = await fetch(form.action, { method: "POST", body: await bodyOf(form, button), signal: abort.signal });
    if (answer.status >= 500) throw new Error("not now");
    const next = new DOMParser().parseFromString(await answer.text(), "text/html");
    unsent = null;
    away(null);
    if (!next.querySelector("[data-logging-page]")) {
      // Somewhere else, or a form that is too old: what was typed stays kept and stands in the new page.
      if (answer.ok) forget(address);
      if (answer.redirected) location.assign(answer.url);
      else location.reload();
      return;
    }
    forget(address);
    show(next, answer.url);
  } catch {
    unsent = () => send(form, button);
    away("No signal just now. What you entered is kept on this phone and is sent as soon as there is one. Leave this page open.");
  } finally {
    clearTimeout(patience);
    form.removeAttribute("aria-busy");
  }
}

function show(next, address) {
  if (address !== location.href) history.pushState(null, "", address);
  document.title = next.title;
  document.querySelector(".skip-link").href = next.querySelector(".skip-link").getAttribute("href");
  document.getElementById("main").replaceChildren(...next.getElementById("main").childNodes);
  if (next.querySelector("meta[http-equiv=refresh]")) setTimeout(() => location.reload(), 3000);
  scrollTo(0, 0);
  const first = document.querySelector("#main [aria-invalid], #main [autofocus]");
  const heading = document.querySelector("#main h1");
  heading?.setAttribute("tabindex", "-1");
  (first ?? heading)?.focus({ preventScroll: !first });
}

document.addEventListener("input", (event) => {
  const form = event.target.closest("form[data-logging]");
  if (form) keep(form);
});

document.addEventListener("submit", (event) => {
  const form = event.target.closest(ours);
  if (!form) return;
  event.preventDefault();
  send(form, event.submitter);
});

// Tapping the drawing says where a bad place is, in shares of the drawing's width and height.
document.addEventListener("click", (event) => {
  const drawing = event.target.closest("[data-tap]")?.querySelector("svg");
  if (!drawing) return;
  const box = drawing.getBoundingClientRect();
  const form = drawing.closest("form");
  form.elements["Entry.X"].value = (event.clientX - box.left) / box.width;
  form.elements["Entry.Y"].value = (event.clientY - box.top) / box.height;
  send(form, null).finally(() => {
    form.elements["Entry.X"].value = form.elements["Entry.Y"].value = "";
  });
});

const again = () => unsent?.();
addEventListener("online", again);
setInterval(again, 5000);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && again());
addEventListener("popstate", () => location.reload());
bringBack();
