// Files that were chosen, kept on this device beside the book. A device that refuses keeps none, and nothing is lost by that:
// what was read from a file is in the record. A key is the vessel's id, a slash, and the place in its record.

const DATABASE = "brimbook";
const FILES = "files";

/** The key of a file: the vessel's id, and the place in its record. */
export const fileKey = (id, place) => `${id}/${place}`;

/** A request of the device's database as a promise. */
const done = (request) => new Promise((resolve, reject) => {
  request.addEventListener("success", () => resolve(request.result));
  request.addEventListener("error", () => reject(request.error));
  request.addEventListener("blocked", () => reject(new Error("another tab holds the files")));
});

async function opened() {
  const request = indexedDB.open(DATABASE, 1);
  request.addEventListener("upgradeneeded", () => request.result.createObjectStore(FILES));
  return done(request);
}

/** When all that a transaction did is on the device for good. */
const settled = (transaction) => new Promise((resolve, reject) => {
  transaction.addEventListener("complete", () => resolve());
  transaction.addEventListener("abort", () => reject(transaction.error));
});

/** Do one thing with the files, and see it done; `otherwise` where the device has none to offer. */
async function withFiles(mode, work, otherwise) {
  let database = null;
  try {
    database = await opened();
    const transaction = database.transaction(FILES, mode);
    const [result] = await Promise.all([done(work(transaction.objectStore(FILES))), settled(transaction)]);
    return result ?? otherwise;
  } catch {
    return otherwise;
  } finally {
    database?.close();
  }
}

/** Keep a file; says whether the device did. */
export const keepFile = async (key, file) => Boolean(await withFiles("readwrite", (files) => files.put(file, key), ""));

/** The file kept under a key, or null. */
export const keptFile = (key) => withFiles("readonly", (files) => files.get(key), null);

/** Forget a file. */
export const forgetFile = (key) => withFiles("readwrite", (files) => files.delete(key), undefined);

/** Forget the files of all vessels but these, by their ids. */
export async function forgetOthers(ids) {
  const keys = await withFiles("readonly", (files) => files.getAllKeys(), []);
  const lost = keys.filter((key) => !ids.some((id) => key.startsWith(fileKey(id, ""))));
  await Promise.all(lost.map(forgetFile));
}
