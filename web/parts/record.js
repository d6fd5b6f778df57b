// Reading and writing a record by path ("casts.0.cavity.readings.0.water"), without knowing what it means.

const isPlace = (key) => /^\d+$/.test(key);

/** The text at a path, or undefined. */
export function readAt(record, path) {
  return path.split(".").reduce((part, key) => part?.[key], record);
}

/** The path of the thing that holds this path's last part, and that last part. */
function split(path) {
  const keys = path.split(".");
  const last = keys.pop();
  return { keys, last };
}

/** The holder at the end of the keys; what is missing on the way is made. */
function holderAt(record, keys, last) {
  const following = [...keys.slice(1), last];
  return keys.reduce((part, key, place) => {
    part[key] ??= isPlace(following.at(place)) ? [] : {};
    return part[key];
  }, record);
}

/** A copy of the record with this value at the path. */
export function withAt(record, path, value) {
  const copy = structuredClone(record);
  const { keys, last } = split(path);
  holderAt(copy, keys, last)[last] = value;
  return copy;
}

/** A copy of the record with several texts written, by path. */
export const withTexts = (record, texts) => Object.entries(texts).reduce((made, [path, text]) => withAt(made, path, text), record);

/** A copy of the record with one more item at the end of a list. */
export function withItem(record, listPath, item) {
  return withAt(record, listPath, [...(readAt(record, listPath) ?? []), structuredClone(item)]);
}

/** A copy of the record without one item of a list. */
export function withoutItem(record, itemPath) {
  const { keys, last } = split(itemPath);
  const list = keys.join(".");
  return withAt(record, list, readAt(record, list).filter((_, place) => String(place) !== last));
}

/** The names that hold something: a text left empty says no more than a missing one. */
const filled = (part) => Object.keys(part).filter((name) => part[name] !== "");

/** Whether two plain values say the same, whatever the order of their names. */
export function same(one, other) {
  if (one === other) return true;
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return false;
  const names = filled(one);
  return names.length === filled(other).length && names.every((name) => same(one[name], other[name]));
}
