// What the server cannot do: remember light or dark, find the way back after a lost connection, lead past the top.
(() => {
  const year = 60 * 60 * 24 * 365;
  const root = document.documentElement;

  const isDark = () =>
    root.dataset.theme
      ? root.dataset.theme === "dark"
      : matchMedia("(prefers-color-scheme: dark)").matches;

  const paintThemeColour = () => {
    const paper = getComputedStyle(root).getPropertyValue("--paper").trim();
    document.querySelectorAll('meta[name="theme-color"]').forEach((meta) => {
      meta.removeAttribute("media");
      meta.content = paper;
    });
  };

  const switchTheme = () => {
    root.dataset.theme = isDark() ? "light" : "dark";
    document.cookie = `shop-theme=${root.dataset.theme}; path=/; max-age=${year}; SameSite=Lax`;
    paintThemeColour();
  };

  const comeBack = async () => {
    try {
      if (/-rejected\b/.test(document.getElementById("components-reconnect-modal")?.className)) return location.reload();
      if (await Blazor.reconnect()) return;
      if (await Blazor.resumeCircuit()) return;
      location.reload();
    } catch {
      // The server cannot be reached yet; the bar stays and offers to try again.
    }
  };

  document.addEventListener("click", (event) => {
    if (event.target.closest("[data-switch-theme]")) switchTheme();
    if (event.target.closest("[data-come-back]")) comeBack();
    if (event.target.closest("[data-reload]")) location.reload();
    // The link alone would only scroll live pages, and read those anew that are being typed into.
    if (event.target.closest(".skip-link")) {
      event.preventDefault();
      document.getElementById("main")?.focus();
    }
  });

  const bar = document.getElementById("components-reconnect-modal");
  const isAway = () => /components-reconnect-(?!hide\b)/.test(bar?.className ?? "");

  // A server that was started anew, a phone that slept too long or a slip of ours has the page opened anew. What was typed
  // and not taken yet is put back where it stood; what has no field any more is shown.
  const TYPED = "shopclass-typed";
  const typed = new Map();
  const wordsFor = (field) =>
    field.getAttribute("aria-label") ?? field.labels?.[0]?.textContent.trim() ?? field.id;
  const keyOf = (field) => field.id || wordsFor(field);
  document.addEventListener("input", ({ target }) => {
    if (target.matches?.("textarea, select, input:not([type=password], [type=file], [type=checkbox], [type=radio])"))
      typed.set(target, target.value);
  }, true);

  addEventListener("pagehide", () => {
    const fields = [...typed]
      .filter(([field, value]) => field.isConnected && field.value === value && value !== "")
      .map(([field, value]) => ({ key: keyOf(field), words: wordsFor(field), value }));
    const slip = document.getElementById("blazor-error-ui");
    const hasSlipped = slip && getComputedStyle(slip).display !== "none";
    if (!(isAway() || hasSlipped) || fields.length === 0) return;
    try {
      sessionStorage.setItem(TYPED, JSON.stringify({ at: location.pathname, fields }));
    } catch {
      // A full or forbidden store only means that nothing is kept.
    }
  });

  const showWhatIsLeft = (fields) => {
    const note = Object.assign(document.createElement("div"), { className: "note warn typed-note" });
    note.setAttribute("role", "status");
    const head = Object.assign(document.createElement("p"), { textContent: "You had typed this when the connection was lost, and it is not saved:" });
    const away = Object.assign(document.createElement("button"), { type: "button", className: "button plain", textContent: "Put away" });
    away.addEventListener("click", () => note.remove());
    note.append(head, ...fields.map((f) => Object.assign(document.createElement("p"), { textContent: `${f.words}: “${f.value}”` })), away);
    document.body.append(note);
  };

  const putBack = async () => {
    let kept = null;
    try {
      kept = JSON.parse(sessionStorage.getItem(TYPED));
      sessionStorage.removeItem(TYPED);
    } catch {
      // Nothing can be read: nothing was kept.
    }
    if (kept?.at !== location.pathname) return;
    let left = kept.fields;
    for (let look = 0; look < 20 && left.length > 0; look++) {
      const there = [...document.querySelectorAll("main input, main textarea, main select")];
      left = left.filter((one) => {
        const field = there.find((f) => keyOf(f) === one.key);
        if (!field) return true;
        if (field.value !== one.value) {
          field.value = one.value;
          for (const kind of ["input", "change"]) field.dispatchEvent(new Event(kind, { bubbles: true }));
        }
        return false;
      });
      if (left.length > 0) await new Promise((done) => setTimeout(done, 200));
    }
    if (left.length > 0) showWhatIsLeft(left);
  };
  bar?.addEventListener("components-reconnect-state-changed", (event) => {
    // The server is there and does not know this page: it was started anew, or the page slept too long.
    if (event.detail.state === "rejected") location.reload();
  });

  const isLost = () => /-(failed|paused|resume-failed)\b/.test(bar?.className ?? "");
  const tryIfLost = () => {
    if (isLost() && document.visibilityState === "visible") comeBack();
  };
  document.addEventListener("visibilitychange", tryIfLost);
  addEventListener("online", tryIfLost);

  // Called by a live page once it answers to clicks.
  window.shopPageIsLive = () => {
    document.documentElement.setAttribute("data-live", "");
    putBack();
  };
})();
