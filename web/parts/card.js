// One step of the job. Closed it is one line with its answer in large figures; open it asks what the step needs.

import { html, nothing } from "../vendor/lit/lit-html.js";
import { door } from "../core/door.js";
import { actionsView } from "./actions.js";
import { behindView } from "./behind.js";
import { besideView } from "./beside.js";
import { chapterId, chapterName } from "./chapters.js";
import { cautionLine, cautionsView } from "./cautions.js";
import { drawingView } from "./drawing.js";
import { fieldView } from "./field.js";
import { figureView, largeNumber } from "./figure.js";
import { groupsView } from "./group.js";
import { fold, mind } from "./icons.js";
import { moreView } from "./more.js";
import { opened, toggleCard } from "./opened.js";
import { dropHand, picksView } from "./pick.js";
import { photoView } from "./photo.js";
import { printsView } from "./print.js";
import { savesView } from "./save.js";
import { tableView } from "./table.js";
import { nextTimer, timersView } from "./timers.js";

const CHART = 'class="chart"';
const READ = new Set(["mass", "volume", "length", "moment"]);

/** The cards of a sheet, under their chapters. */
export function cardsView({ cards }) {
  const chaptered = cards.some(({ chapter }) => chapter);
  return html`<div class="cards">${cards.map((card) => html`
      ${card.chapter ? html`<h2 class="chapter" id=${chapterId(card)} tabindex="-1">${chapterName(card)}</h2>` : nothing}${cardView(card, chaptered)}`)}</div>`;
}

/** A card, open or closed. */
function cardView(card, chaptered) {
  const open = opened.openCard === card.id;
  const { over, drop } = dropHand(card);
  return html`<section class="card ${open ? "is-open" : "is-closed"} ${card.answer.length ? "answered" : ""}" aria-label=${card.title} data-card=${card.id}>
    ${chaptered ? html`<h3 class="card-head">${face(card, open)}</h3>` : html`<h2 class="card-head">${face(card, open)}</h2>`}
    <div class="card-body" id="card.${card.id}" ?hidden=${!open} @dragover=${over} @drop=${drop}>${open ? body(card) : nothing}</div>
    ${!open && card.answer.length ? cautionLine(card.cautions) : nothing}
  </section>`;
}

function face(card, open) {
  return html`<button type="button" class="card-face" aria-expanded=${open ? "true" : "false"}
      aria-controls="card.${card.id}" @click=${(event) => toggle(card.id, event.currentTarget)}>
      <span class="card-title">${card.title}${warns(card, open)}</span>${fold()}
      ${open ? nothing : answerLine(card)}${open ? nothing : nextTimer(card.timers)}
    </button>`;
}

/** What closes above would push the opened step away, so it is brought back into sight. */
function toggle(id, button) {
  toggleCard(id);
  requestAnimationFrame(() => button.closest(".card").scrollIntoView({ block: opened.openCard ? "start" : "nearest" }));
}

const warns = ({ cautions }, open) => (cautions.length && !open ? html`<span class="warns">${mind()}</span>` : nothing);

/** The answers large; before there are any, what is still being waited for. */
function answerLine(card) {
  if (card.answer.length) return html`<span class="answers">${card.answer.map(answer)}</span>`;
  return html`<span class="answers waiting">${waitingFor(card)}</span>`;
}

/** Only where something was typed is the core waited for; an empty vessel waits for the maker. */
function waitingFor(card) {
  if (opened.kind === "new" || opened.fresh || card.generic) return card.waiting;
  return html`<span class="getting-ready">${door.state === "failed" ? "not worked out just now" : "getting ready…"}</span>`;
}

const answer = ({ label, shown }) => html`<span class="answer">${largeNumber(shown)} <span class="answer-label">${label}</span></span>`;

/** The readings come first, then what they tell, then what else may be said about the step. */
function body(card) {
  const { readings, others } = sorted(card.fields);
  const { adds, actions } = parted(card);
  return html`
    ${card.question ? html`<p class="question">${card.question}</p>` : nothing}
    <div class="card-columns">
      <div class="tells">
        ${readings.map((field) => fieldView(field))}
        ${picksView(card.picks)}
        ${timersView(card.timers)}
        ${figures(card)}
        ${isLegend(card) ? drawingView(card) : nothing}
        ${tableView(card.table)}
        ${card.drag ? drawingView(card) : nothing}
        ${groupsView(card.groups ?? [], adds)}
        ${besideView(card.beside)}
        ${(card.notes ?? []).map((note) => html`<p class="note">${note}</p>`)}
        ${cautionsView(card.cautions)}
      </div>
      <div class="asks">
        ${others.filter((field) => isOfPhoto(field, card)).map((field) => fieldView(field))}
        ${photoView(card.photo)}
        ${others.filter((field) => !isOfPhoto(field, card)).map((field) => fieldView(field))}
        ${card.drag || isLegend(card) ? nothing : drawingView(card)}
        ${behindView(card)}
        ${actionsView(actions)}
        ${printsView(card.prints)}
        ${savesView(card.saves)}
        ${moreView(card.more)}
      </div>
    </div>`;
}

/** A table beside a chart tells what the chart shows, so the chart stands above it. */
const isLegend = ({ table, drawing, drag }) => Boolean(table?.rows.length && drawing.includes(CHART) && !drag);

/** A step's readings are the measures and moments it begins with, and the choice that says which measures. */
function sorted(fields) {
  const [first] = fields;
  const choice = first?.kind === "choice" ? [first] : [];
  const readings = [];
  for (const field of fields.slice(choice.length)) {
    if (!READ.has(field.kind)) break;
    readings.push(field);
  }
  const begin = readings.length ? [...choice, ...readings] : [];
  return { readings: begin, others: fields.slice(begin.length) };
}

/** What is asked of a photo stands above it, with the choice that it belongs to. */
const isOfPhoto = ({ path }, { photo }) => Boolean(photo) && path.startsWith(photo.place.replace(/[^.]*$/, ""));

/** A button that adds one more stands below those there are, or where nothing else is asked; else with the others. */
function parted({ fields, groups = [], actions = [] }) {
  const early = ({ append }) => append && (groups.length || !fields.length);
  return { adds: actions.filter(early), actions: actions.filter((action) => !early(action)) };
}

/** The figures that answer the step, large. */
function figures(card) {
  if (!card.large.length) return card.waiting ? html`<p class="waiting">${waitingFor(card)}</p>` : nothing;
  return html`<div class="figures">${card.figures.filter(({ key }) => card.large.includes(key)).map((figure) => figureView(figure))}</div>`;
}
