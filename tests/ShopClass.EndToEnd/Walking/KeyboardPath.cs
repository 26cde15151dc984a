using System.Globalization;
using Microsoft.Playwright;

namespace ShopClass.EndToEnd.Walking;

/// <summary>
/// Walks a page with the Tab key alone, as whoever has no mouse does: the link past the top comes first and leads to the
/// page; every control that can be clicked is reached, is seen when it is reached and lies under nothing; nothing holds the
/// key fast; and nothing looks clickable that no key reaches.
/// </summary>
internal static class KeyboardPath
{
    private const string Watch = """
        () => {
          const kinds = "a[href], area[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex], [contenteditable=true]";
          const shown = e => e.checkVisibility({ visibilityProperty: true }) && e.getClientRects().length > 0;
          const name = e => (e.outerHTML.match(/^<[^>]*>/)[0] + (e.textContent ?? "").trim().slice(0, 40)).replace(/\s+/g, " ").slice(0, 220);
          const outlined = e => e instanceof Element && getComputedStyle(e).outlineStyle !== "none" && parseFloat(getComputedStyle(e).outlineWidth) > 0;
          const near = e => [e, ...(e.labels ?? []), e.nextElementSibling, e.parentElement, e.closest("label")];
          const walk = window.walk = { reached: new Set(), first: null, around: false, faults: [] };
          const covered = e => {
            const boxes = [...e.getClientRects(), ...[...(e.labels ?? [])].flatMap(l => [...l.getClientRects()])];
            return !boxes.some(b => [[.5, .5], [.1, .5], [.9, .5], [.5, .15], [.5, .85]].some(([x, y]) => {
              const on = document.elementFromPoint(b.left + b.width * x, b.top + b.height * y);
              return on && (e.contains(on) || on.contains(e) || [...(e.labels ?? [])].some(l => l.contains(on)));
            }));
          };
          // Where the key has led to. Around is when it is back at the first.
          walk.step = () => {
            const e = document.activeElement;
            // Who wants no motion gets changes of a hundredth of a millisecond, which still take a frame.
            for (const change of document.getAnimations()) change.finish();
            if (!e || e === document.body || walk.around) return walk.around;
            walk.first ??= e;
            if (e === walk.first && walk.reached.size > 1) return walk.around = true;
            if (walk.reached.has(e)) return false;
            walk.reached.add(e);
            if (!near(e).some(outlined)) walk.faults.push("no sign of the focus: " + name(e));
            if (covered(e)) walk.faults.push("under something else: " + name(e));
            return false;
          };
          walk.wanted = () => [...document.querySelectorAll(kinds)].filter(e =>
            !e.disabled && shown(e) && !e.closest("[inert]") && (e.tabIndex >= 0 || !e.hasAttribute("tabindex") || e.matches("a[href], button, input, select, textarea, summary")));
          // One of a group of choices takes the focus; the arrows go on from it.
          const group = e => e.type === "radio" ? [...document.getElementsByName(e.name)].filter(o => o.form === e.form) : [e];
          walk.missed = () => walk.wanted().filter(e => !group(e).some(o => walk.reached.has(o))).map(e => "not reached: " + name(e));
          walk.clickableOnly = () => [...document.querySelectorAll("body *")].filter(e =>
            getComputedStyle(e).cursor === "pointer" && shown(e) && !e.closest(kinds) && !e.closest("label") && getComputedStyle(e.parentElement).cursor !== "pointer")
            .map(e => "looks clickable, and no key reaches it: " + name(e));
          // From the very top, wherever the page put the focus when it opened.
          const top = document.body.insertBefore(Object.assign(document.createElement("span"), { tabIndex: -1 }), document.body.firstChild);
          top.focus();
          top.remove();
          return walk.wanted().length;
        }
        """;

    /// <summary>What is wrong with the page's keyboard path, each with the page's name before it.</summary>
    public static async Task<IReadOnlyList<string>> FaultsOfAsync(IPage page, string name)
    {
        var wanted = await page.EvaluateAsync<int>(Watch);
        // A field for a day takes several strokes; twice as many as there are controls is a trap.
        for (var pressed = 0; pressed < 2 * wanted + 40; pressed++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("() => walk.step()"))
                break;
        }

        var faults = await page.EvaluateAsync<string[]>(
            """
            () => [
              ...(walk.around ? [] : ["the key does not come round again"]),
              ...(walk.first?.matches("a.skip-link") ? [] : ["the link past the top is not first"]),
              ...walk.faults, ...walk.missed(), ...walk.clickableOnly(),
            ]
            """
        );
        await page.Locator("a.skip-link").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForTimeoutAsync(50);
        var past = await page.EvaluateAsync<bool>(
            "() => document.activeElement?.closest('main') !== null"
        );
        return
        [
            .. faults.Select(f => string.Create(CultureInfo.InvariantCulture, $"{name}: {f}")),
            .. past ? (string[])[] : [$"{name}: the link past the top does not lead to the page"],
        ];
    }
}
