// A sheet as plain data: all its fields, and the sheet without answers, for the questions are known before the
// core is there and the figures are not.

const below = ({ fields = [], more = [] }) => [...fields, ...more];

/** Every field of a card or of a group: in the open, behind More, and in the card's groups. */
export const fieldsOf = (card) => [card, ...(card.groups ?? [])].flatMap(below);

/** Whether an entry of a card or a group is to be mended. */
export const isFaulty = (card) => fieldsOf(card).some(({ fault }) => Boolean(fault));

/** Whether a card or a group asks for something whose path begins so. */
export const isAbout = (card, beginning) => fieldsOf(card).some(({ path }) => path.startsWith(beginning));

/** The sheet's questions alone, for showing a record whose figures are still being worked out. */
export function bareSheet(sheet) {
  return { ...sheet, faults: [], cards: sheet.cards.map(bareCard) };
}

/** What a new item begins with may come from the answer, such as all that goes into a batch: then it waits for the answer too. */
const isOfAnyRecord = ({ value }) => !Object.values(value ?? {}).some(Array.isArray);

/** What holds for any maker, such as a generic material, stays. */
function bareCard(card) {
  if (card.generic) return card;
  return {
    ...bareAsks(card), answer: [], large: [], figures: [], beside: null, drawing: "", drawing_text: "", timers: [],
    table: null, drag: null, actions: (card.actions ?? []).filter(isOfAnyRecord),
    groups: (card.groups ?? []).map((group) => ({ ...bareAsks(group), summary: "" })),
  };
}

const bareAsks = (asks) => ({ ...asks, fields: (asks.fields ?? []).map(bareField), more: (asks.more ?? []).map(bareField) });

function bareField(field) {
  return { ...field, echo: "", fault: "", note: "" };
}
