// A file that the core writes, handed to the maker: passed to another program on a phone, else put among the downloads.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { ask } from "../core/door.js";
import { nowToSecond, stamp } from "./clock.js";
import { onward } from "./icons.js";
import { opened } from "./opened.js";
import { toast } from "./toast.js";

const TAKEN_BY = 60000;

/** The buttons for files. */
export function savesView(list = []) {
  if (!list.length) return nothing;
  return html`<div class="actions">${list.map((save) => html`
    <button type="button" class="button quiet-button" @click=${() => make(save)}><span>${save.label}</span>${onward()}</button>`)}</div>`;
}

async function make({ ask: name, place }) {
  try {
    const made = await ask(name, { ...opened.holder.along(opened.record), place, now: nowToSecond(), stamp: stamp() });
    await handOver(new File([made.text], made.name, { type: made.kind }));
  } catch (error) {
    toast(error.message);
  }
}

/** Give a file to the maker; whether it left the page. */
export async function handOver(file) {
  const way = await passed(file);
  if (way === "no way") download(file);
  return way !== "closed";
}

/** Only a device for fingers passes files on; closing its sheet is an answer too. */
async function passed(file) {
  const offers = matchMedia("(pointer: coarse)").matches && navigator.canShare?.({ files: [file] });
  if (!offers) return "no way";
  try {
    await navigator.share({ files: [file] });
    return "passed";
  } catch (error) {
    return error.name === "AbortError" ? "closed" : "no way";
  }
}

function download(file) {
  const address = URL.createObjectURL(file);
  Object.assign(document.createElement("a"), { href: address, download: file.name }).click();
  setTimeout(() => URL.revokeObjectURL(address), TAKEN_BY);
}
