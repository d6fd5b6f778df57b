// A sheet without answers: the questions are known before the core is there, the figures are not.

/** The sheet's questions alone, for showing a record whose figures are still being worked out. */
export function bareSheet(sheet) {
  return { ...sheet, faults: [], cards: sheet.cards.map(bareCard) };
}

function bareCard(card) {
  return {
    ...card, answer: [], figures: [], beside: null, drawing: "", drawing_text: "",
    fields: card.fields.map(bareField), more: (card.more ?? []).map(bareField),
  };
}

function bareField(field) {
  return { ...field, echo: "", fault: "", note: "" };
}
