// This device's own name among those that a book was changed on. It is made up once, and says nothing about its maker.

import { newId } from "../core/ids.js";
import { get, put } from "./store.js";

const DEVICE = "device";

/** The name of this device. */
export function device() {
  const known = get(DEVICE);
  if (known) return known;
  const made = newId();
  put(DEVICE, made);
  return made;
}
