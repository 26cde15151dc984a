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
  bar?.addEventListener("components-reconnect-state-changed", (event) => {
    if (event.detail.state === "rejected") comeBack();
  });

  const isLost = () => /-(failed|paused|resume-failed)\b/.test(bar?.className ?? "");
  const tryIfLost = () => {
    if (isLost() && document.visibilityState === "visible") comeBack();
  };
  document.addEventListener("visibilitychange", tryIfLost);
  addEventListener("online", tryIfLost);
})();

// Called by a live page once it answers to clicks.
window.shopPageIsLive = () => document.documentElement.setAttribute("data-live", "");
