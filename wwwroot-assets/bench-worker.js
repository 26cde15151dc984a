// Keeps the step pages a phone has fetched, so that they open with no signal. Only pages of /my/steps, only this
// phone's own, in a store of its own that goes when the phone signs out or is ended.
const PAGES = "shopclass-steps";
const PARTS = "shopclass-parts";
const PATIENCE = 4000;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== location.origin) return;
  if (request.mode === "navigate") event.respondWith(page(request, url));
  else if (/^\/(styles|scripts|fonts|icons)\//.test(url.pathname)) event.respondWith(part(request));
});

// The network first, since it knows what is done; what was kept when it is away or too slow.
async function page(request, url) {
  const asked = fetch(request).then(async (answer) => {
    if (answer.ok && !answer.redirected) await (await caches.open(PAGES)).put(url.pathname, answer.clone());
    else if (answer.type === "opaqueredirect" || answer.status === 404) await forgetIfSignedOut();
    return answer;
  });
  const late = new Promise((done) => setTimeout(done, PATIENCE));
  const first = await Promise.race([asked.catch(() => null), late]);
  if (first) return first;
  const kept = await (await caches.open(PAGES)).match(url.pathname);
  return kept ?? asked.catch(() => sorry());
}

async function part(request) {
  const parts = await caches.open(PARTS);
  const kept = await parts.match(request);
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) await parts.put(request, answer.clone());
  return answer;
}

// A way to the door instead of a page: somebody ended this phone's way in, so nothing stays on it.
async function forgetIfSignedOut() {
  const answer = await fetch("/my/steps", { redirect: "manual" });
  if (answer.type === "opaqueredirect") await caches.delete(PAGES);
}

function sorry() {
  return new Response(
    "<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>No signal</title><h1>No signal</h1><p>This page was not kept on the phone. Go back, or try again when there is a signal.</p></html>",
    { status: 503, headers: { "Content-Type": "text/html; charset=utf-8" } },
  );
}

// The pages of one plan, one after the other, while there is a signal. Pages of another plan go.
self.addEventListener("message", (event) => {
  if (event.data?.keep) event.waitUntil(keep(event.data));
});

async function keep({ keep: paths, plan, parts }) {
  const kept = await caches.open(PARTS);
  for (const part of parts) {
    try {
      if (!(await kept.match(part))) await kept.add(part);
    } catch {
      return;
    }
  }
  const pages = await caches.open(PAGES);
  for (const page of await pages.keys()) {
    const path = new URL(page.url).pathname;
    if (path !== "/my/steps" && !path.includes(plan)) await pages.delete(page);
  }
  for (const path of paths) {
    if (await pages.match(path)) continue;
    try {
      const answer = await fetch(path, { redirect: "manual" });
      if (!answer.ok) return;
      await pages.put(path, answer);
    } catch {
      return;
    }
  }
}
