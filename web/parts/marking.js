// Photos that are marked: kept on this device while their marks go into the record, and what a tap or a move writes there.
// The core says what is written; a photo never leaves the device.

import { ask } from "../core/door.js";
import { fileKey, forgetFile, keepFile, keptFile } from "../keep/files.js";
import { move, offerWayBack, opened, take, write } from "./opened.js";
import { repaint } from "./paint.js";
import { toast } from "./toast.js";
import { makersOwn } from "./world.js";

const WIDEST = 1600;
const LIKENESS = ["image/jpeg", 0.9];

const photos = new Map();
let queue = Promise.resolve();

/** The mark that was touched last, and what is being done to it: {key, row, x, y, dragging}. */
const hand = { key: "", row: null, x: 0, y: 0, dragging: false };

/** Taps that the core has not drawn yet: {key, marks, points}. */
const waiting = { key: "", marks: "", points: [] };

/** The name of a photo on this device. */
export const keyOf = ({ place }) => fileKey(opened.record.id, place);

/** The address of a photo on this device: empty where there is none, undefined while that is not known. */
export function addressOf(photo) {
  const key = keyOf(photo);
  if (!photos.has(key)) learn(key);
  return photos.get(key);
}

async function learn(key) {
  photos.set(key, undefined);
  const kept = await keptFile(key);
  if (photos.get(key) !== undefined) return;
  photos.set(key, kept ? URL.createObjectURL(kept) : "");
  repaint();
}

/** A photo no larger than it needs to be, the right way up. */
async function smaller(file) {
  const image = new Image();
  const address = URL.createObjectURL(file);
  try {
    image.src = address;
    await image.decode();
    const { naturalWidth: wide, naturalHeight: high } = image;
    const shrunk = wide > WIDEST ? new DOMMatrix().scale(wide).inverse().scale(WIDEST) : new DOMMatrix();
    const { x, y } = new DOMPoint(wide, high).matrixTransform(shrunk);
    const canvas = Object.assign(document.createElement("canvas"), { width: x, height: y });
    canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
    return { canvas, blob: await new Promise((resolve) => canvas.toBlob(resolve, ...LIKENESS)) };
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Take a photo that the maker chose. Marks of a photo of another shape go, with a way back. */
export async function choosePhoto(photo, file) {
  const { holder } = opened;
  try {
    const { canvas, blob } = await smaller(file).catch(() => { throw new Error(photo.labels.broken); });
    const { sets } = await asked(photo, { width: canvas.width, height: canvas.height });
    if (opened.holder !== holder) return;
    lay(photo, blob, sets);
  } catch (error) {
    toast(error.message);
  }
}

function lay(photo, blob, sets) {
  const key = keyOf(photo);
  const before = photos.get(key);
  const loses = photo.back && Object.hasOwn(sets, `${photo.place}.marks`);
  letGo();
  if (loses) take(sets, "The marks went with the old photo.", () => photos.set(key, before));
  else write(sets);
  photos.set(key, URL.createObjectURL(blob));
  if (opened.kind !== "visit") keepFile(key, blob);
  repaint();
}

/** Have the device forget a photo, with a way back; its marks stay. */
export async function forgetPhoto(photo) {
  const key = keyOf(photo);
  const before = photos.get(key);
  const kept = await keptFile(key);
  await forgetFile(key);
  photos.set(key, "");
  toast(photo.labels.forgotten, "Undo", () => {
    photos.set(key, before);
    if (kept) keepFile(key, kept);
    repaint();
  });
}

const asked = ({ ask: name, place }, what) => ask(name, { record: opened.record, ...makersOwn(), place, ...what });

/** Have the core write what a tap, a move or a step does; one after the other, for each builds on the one before. */
function mark(photo, what, run, words = "") {
  const { holder } = opened;
  queue = queue.then(async () => {
    try {
      const { sets, row, x, y } = await asked(photo, what);
      if (opened.holder !== holder) return;
      Object.assign(hand, { key: keyOf(photo), row, x, y });
      move(run, sets);
      if (words) offerWayBack(words);
    } catch (error) {
      waiting.points = [];
      toast(error.message);
    }
  });
}

/** A new mark where the maker tapped. */
export function addMark(photo, { x, y }) {
  Object.assign(waiting, { points: [...ghostsOf(photo), { x, y }], key: keyOf(photo), marks: photo.marks });
  mark(photo, { x, y }, Symbol("tap"));
  repaint();
}

/** A mark was dragged to another place. */
export const moveMark = (photo, row, { x, y }) => mark(photo, { row, x, y }, Symbol("drag"), "Moved.");

/** A mark goes one step, or a large one. */
export const stepMark = (photo, row, step, far) => mark(photo, { row, step, far }, `${photo.place} ${row}`, "Moved.");

/** Without its last mark. */
export function takeBack(photo) {
  letGo();
  move(Symbol("back"), photo.back);
}

/** Without any mark. */
export function beginAgain(photo) {
  letGo();
  take(photo.anew, "Cleared.");
}

/** Taps that the core has not drawn yet. */
export const ghostsOf = (photo) => (waiting.key === keyOf(photo) && waiting.marks === photo.marks ? waiting.points : []);

/** The mark that was touched last, where it is one of this photo: {row, x, y, dragging}. */
export const heldOf = (photo) => (hand.key === keyOf(photo) ? hand : null);

/** Hold a mark at a place. */
export function hold(photo, row, { x, y }, dragging) {
  Object.assign(hand, { key: keyOf(photo), row, x, y, dragging });
  repaint();
}

/** No mark is touched any longer. */
export const letGo = () => Object.assign(hand, { key: "", row: null, dragging: false });
