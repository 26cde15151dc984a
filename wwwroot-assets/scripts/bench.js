// Pages for the bench work without this script; it makes them kinder.

// Waiting at the door: look again now and then, and go on once let in.
const waiting = document.querySelector("[data-look-again]");
if (waiting) {
  const here = new URL(waiting.dataset.lookAgain, location.href).pathname;
  const look = async () => {
    try {
      const answer = await fetch(here, { credentials: "same-origin" });
      if (new URL(answer.url).pathname !== here) location.assign(answer.url);
    } catch {
      // No signal; the next look may have one.
    }
  };
  setInterval(() => {
    if (document.visibilityState === "visible") look();
  }, 3000);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") look();
  });
}

// A printed code leads to /join#CODE: what stands after the # never leaves the phone by itself.
const codeField = document.getElementById("code");
if (codeField && location.hash.length > 1 && !codeField.value) {
  codeField.value = decodeURIComponent(location.hash.slice(1)).slice(0, 40);
}

// The queue: what was said about steps and has not reached the class yet. It is kept in the phone's own store, so a closed
// page or an empty battery loses nothing, and each thing carries a mark by which it counts once.
const steps = document.querySelector("[data-steps]");
const STORE = "shopclass-queue";

const store = () =>
  new Promise((done, fail) => {
    const opening = indexedDB.open(STORE, 1);
    opening.onupgradeneeded = () =>
      opening.result.createObjectStore("said", { keyPath: "order", autoIncrement: true });
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => fail(opening.error);
  });

async function inStore(mode, work) {
  const db = await store();
  try {
    return await new Promise((done, fail) => {
      const transaction = db.transaction("said", mode);
      const asked = work(transaction.objectStore("said"));
      transaction.oncomplete = () => done(asked.result);
      transaction.onerror = transaction.onabort = () => fail(transaction.error);
    });
  } finally {
    db.close();
  }
}

const waitingToBeSent = () => inStore("readonly", (said) => said.getAll());
const enqueue = (entry) => inStore("readwrite", (said) => said.add(entry));
const replace = (entry) => inStore("readwrite", (said) => said.put(entry));
const dequeue = (entry) => inStore("readwrite", (said) => said.delete(entry.order));

const WORDS = {
  Tick: "Done",
  Untick: "Not done after all",
  Measured: "Size",
  Note: "Note",
  PleaseCheck: "Please check",
  NeedHelp: "I need help",
  HelpOver: "No help needed now",
  Spoiled: "Spoiled",
};

const inWords = (entry) =>
  [`step ${entry.number}: ${WORDS[entry.kind] ?? entry.kind}`, entry.text, entry.size, entry.minutes && `${entry.minutes} min`].filter(Boolean).join(", ");

// Sends one thing. True: the class has it. False: not now. A sentence: the class did not take it.
async function send(entry) {
  const abort = new AbortController();
  const patience = setTimeout(() => abort.abort(), 10000);
  try {
    const answer = await fetch("/my/steps/say", {
      method: "POST",
      redirect: "manual",
      signal: abort.signal,
      headers: { "Content-Type": "application/json", "X-ShopClass": "steps" },
      body: JSON.stringify(entry),
    });
    if (answer.ok) return true;
    if (answer.status === 422) return (await answer.json()).problem;
    if (answer.status === 404) return "This plan is not there any more.";
    if (answer.type === "opaqueredirect") entry.signedOut = true;
    return false;
  } catch {
    return false;
  } finally {
    clearTimeout(patience);
  }
}

// One after the other, in the order they were said; two pages at once would only ask twice.
let sending = null;
let lastSent = 0;
const sendAll = () => (sending ??= sendEach().finally(() => (sending = null)));

async function sendEach() {
  let sent = 0;
  for (const entry of await waitingToBeSent()) {
    if (entry.problem) continue;
    const outcome = await send(entry);
    if (outcome === false) break;
    if (outcome === true) {
      lastSent = Date.now();
      await dequeue(entry);
      sent++;
    } else {
      await replace({ ...entry, problem: outcome });
    }
  }
  await show();
  return sent;
}

async function show() {
  const box = document.querySelector("[data-kept]");
  if (!box) return;
  const all = await waitingToBeSent();
  bringUpToDate(all);
  box.hidden = all.length === 0;
  const lines = all.map((entry) => {
    const line = document.createElement("span");
    line.className = "kept-line";
    line.textContent = entry.problem ? `Not taken, ${inWords(entry)}. ${entry.problem}` : inWords(entry);
    if (entry.problem) {
      const away = document.createElement("button");
      away.type = "button";
      away.className = "quiet-button";
      away.textContent = "Put away";
      away.addEventListener("click", async () => {
        await dequeue(entry);
        await show();
      });
      line.append(" ", away);
    }
    return line;
  });
  const head = document.createElement("strong");
  const unsent = all.filter((entry) => !entry.problem).length;
  head.textContent = unsent > 0 ? "Kept on this phone, not yet sent:" : "Your class did not take this:";
  box.replaceChildren(head, ...lines);
  for (const entry of all.filter((e) => e.kind === "Tick" && !e.problem)) {
    document.querySelector(`li[data-step="${CSS.escape(entry.step)}"]`)?.classList.add("is-kept");
  }
}

// A page that was kept for no signal does not know what was done since. What the newest page said, and what waits in the
// queue, tells it which steps are open.
function doneHere(queue) {
  const { plan, done, at } = steps.dataset;
  const listed = (text) => (text ? text.split(",").map(Number) : []);
  let known = null;
  try {
    known = JSON.parse(localStorage.getItem("shopclass-done"));
    if (at && (known?.plan !== plan || known.at < Number(at))) {
      known = { plan, at: Number(at), done: listed(done) };
      localStorage.setItem("shopclass-done", JSON.stringify(known));
    }
  } catch {
    // Nothing is kept: then the page's own word counts.
  }
  const from = known?.plan === plan ? known.done : listed(done);
  const ticked = queue.filter((e) => e.plan === plan && e.kind === "Tick" && !e.problem).map((e) => e.number);
  return new Set([...from, ...ticked]);
}

function bringUpToDate(queue) {
  if (!steps) return;
  const done = doneHere(queue);
  const number = Number(steps.dataset.number);
  const tick = steps.querySelector("[data-tick]");
  const first = steps.querySelector("[data-first]");
  if (tick && done.has(number)) {
    // The step kept as the next one is done: go on to the one after it.
    if (location.pathname === "/my/steps" && steps.dataset.next !== "/my/steps") location.replace(steps.dataset.next);
    tick.hidden = true;
  } else if (tick && first && first.dataset.first.split(",").every((before) => done.has(Number(before)))) {
    first.hidden = true;
    tick.hidden = false;
  }
}

const freshMark = () => {
  const b = crypto.getRandomValues(new Uint8Array(16));
  b[6] = (b[6] & 15) | 64;
  b[8] = (b[8] & 63) | 128;
  const hex = [...b].map((n) => n.toString(16).padStart(2, "0")).join("");
  return [8, 12, 16, 20].reduceRight((text, at) => `${text.slice(0, at)}-${text.slice(at)}`, hex);
};

if (steps) {
  document.addEventListener("submit", async (event) => {
    const form = event.target.closest("form[data-say]");
    if (!form || !("indexedDB" in window)) return;
    event.preventDefault();
    const field = (name) => form.elements[`Entry.${name}`]?.value ?? "";
    const button = form.querySelector("button");
    if (button.getAttribute("aria-busy")) return;
    button.setAttribute("aria-busy", "true");
    try {
      await say({
        id: field("Id"),
        plan: field("Plan"),
        step: field("Step"),
        kind: field("Kind"),
        text: field("Text"),
        size: field("Size"),
        minutes: field("Minutes"),
        said: new Date().toISOString(),
        number: Number(steps.dataset.number),
      }, form);
    } catch {
      // The phone keeps nothing (a private window, a full store): then the form goes the plain way.
      form.submit();
    } finally {
      button.removeAttribute("aria-busy");
      form.elements["Entry.Id"].value = freshMark();
    }
  });

  const say = async (entry, form) => {
    await enqueue(entry);
    await sendAll();
    const left = (await waitingToBeSent()).find((e) => e.id === entry.id);
    if (left?.problem) {
      document.querySelector("[data-kept]").scrollIntoView({ block: "center" });
    } else if (entry.kind === "Tick") {
      location.assign(steps.dataset.next);
    } else if (!left) {
      location.reload();
    } else {
      form.reset();
      document.querySelector("[data-kept]").scrollIntoView({ block: "center" });
    }
  };

  const trySending = async () => {
    if ((await waitingToBeSent()).some((entry) => !entry.problem) && (await sendAll()) > 0) location.reload();
  };
  show();
  trySending();
  addEventListener("online", trySending);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && trySending());
  setInterval(trySending, 15000);

  // Keep the plan's pages for when there is no signal.
  if ("serviceWorker" in navigator) {
    const { plan, count } = steps.dataset;
    const paths = ["/my/steps", `/my/steps/${plan}/all`];
    for (let number = 1; number <= Number(count); number++) paths.push(`/my/steps/${plan}/${number}`);
    const parts = performance
      .getEntriesByType("resource")
      .map((part) => new URL(part.name))
      .filter((part) => part.origin === location.origin && /^\/(styles|scripts|fonts|icons)\//.test(part.pathname))
      .map((part) => part.href);
    navigator.serviceWorker
      .register("/bench-worker.js", { scope: "/my/steps" })
      .then(() => navigator.serviceWorker.ready)
      .then((worker) => worker.active.postMessage({ keep: paths, plan, parts }))
      .catch(() => {});
  }
}

// What others say about this work shows at once: the instructor's check, a second phone's tick. Whoever is ended is out.
const listens = document.querySelector("[data-student-page]");
if (listens && "EventSource" in window) {
  const news = new EventSource("/my/news");
  const isBusy = () =>
    [...document.querySelectorAll("main input:not([type=hidden]), main textarea")].some((f) => f.value !== f.defaultValue) ||
    document.querySelector("main details[open] form") !== null;
  const lookAgain = () => {
    // What this page sent itself brings it up to date by itself.
    if (listens.dataset.studentPage !== "look" || sending || Date.now() - lastSent < 2000) return;
    if (isBusy()) document.querySelector("[data-news]")?.removeAttribute("hidden");
    else location.reload();
  };
  let wasAway = false;
  news.addEventListener("said", lookAgain);
  news.addEventListener("ended", () => location.replace("/my/steps"));
  news.addEventListener("error", () => (wasAway = true));
  news.addEventListener("open", () => {
    if (wasAway) lookAgain();
    wasAway = false;
  });
}

document.querySelector("form[data-leave]")?.addEventListener("submit", () => {
  indexedDB.deleteDatabase(STORE);
  localStorage.clear();
  window.caches?.keys().then((names) => names.forEach((name) => caches.delete(name)));
});

// Before a phone signs out it says what would be lost.
const unsentBox = document.querySelector("[data-unsent]");
if (unsentBox && "indexedDB" in window) {
  waitingToBeSent().then((all) => {
    const unsent = all.filter((entry) => !entry.problem).length;
    unsentBox.hidden = unsent === 0;
    unsentBox.textContent = `${unsent} of the things you did are not sent yet and would be lost. Wait for a signal first.`;
  });
}

// Logging a board has a script of its own.
if (document.querySelector("[data-logging-page]")) import("./board-log.js");
