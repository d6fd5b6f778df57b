// One way to ask for a repaint, so that no piece needs to know who paints.

let paint = () => {};
let asked = false;

/** Say who paints the page. */
export function paintWith(painter) {
  paint = painter;
}

/** Paint soon; several wishes make one painting. */
export function repaint() {
  if (asked) return;
  asked = true;
  queueMicrotask(() => {
    asked = false;
    paint();
  });
}
