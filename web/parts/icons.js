// Brimbook's own signs, drawn in strokes of the text's color.

import { svg, html } from "../vendor/lit/lit-html.js";

const sign = (shape, name = "") => html`<svg class="sign ${name}" viewBox="0 0 24 24" aria-hidden="true" focusable="false">${shape}</svg>`;

/** A vessel with its brim line. */
export const mark = () => sign(svg`<path d="M4 6h16M6 6l1.2 10.500a4 4 0 0 0 4 3.500h1.600a4 4 0 0 0 4-3.500L18 6"/><path class="brim" d="M6.600 11h10.800"/>`, "mark");
/** Back to the shelf. */
export const back = () => sign(svg`<path d="M14.500 5 8 12l6.500 7"/>`);
/** Pass it on. */
export const share = () => sign(svg`<path d="M12 15V4M8 8l4-4 4 4M5 13v5.500A1.500 1.500 0 0 0 6.500 20h11a1.500 1.500 0 0 0 1.500-1.500V13"/>`);
/** Settings: three weights on their rods. */
export const settingsSign = () => sign(svg`<path d="M4 7h8m4 0h4M4 17h2m4 0h10"/><circle cx="14" cy="7" r="2"/><circle cx="8" cy="17" r="2"/>`);
/** Materials: a sack and a jar on their board. */
export const materialsSign = () => sign(svg`<path d="M3 20h18M4.500 20l-.5-9 2-3.500L5 5h5L9 7.500l2 3.500-.5 9M14 20v-8.500a1.500 1.500 0 0 1 1.500-1.500h3a1.500 1.500 0 0 1 1.500 1.500V20M14.500 7h5"/>`);
/** Leads on. */
export const onward = () => sign(svg`<path d="m9.500 6 6 6-6 6"/>`);
/** One more. */
export const plus = () => sign(svg`<path d="M12 5v14M5 12h14"/>`);
/** Take away. */
export const bin = () => sign(svg`<path d="M5 7h14M10 7V4.500h4V7M7 7l.8 12.500h8.400L17 7"/>`);
/** Close. */
export const cross = () => sign(svg`<path d="m6 6 12 12M18 6 6 18"/>`);
/** Mind this. */
export const mind = () => sign(svg`<path d="M12 4 2.800 20h18.400zM12 10v5"/><path d="M12 17.500v.2"/>`, "mind");
/** Something opens here. */
export const fold = () => sign(svg`<path d="m6 9.500 6 6 6-6"/>`, "fold");
/** Take back the last character. */
export const rub = () => sign(svg`<path d="M9 5.500h11v13H9L3.500 12zM12 9.500l5 5m0-5-5 5"/>`);
/** Put on paper. */
export const printer = () => sign(svg`<path d="M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z"/>`);
/** A file. */
export const paper = () => sign(svg`<path d="M6 3.500h8l4.500 4.500v12.500H6zM14 3.500V8h4.500"/>`);
/** Look for. */
export const look = () => sign(svg`<circle cx="10.500" cy="10.500" r="5.500"/><path d="m15 15 5 5"/>`);
/** Done. */
export const tick = () => sign(svg`<path d="m5 12.500 4.500 4.500L19 7.500"/>`, "tick");
/** Take a photo. */
export const camera = () => sign(svg`<path d="M4 8h4l1.500-2.500h5L16 8h4v10.500H4z"/><circle cx="12" cy="13" r="3.250"/>`);
