// Pointing at the drawing of a board. Places are told to the page as shares (0 to 1) of the drawing's width and height;
// what they mean on the board is worked out there. A mouse or pen drags a rectangle or clicks; a finger taps, so that
// swiping still scrolls. Marks and their grips are dragged by any of them.

const SLACK = 6;

export function watch(canvas, page) {
  const band = canvas.querySelector(".rubber-band");
  let drag = null;

  const frame = () => canvas.querySelector("svg").getBoundingClientRect();
  const share = (event, box) => ({
    x: Math.min(1, Math.max(0, (event.clientX - box.left) / box.width)),
    y: Math.min(1, Math.max(0, (event.clientY - box.top) / box.height)),
  });

  function down(event) {
    if (event.button !== 0 || !event.isPrimary) return;
    const mark = event.target.closest("[data-place]");
    if (!mark && !event.target.closest("svg")) return;
    const box = frame();
    drag = {
      box,
      mark,
      kind: !mark ? "draw" : event.target.closest("[data-grip]") ? "resize" : "move",
      touch: event.pointerType === "touch",
      x: event.clientX,
      y: event.clientY,
      start: share(event, box),
      moved: false,
    };
  }

  function move(event) {
    if (!drag || !event.isPrimary) return;
    const dx = event.clientX - drag.x;
    const dy = event.clientY - drag.y;
    if (!drag.moved) {
      if (Math.hypot(dx, dy) < SLACK) return;
      drag.moved = true;
      if (drag.mark || !drag.touch) canvas.setPointerCapture(event.pointerId);
    }
    if (drag.kind === "move") {
      drag.mark.style.transform = `translate(${dx}px, ${dy}px)`;
    } else if (drag.kind === "resize") {
      drag.mark.style.paddingRight = `${Math.max(0, dx)}px`;
      drag.mark.style.paddingBottom = `${Math.max(0, dy)}px`;
    } else if (!drag.touch) {
      stretch(share(event, drag.box));
    }
  }

  function stretch(to) {
    const from = drag.start;
    band.hidden = false;
    band.style.left = `${Math.min(from.x, to.x) * 100}%`;
    band.style.top = `${Math.min(from.y, to.y) * 100}%`;
    band.style.width = `${Math.abs(to.x - from.x) * 100}%`;
    band.style.height = `${Math.abs(to.y - from.y) * 100}%`;
  }

  async function up(event) {
    if (!drag || !event.isPrimary) return;
    const { kind, mark, moved, touch, start, box, x, y } = drag;
    drag = null;
    band.hidden = true;
    const end = share(event, box);
    if (mark && moved) {
      const by = [(event.clientX - x) / box.width, (event.clientY - y) / box.height];
      await page.invokeMethodAsync(
        kind === "move" ? "MarkMoved" : "MarkResized",
        Number(mark.dataset.place),
        ...by,
      );
      settle(mark);
    } else if (!mark && !moved) {
      await page.invokeMethodAsync("Pointed", end.x, end.y);
    } else if (!mark && !touch) {
      await page.invokeMethodAsync("Drawn", start.x, start.y, end.x, end.y);
    }
  }

  function settle(mark) {
    mark.style.transform = "";
    mark.style.paddingRight = "";
    mark.style.paddingBottom = "";
  }

  function cancel() {
    if (drag?.mark) settle(drag.mark);
    drag = null;
    band.hidden = true;
  }

  // Arrow keys would scroll the page while a mark is being moved.
  function key(event) {
    const moves = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown", "Delete", "Backspace"];
    if (event.target.closest("[data-place]") && moves.includes(event.key)) event.preventDefault();
  }

  const heard = { pointerdown: down, pointermove: move, pointerup: up, pointercancel: cancel, keydown: key };
  for (const [name, listener] of Object.entries(heard)) canvas.addEventListener(name, listener);
  return {
    stop() {
      for (const [name, listener] of Object.entries(heard)) canvas.removeEventListener(name, listener);
    },
  };
}
