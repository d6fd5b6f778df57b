// A photo with marks: the rim of a vessel beside a sheet of paper. A tap sets a mark, a finger or the arrow keys move one;
// the part of the photo around it is shown larger. The platform's own matrices tell where on the photo a finger is.

import { html, nothing, svg } from "../vendor/lit/lit-html.js";
import { drawing } from "./drawing.js";
import { bin, camera, cross, mind, rub } from "./icons.js";
import { addMark, addressOf, beginAgain, choosePhoto, forgetPhoto, ghostsOf, heldOf, hold, letGo, moveMark, stepMark, takeBack } from "./marking.js";
import { repaint } from "./paint.js";

const KEYS = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };
const STEPS = [["left", "←"], ["up", "↑"], ["down", "↓"], ["right", "→"]];
const HALF = 500;

// A click that ends a drag or takes a mark sets no other one.
let quiet = false;
let grip = null;

const to = ({ x, y }) => new DOMMatrix().translate(x, y);
const pictureIn = (frame) => frame.querySelector("svg.photo-marks");
const handleOf = ({ target }) => target.closest?.(".handle");
const rowOf = (handle) => JSON.parse(handle.dataset.mark);

/** Where on the photo a finger is, in units of the core's drawing. */
const placeOf = (event, frame) => new DOMPoint(event.clientX, event.clientY).matrixTransform(pictureIn(frame).getScreenCTM().inverse());

/** Where a mark is, as the core drew it. */
function markOf(handle) {
  const { cx, cy } = handle.querySelector("circle");
  return { x: cx.baseVal.value, y: cy.baseVal.value };
}

/** The photo of a card, what is to be marked next, and the buttons for it. */
export function photoView(photo) {
  if (!photo) return nothing;
  const address = addressOf(photo);
  const held = photo.marks ? heldOf(photo) : null;
  return html`<div class="photo" data-photo=${photo.place}>
    <input type="file" hidden accept="image/*" @change=${(event) => chosen(photo, event.target)}>
    <p class="note" role="status">${photo.says}</p>
    ${photo.marks ? frame(photo, address, held) : nothing}
    ${photo.marks && address === "" ? html`<p class="note">${photo.labels.missing}</p>` : nothing}
    ${photo.fault ? html`<p class="fault">${mind()}<span>${photo.fault}</span></p>` : nothing}
    ${held && !held.dragging ? finely(photo, address, held) : nothing}
    <div class="actions">
      ${photo.back ? html`<button type="button" class="button quiet-button" @click=${() => takeBack(photo)}>${rub()}<span>${photo.labels.back}</span></button>` : nothing}
      <button type="button" class="button quiet-button" @click=${openChooser}>${camera()}<span>${address ? photo.labels.other : photo.labels.choose}</span></button>
      ${address ? html`<button type="button" class="plain" @click=${() => forgetPhoto(photo)}>${cross()}<span>${photo.labels.forget}</span></button>` : nothing}
      ${photo.anew ? html`<button type="button" class="plain" @click=${() => beginAgain(photo)}>${bin()}<span>${photo.labels.anew}</span></button>` : nothing}
    </div>
  </div>`;
}

const openChooser = ({ currentTarget }) => currentTarget.closest(".photo").querySelector("input").click();

function chosen(photo, input) {
  const [file] = input.files;
  if (file) choosePhoto(photo, file);
  input.value = "";
}

/** The photo with the core's marks over it. */
function frame(photo, address, held) {
  const picture = drawing(photo.marks, photo.words);
  for (const handle of picture.querySelectorAll?.(".handle") ?? []) handle.classList.toggle("is-held", rowOf(handle) === held?.row);
  return html`<figure class="drawing photo-frame ${address ? "" : "is-bare"}" @click=${(event) => tap(event, photo)} @pointerdown=${(event) => takeHold(event, photo)}
      @pointermove=${(event) => follow(event, photo)} @pointerup=${(event) => drop(event, photo)} @pointercancel=${release}
      @keydown=${(event) => key(event, photo)} @touchstart=${TOUCH}>
    ${address ? html`<img src=${address} alt="" draggable="false">` : nothing}${picture}
    <svg class="photo-ghosts" viewBox=${picture.getAttribute?.("viewBox") ?? nothing} aria-hidden="true">${ghostsOf(photo).map(ghost)}</svg>
    ${held?.dragging ? html`<div class="photo-loupe ${held.x < HALF ? "is-right" : ""}">${loupe(address, held, picture)}</div>` : nothing}
  </figure>`;
}

const ghost = ({ x, y }) => svg`<circle class="photo-ring" cx=${x} cy=${y} r="17"/>`;

/** The photo around a mark, larger. */
function loupe(address, { x, y }, picture) {
  const around = to({ x: 50, y: 50 }).scale(1.2).multiply(to({ x, y }).inverse());
  const { width, height } = picture.viewBox.baseVal;
  return html`<svg class="loupe" viewBox="0 0 100 100" aria-hidden="true">
    ${address ? svg`<image href=${address} width=${width} height=${height} transform=${`${around}`}/>` : nothing}
    <path class="photo-cross" d="M50 38V62M38 50H62"/></svg>`;
}

/** The mark that was touched last, larger, and buttons that move it by a hair. */
function finely(photo, address, held) {
  return html`<div class="photo-fine">${loupe(address, held, drawing(photo.marks, photo.words))}
    <div class="photo-steps">${STEPS.map(([step, sign]) => html`<button type="button" class="button quiet-button ${step}" aria-label=${photo.labels[step]}
      @click=${() => stepMark(photo, held.row, step, false)}>${sign}</button>`)}</div></div>`;
}

/** A tap beside the marks sets one; on a mark it takes it in hand. */
function tap(event, photo) {
  const wasQuiet = quiet;
  quiet = false;
  if (wasQuiet) return;
  addMark(photo, placeOf(event, event.currentTarget));
}

/** The frame takes hold of the finger: the marks in it are drawn anew with every move. */
function takeHold(event, photo) {
  quiet = false;
  const handle = handleOf(event);
  if (!handle || event.button || grip) return;
  quiet = true;
  event.currentTarget.setPointerCapture(event.pointerId);
  handle.focus({ preventScroll: true });
  const mark = markOf(handle);
  grip = { pointer: event.pointerId, row: rowOf(handle), handle, mark, from: to(mark).multiply(to(placeOf(event, event.currentTarget)).inverse()), moved: false,
    isBeside: Boolean(event.target.closest(".hit")) };
  hold(photo, grip.row, mark, false);
}

function follow(event, photo) {
  if (grip?.pointer !== event.pointerId) return;
  const place = placeOf(event, event.currentTarget).matrixTransform(grip.from);
  grip.moved = true;
  grip.handle.setAttribute("transform", `${to(place).multiply(to(grip.mark).inverse())}`);
  hold(photo, grip.row, place, true);
}

/** The wide rim of a mark is there for dragging: a tap on it sets another mark, for marks may stand close. */
function drop(event, photo) {
  if (grip?.pointer !== event.pointerId) return;
  const { row, moved, isBeside, from, handle } = grip;
  const finger = placeOf(event, event.currentTarget);
  const place = finger.matrixTransform(from);
  release();
  if (!moved && isBeside) {
    handle.blur();
    addMark(photo, finger);
  }
  if (!moved) return;
  hold(photo, row, place, false);
  moveMark(photo, row, place);
}

/** What the finger held stands where the core drew it, until the core draws it anew. */
function release() {
  grip?.handle.removeAttribute("transform");
  if (grip?.moved) letGo();
  grip = null;
  repaint();
}

function key(event, photo) {
  const handle = handleOf(event);
  const step = KEYS[event.key];
  if (!handle || !step) return;
  event.preventDefault();
  stepMark(photo, rowOf(handle), step, event.shiftKey);
}

// Where a mark is taken the page must not scroll; beside the marks it may.
const TOUCH = { handleEvent: (event) => handleOf(event) && event.preventDefault(), passive: false };
