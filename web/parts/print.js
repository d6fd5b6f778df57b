// Sheets at true size: while they are printed they are all there is, each a page of its own.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { ask } from "../core/door.js";
import { picture } from "./drawing.js";
import { printer } from "./icons.js";
import { opened } from "./opened.js";
import { bareAddress } from "./route.js";
import { toast } from "./toast.js";

let paper = null;
let sheets = null;
let ours = false;

/** The buttons for sheets. */
export function printsView(list = []) {
  if (!list.length) return nothing;
  return html`<div class="actions">${list.map((sheet) => html`
    <button type="button" class="button quiet-button" @click=${() => make(sheet)}>${printer()}<span>${sheet.label}</span></button>`)}</div>`;
}

async function make({ ask: name, place }) {
  try {
    lay(await ask(name, { ...opened.holder.along(opened.record), place, address: bareAddress() }));
    print();
  } catch (error) {
    toast(error.message);
  }
}

/** Put the sheets beside the screen, where only a printer sees them, and cut the paper to their size. */
function lay({ title, width, height, pages }) {
  paper = new CSSStyleSheet();
  paper.replaceSync(`@page { size: ${width} ${height}; margin: 0; }`);
  document.adoptedStyleSheets = [paper];
  sheets?.remove();
  sheets = document.createElement("div");
  sheets.className = "sheets";
  sheets.append(...pages.map(page));
  document.body.append(sheets);
  document.title = title;
  ours = true;
}

function page(text) {
  const one = document.createElement("div");
  one.className = "sheet";
  one.append(picture(text));
  return one;
}

/** Not every device has read the sheets when it says that printing is over, so they stay until the screen itself is printed. */
function beforePrint() {
  if (!ours) clear();
  ours = false;
}

function clear() {
  document.adoptedStyleSheets = [];
  sheets?.remove();
  sheets = null;
}

/** Be there when the maker prints what the screen shows. */
export function watchPrinting() {
  addEventListener("beforeprint", beforePrint);
}
