// Local storage that may be forbidden or full. Then things are kept in memory, and the page says so.

const PREFIX = "brimbook.";
const memory = new Map();
const gone = new Set();

/** Whether everything so far reached the device's storage. */
export const store = { sound: true };

function inStorage(work, otherwise) {
  try {
    return work();
  } catch {
    store.sound = false;
    return otherwise;
  }
}

/** The text kept under a name, or null. What had to stay in memory is newer than what is stored. */
export function get(name) {
  if (memory.has(name)) return memory.get(name);
  if (gone.has(name)) return null;
  return inStorage(() => localStorage.getItem(`${PREFIX}${name}`), null);
}

/** Keep a text under a name; in memory when the device's storage refuses it. */
export function put(name, text) {
  gone.delete(name);
  const done = inStorage(() => {
    localStorage.setItem(`${PREFIX}${name}`, text);
    return true;
  }, false);
  if (done) memory.delete(name);
  else memory.set(name, text);
}

/** Forget a name. */
export function drop(name) {
  memory.delete(name);
  gone.add(name);
  inStorage(() => localStorage.removeItem(`${PREFIX}${name}`), undefined);
}

/** The names kept that begin so, each without that beginning. */
export function names(beginning) {
  const whole = `${PREFIX}${beginning}`;
  const stored = inStorage(() => Object.keys(localStorage), []);
  const here = stored.filter((key) => key.startsWith(whole)).map((key) => key.slice(whole.length));
  const kept = [...memory.keys()].filter((key) => key.startsWith(beginning)).map((key) => key.slice(beginning.length));
  return [...new Set([...here, ...kept])].filter((name) => !gone.has(`${beginning}${name}`));
}

/** Be told when another tab changes something: its name and new text, or null when it went. */
export function onOtherTab(listener) {
  addEventListener("storage", ({ key, newValue }) => {
    if (!key?.startsWith(PREFIX)) return;
    const name = key.slice(PREFIX.length);
    if (newValue !== null) gone.delete(name);
    listener(name, newValue);
  });
}
