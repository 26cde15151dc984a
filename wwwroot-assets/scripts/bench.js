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
