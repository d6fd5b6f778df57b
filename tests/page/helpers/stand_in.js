// A worker that stands in for the core: small answers, made from the record, for trying the page by itself.

const field = (path, label, kind, record, more = {}) => ({
  path, label, kind, value: path.split(".").reduce((part, key) => part?.[key], record) ?? "", unit: kind === "mass" ? "g" : "",
  echo: "", fault: "", note: "", hint: "", keys: kind === "mass" ? ["g", "oz"] : [], choices: [], ...more,
});
const mended = (made) => (/[a-z]{4}/.test(made.value) ? { ...made, fault: `${made.label} can't be read. Type it again.` } : made);
const card = (id, title, more) => ({
  id, title, question: "", waiting: "Type a weight.", fields: [], more: [], answer: [], large: [], figures: [], notes: [], cautions: [],
  beside: null, drawing: "", drawing_text: "", actions: [], groups: [], timers: [], saves: [], chapter: "", ...more,
});

const CHART = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 350 200" class="chart">
  <line class="grid" x1="40" y1="60" x2="340" y2="60"/><line class="grid" x1="40" y1="110" x2="340" y2="110"/>
  <polygon class="band" points="40,80 340,40 340,90 40,120"/><polyline class="curve" points="40,150 120,90 220,70 340,60"/>
  <line class="axis" x1="40" y1="160" x2="340" y2="160"/><line class="axis" x1="40" y1="20" x2="40" y2="160"/>
  <circle class="mark" cx="120" cy="90" r="6"/><circle class="mark-soft" cx="220" cy="70" r="6"/>
  <rect class="bar" x="60" y="120" width="30" height="40"/><rect class="bar-soft" x="260" y="100" width="30" height="60"/>
  <text class="label" x="130" y="84">41 MPa</text><text class="label-small" x="40" y="180">1 d</text></svg>`;

const BINDERS = ["Ocher cement", "Slate cement", "Chalk binder"].map((label) => ({ label, value: label, hint: "", sets: {}, group: "Binders" }));
const SANDS = ["Fine sand", "Dune sand", "Coarse sand"].map((label) => ({ label, value: label, hint: "", sets: {}, group: "Sands" }));

function pour(record, place) {
  const at = (name) => `casts.0.pours.${place}.${name}`;
  const fields = [mended(field(at("left"), "Left over", "mass", record)), field(at("at"), "Poured at", "moment", record)];
  return {
    id: `pour-${place + 1}`, title: `Pour ${place + 1}`, summary: `Nov 20 · ${fields[0].value || "0 g"} left over`, fields,
    more: [field(at("note"), "Note", "text", record)], open: false,
    actions: [{ label: `Remove pour ${place + 1}`, remove: `casts.0.pours.${place}` }],
  };
}

function castCards(record, place) {
  const at = (name) => `casts.${place}.${name}`;
  const number = place ? ` ${place + 1}` : "";
  const pours = (place === 0 && record.casts[0].pours) || [];
  const saves = [{ label: "Put it into my calendar", ask: "calendar", place: at("mix").slice(0, -4) }];
  const cast = record.casts[place];
  const weight = field(at("weight"), "Water", "mass", record);
  return [
    card(`mold${number}`, `Mold${number}`, {
      chapter: "Cast", fields: [weight, field(at("binder"), "Binder", "choice", record, { choices: [...BINDERS, ...SANDS] })],
      answer: weight.value ? [{ label: "Volume", shown: "642 mL", key: "volume" }] : [], large: ["volume"], drawing: CHART, drawing_text: "A chart.",
      actions: [{ label: "My materials", go: "#/materials" }, { label: "Clear the weight", clear: [at("weight"), at("binder")] }],
    }),
    card(`log${number}`, `Log${number}`, {
      chapter: "Set and dry", question: "When was it poured?", fields: [field(at("started"), "Started", "moment", record)],
      groups: pours.map((_, row) => pour(record, row)), timers: cast.due?.map((due, row) => ({ label: ["Demold", "Unwrap"][row], due })) ?? [],
      saves, actions: [{ label: "Add a pour", append: at("pours"), value: {}, sets: { [at("binder")]: "Dune sand" } }],
    }),
  ];
}

function workOut({ record, materials }) {
  if (!Array.isArray(materials)) throw new Error("no materials came along");
  const whole = { ...record, casts: record.casts ?? [{}] };
  const cards = whole.casts.flatMap((_, place) => castCards(whole, place));
  const adds = [{ label: "Add a mold", append: "casts", value: {} }];
  const removes = whole.casts.slice(1).map((_, row) => ({ label: `Remove mold ${row + 2}`, remove: `casts.${row + 1}` }));
  const notes = materials.map(({ name }) => `On your shelf: ${name}.`);
  return { record: whole, sheet: { title: "", line: "", faults: [], cards: [{ ...cards[0], notes }, ...cards.slice(1)], actions: [...adds, ...removes] } };
}

function shelf({ record }) {
  const own = record.materials.map(({ name }, row) => card(`material-${row + 1}`, name || "New material", {
    fields: [field(`materials.${row}.name`, "Name", "text", record), field(`materials.${row}.pack`, "Pack", "mass", record)],
    waiting: "Type its density.", actions: [{ label: "Remove this material", remove: `materials.${row}` }],
  }));
  const figure = { key: "generic.ocher", label: "Density", says: "", shown: "3.10 g/mL", value: 3.1, plus_minus: "", notes: [],
    working: { formula: "", numbers: "", constants: [{ name: "Density", shown: "3.10 g/mL", source: "invented", standing: "from memory" }], uses: [] } };
  const generic = card("generic-ocher", "Ocher cement", {
    generic: true, chapter: "To copy from", waiting: "Binder", figures: [figure],
    actions: [{ label: "Copy to my materials", append: "materials", value: { name: "Ocher cement" } }],
  });
  return { record, sheet: { title: "Materials", line: "", cards: [...own, generic], faults: [],
    actions: [{ label: "Add a material", append: "materials", value: {} }] } };
}

function countdown({ now, due }) {
  return due.map((each) => {
    const seconds = (new Date(each) - new Date(now)) / 1000;
    const shown = seconds > 60 ? `in ${Math.floor(seconds / 60)} min ${seconds % 60} s` : seconds > 0 ? `in ${seconds} s` : "now";
    if (seconds <= -60) return { shown: `${Math.floor(-seconds / 60)} min ago`, state: "past" };
    return { shown, state: seconds > 60 ? "running" : seconds > 0 ? "soon" : "due" };
  });
}

const calendar = ({ place, now, stamp }) => ({ name: "tide-cup.ics", kind: "text/calendar", text: `BEGIN:VCALENDAR\r\n${place} ${now} ${stamp}` });

const asks = { work_out: workOut, open_link: workOut, shelf, countdown, calendar, first: () => ({}) };

postMessage({ step: "ready", slow: "" });
addEventListener("message", ({ data: { id, ask, with: request } }) => {
  postMessage({ id, reply: JSON.stringify({ answer: asks[ask](request) }) });
});
