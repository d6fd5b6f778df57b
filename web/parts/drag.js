// Moves marks of a drawing, by finger, mouse, pen or arrow keys. The core says what a move writes into the record;
// figures and drawing follow. The platform's own matrices tell where on the drawing a finger is.

import { ask } from "../core/door.js";
import { move, offerWayBack, opened } from "./opened.js";
import { toast } from "./toast.js";
import { makersOwn } from "./world.js";

const STEPS = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };

let held = null;
let wishes = [];
let asking = false;
let told = true;

const handleOf = (event) => event.target.closest?.(".handle");
const rowOf = (handle) => JSON.parse(handle.dataset.row);
const to = ({ x, y }) => new DOMMatrix().translate(x, y);
const at = ({ clientX, clientY }) => new DOMPoint(clientX, clientY);

/** The middle of a mark on the screen. */
function middle(mark) {
  const { left, top, width, height } = mark.getBoundingClientRect();
  return new DOMPoint(0.5, 0.5).matrixTransform(new DOMMatrix().translate(left, top).scale(width, height));
}

/** From where a finger is to where the mark's middle is, so that no mark jumps when it is taken at its edge. */
const grip = (handle, event) => to(middle(handle.querySelector("circle") ?? handle)).multiply(to(at(event)).inverse());

/** What a card's drawing does with fingers and keys; `drag` is the card's, or null where nothing can be moved. */
export function dragHand(drag) {
  return {
    down: (event) => takeHold(event, drag),
    move: follow,
    up: letGo,
    key: (event) => step(event, drag),
    // Where a mark is taken the page must not scroll; not every device knows this from the style.
    touch: { handleEvent: (event) => handleOf(event) && event.preventDefault(), passive: false },
  };
}

/** The frame takes hold of the finger: the picture in it is made anew with every move. */
function takeHold(event, drag) {
  const handle = handleOf(event);
  if (!handle || event.button || held) return;
  event.currentTarget.setPointerCapture(event.pointerId);
  handle.focus({ preventScroll: true });
  held = { drag, pointer: event.pointerId, row: rowOf(handle), grip: grip(handle, event), start: at(event), run: Symbol("drag") };
}

const isWhereItWas = ({ clientX, clientY }) => held.start?.x === clientX && held.start.y === clientY;

function follow(event) {
  if (held?.pointer !== event.pointerId || isWhereItWas(event)) return;
  held.start = null;
  const picture = event.currentTarget.querySelector("svg");
  if (!picture) return;
  const { x, y } = at(event).matrixTransform(held.grip).matrixTransform(picture.getScreenCTM().inverse());
  wishes = [{ ...held, what: { row: held.row, x, y } }];
  fulfil();
}

function letGo(event) {
  if (held?.pointer !== event.pointerId) return;
  held = null;
  tell();
}

function step(event, drag) {
  const handle = handleOf(event);
  const way = STEPS[event.key];
  if (!handle || !way) return;
  event.preventDefault();
  if (event.repeat && asking) return;
  const row = rowOf(handle);
  wishes.push({ drag, run: `${drag.place} ${row}`, what: { row, step: way, far: event.shiftKey } });
  fulfil();
}

/** One question at a time; while it is answered, a finger's newest place takes the place of its older ones. */
async function fulfil() {
  if (asking) return;
  asking = true;
  try {
    while (wishes.length) await grant(wishes.shift());
  } catch (error) {
    wishes = [];
    held = null;
    toast(error.message);
  }
  asking = false;
  tell();
}

async function grant({ drag, run, what }) {
  const { holder } = opened;
  const { sets } = await ask(drag.ask, { record: opened.record, ...makersOwn(), place: drag.place, ...what });
  if (opened.holder !== holder || !Object.keys(sets).length) return;
  move(run, sets);
  told = false;
}

/** Once a move is over, the way back is offered. */
function tell() {
  if (told || held || asking) return;
  told = true;
  offerWayBack("Moved.");
}

/** Note which mark has the focus; what this gives puts the focus on its successor when the picture was made anew. */
export function noteHandle(root) {
  const handle = document.activeElement?.closest(".handle");
  const card = handle?.closest("[data-card]")?.dataset.card;
  return () => {
    if (!card || handle.isConnected) return;
    const row = CSS.escape(handle.dataset.row);
    root.querySelector(`[data-card="${CSS.escape(card)}"] .handle[data-row="${row}"]`)?.focus({ preventScroll: true });
  };
}
