// A worker that stands in for the core: small answers, made from the record, for trying the page by itself.

const field = (path, label, kind, record, more = {}) => ({
  path, label, kind, value: path.split(".").reduce((part, key) => part?.[key], record) ?? "", unit: kind === "mass" ? "g" : "",
  echo: "", fault: "", note: "", hint: "", keys: kind === "mass" ? ["g", "oz"] : [], choices: [], ...more,
});
const mended = (made) => (/[a-z]{4}/.test(made.value) ? { ...made, fault: `${made.label} can't be read. Type it again.` } : made);
const card = (id, title, more) => ({
  id, title, question: "", waiting: "Type a weight.", fields: [], more: [], answer: [], large: [], figures: [], notes: [], cautions: [],
  beside: null, drawing: "", drawing_text: "", actions: [], groups: [], timers: [], saves: [], prints: [], table: null, drag: null,
  picks: [], chapter: "", ...more,
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

// A file that can be chosen; only a record with a pick has one, which says what is special about it.
const picks = ({ pick }) => (pick ? [{ label: "Choose the file", reading: "model", place: "casts.0", accept: ".stl", keep: true, again: false,
  says: "", most_bytes: 1000, too_large: "This file is larger than 1 kB.", ...pick, name: pick.name ?? "" }] : []);

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
      picks: place ? [] : picks(record),
      actions: [{ label: "My materials", go: "#/materials" }, { label: "Clear the weight", clear: [at("weight"), at("binder")] }],
    }),
    card(`log${number}`, `Log${number}`, {
      chapter: "Set and dry", question: "When was it poured?", fields: [field(at("started"), "Started", "moment", record)],
      groups: pours.map((_, row) => pour(record, row)), timers: cast.due?.map((due, row) => ({ label: ["Demold", "Unwrap"][row], due })) ?? [],
      saves, actions: [{ label: "Add a pour", append: at("pours"), value: {}, sets: { [at("binder")]: "Dune sand" } }],
    }),
  ];
}

// A plan of marks, 1 mm for each unit of the drawing, that can be moved; only a record with a plan has one.
const marks = ({ plan }) => plan.at ?? [{ x: "120 mm", y: "100 mm" }, { x: "240 mm", y: "100 mm" }];
const handle = ({ x, y }, row) => `<g class="handle" data-row="${row}" tabindex="0" role="button" aria-label="Mark ${row + 1}, ${x} from the left, ${y} down">
  <circle class="hit" cx="${parseFloat(x)}" cy="${parseFloat(y)}" r="17"/><circle class="wick" cx="${parseFloat(x)}" cy="${parseFloat(y)}" r="6"/>
  <text class="label" x="${parseFloat(x) + 8}" y="${parseFloat(y) - 8}">${row + 1}</text></g>`;
const planDrawing = (record) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 350 240" class="plan"><ellipse class="outline" cx="175" cy="110" rx="150" ry="95"/>
  ${marks(record).map(({ x, y }) => `<circle class="pool" cx="${parseFloat(x)}" cy="${parseFloat(y)}" r="60"/><circle class="pool-edge" cx="${parseFloat(x)}" cy="${parseFloat(y)}" r="60"/>`).join("")}
  <ellipse class="clearance" cx="175" cy="110" rx="138" ry="83"/><circle class="worst" cx="175" cy="200" r="7"/><text class="label-small worst" x="190" y="212">worst spot</text>
  ${marks(record).map(handle).join("")}<line class="scale" x1="20" y1="225" x2="70" y2="225"/><text class="label-small scale" x="78" y="230">50 mm</text></svg>`;
const far = (record) => marks(record).map(({ x }) => x).join(", ");

function planCard(record) {
  const { plan } = record;
  const rows = ["1", "2", "3"].map((count) => ({ cells: [count, `${60 / count} mm`, "fits"], chosen: plan.count === count,
    sets: { "plan.count": count }, says: `${count} of them, each ${60 / count} mm across` }));
  return card("plan", "Plan", {
    chapter: "Plan", question: "How many?", fields: [field("plan.across", "Across", "length", record), field("plan.path", "Path", "text", record)],
    answer: [{ label: "from the left", shown: far(record), key: "far" }], drawing: planDrawing(record), drawing_text: "A plan with its marks.",
    table: { columns: ["Marks", "Each", "Verdict"], rows: [...rows, { cells: ["4", "9 mm", "no room"], chosen: false, sets: {}, says: "" }], says: "Fewest first." },
    drag: { ask: "move_mark", place: "plan" }, prints: [{ label: "Print the sheet", ask: "sheet_pages", place: "plan" }],
    groups: (plan.burns ?? []).map((_, row) => ({ id: `burn-${row}`, title: `Burn ${row + 1}`, summary: "", open: true,
      fields: [field(`plan.burns.${row}.lit_at`, "Lit at", "moment", record), field(`plan.burns.${row}.note`, "Note", "text", record)] })),
    actions: [{ label: "Light it", append: "plan.burns", value: { lit_at: "", note: "new" }, now: ["lit_at"] },
      { label: "Note a batch", append: "plan.batches", value: { made_on: "" }, today: ["made_on"] }],
    timers: (plan.burns ?? []).filter(({ lit_at: lit }) => lit).map(({ lit_at: lit }) => ({ label: "Put it out", due: later(lit) })),
  });
}

const two = (number) => String(number).padStart(2, "0");
const later = (moment) => `${moment.slice(0, 11)}${two(Number(moment.slice(11, 13)) + 1)}${moment.slice(13)}`;

function moveMark({ record, place, row, x, y, step, far: isFar }) {
  if (place !== "plan" || typeof row !== "number") throw new Error("There is no such mark.");
  if (record.plan.fixed) throw new Error("This mark stays where it is.");
  const all = marks(record);
  const was = [parseFloat(all[row].x), parseFloat(all[row].y)];
  const [right, down] = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] }[step] ?? [0, 0];
  const length = isFar ? 5 : 1;
  const [toX, toY] = step ? [was[0] + right * length, was[1] + down * length] : [Math.min(Math.max(x, 40), 310), Math.min(Math.max(y, 40), 180)];
  const moved = all.map((mark, place) => (place === row ? { x: `${toX.toFixed(1)} mm`, y: `${toY.toFixed(1)} mm` } : mark));
  return { sets: Object.fromEntries(moved.flatMap((mark, place) => [[`plan.at.${place}.x`, mark.x], [`plan.at.${place}.y`, mark.y]])) };
}

function sheetPages({ record, place }) {
  const { sheets = 2, paper: [width, height] = ["210mm", "297mm"] } = record.plan;
  if (!place || sheets > 12) throw new Error("This takes too many pages.");
  const pages = Array.from({ length: sheets }, (_, page) => `<svg xmlns="http://www.w3.org/2000/svg" class="true-size" width="${width}"
    height="${height}" viewBox="0 0 ${parseFloat(width)} ${parseFloat(height)}" fill="none" stroke="#000"><path d="M20 250L120 250" stroke-width="0.35"/>
    <rect x="0.5" y="0.5" width="209" height="296" stroke-width="0.2"/><text x="20" y="30" font-size="6" fill="#000" stroke="none">Sheet ${page + 1}</text></svg>`);
  return { title: "Tide cup: template", paper: "A4", width, height, pages };
}

function workOut({ record, materials, wicks }) {
  if (!Array.isArray(materials) || !Array.isArray(wicks)) throw new Error("no materials or wicks came along");
  const whole = { ...record, casts: record.casts ?? [{}] };
  const cards = [...whole.casts.flatMap((_, place) => castCards(whole, place)), ...(whole.plan ? [planCard(whole)] : [])];
  const adds = [{ label: "Add a mold", append: "casts", value: {} }];
  const removes = whole.casts.slice(1).map((_, row) => ({ label: `Remove mold ${row + 2}`, remove: `casts.${row + 1}` }));
  const notes = [...materials, ...wicks].map(({ name }) => `On your shelf: ${name}.`);
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
  const wicks = (record.wicks ?? []).map(({ name }, row) => card(`wick-${row + 1}`, name || "New wick", {
    chapter: row ? "" : "Wicks", fields: [field(`wicks.${row}.name`, "Name", "text", record), field(`wicks.${row}.pool`, "Pool", "length", record)],
    waiting: "Type its pool.", actions: [{ label: "Remove this wick", remove: `wicks.${row}` }],
  }));
  return { record, sheet: { title: "Materials", line: "", cards: [...own, ...wicks, generic], faults: [],
    actions: [{ label: "Add a material", append: "materials", value: {} }, { label: "Add a wick", append: "wicks", value: {} }] } };
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

// What to make: a card for each vessel of the plan, and one with what to buy, whose list names what came along.
function shopping({ record, vessels, materials }) {
  if (!Array.isArray(materials) || !vessels) throw new Error("no vessels or materials came along");
  const toMake = record.plan.map(({ id }, row) => card(`make-${row + 1}`, vessels[id]?.name || "Not in the book any more", {
    fields: [field(`plan.${row}.count`, "How many to make", "count", record)], actions: [{ label: "Take it off the plan", remove: `plan.${row}` }],
  }));
  const columns = ["What", "Needed", "On the shelf", "Missing", "Packs", "Price"];
  const buy = card("buy", "What to buy", { answer: [{ label: "to pay", shown: `${toMake.length * 12} USD`, key: "pay" }],
    table: { columns, rows: [{ cells: ["Ocher cement of the large sack", "12.4 kg", "3.1 kg", "9.3 kg", "1 of 25 kg", "18.50 USD"], chosen: false, sets: {}, says: "" }], says: "" },
    prints: [{ label: "Print the list", ask: "shopping_pages", place: "plan" }], saves: [{ label: "Pass the list on", ask: "shopping_list", place: "plan" }] });
  return { record, sheet: { title: "Make and buy", line: "", faults: [], cards: toMake.length ? [...toMake, buy] : [], actions: [] } };
}

const shoppingList = ({ vessels }) => ({ name: "to-buy.txt", kind: "text/plain", text: `For ${Object.values(vessels).map(({ name }) => name).join(", ")}` });
const shoppingPages = (request) => sheetPages({ record: { plan: { sheets: Object.keys(request.vessels).length } }, place: request.place });

function trace({ entries, sought }) {
  const rows = entries.filter(({ record }) => record.batches?.some(({ lot }) => lot.includes(sought)))
    .map(({ record: { id, name } }) => ({ id, name, lines: [`Batch ${sought}, 12 vessels`, "Went to: 3 to the corner shop"] }));
  return { rows, says: `Lot ${sought} went into ${rows.length} vessels.` };
}

// A vessel is behind where its price is not that of the shelf's first material.
function outdated({ entries, materials: [{ name, pack } = {}] }) {
  const behind = entries.filter(({ record }) => pack && record.price && record.price !== pack);
  if (!behind.length) return [];
  return [{ name, says: `${name} costs ${pack} now, and ${behind.length} of your vessels have another price.`,
    vessels: behind.map(({ record }) => ({ id: record.id, name: record.name, sets: { price: pack } })) }];
}

const asks = {
  shopping, shopping_list: shoppingList, shopping_pages: shoppingPages, trace, outdated, work_out: workOut, open_link: workOut, shelf, countdown, calendar, move_mark: moveMark, sheet_pages: sheetPages, first: () => ({}),
};

postMessage({ step: "ready", slow: "" });
function reply(ask, request) {
  try {
    return { answer: asks[ask](asked(request)) };
  } catch (error) {
    return { fault: { sentence: error.message, detail: "" } };
  }
}

// A request that comes as bytes is a text that has the book on its further lines, an entry on each.
function asked(request) {
  if (!(request instanceof Uint8Array)) return request;
  const [first, ...rest] = new TextDecoder().decode(request).split("\n");
  const { texts, ...others } = JSON.parse(first);
  return { ...others, entries: rest.slice(0, texts).map((text) => JSON.parse(text)), text: rest.slice(texts).join("\n") };
}

// A file tells what is to become of it: so many steps, each so many milliseconds long, then its answer, its fault or a crash.
async function readFile(file) {
  const { steps = 1, wait = 0, crash = false, ...end } = JSON.parse(await file.text());
  for (let step = 0; step < steps; step += 1) {
    postMessage({ told: JSON.stringify({ progress: { share: step / steps, says: `Layer ${step + 1}` } }) });
    await new Promise((resolve) => setTimeout(resolve, wait));
  }
  if (crash) setTimeout(() => { throw new Error("out of memory"); });
  else postMessage({ told: JSON.stringify(end) });
}

addEventListener("message", ({ data: { id, ask, with: request, file } }) => file ? readFile(file) : postMessage({ id, reply: JSON.stringify(reply(ask, request)) }));
