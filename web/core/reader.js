// Reads one file in a worker of its own, bit by bit: each step is told, and the last word is the answer.

const NOT_OPENED = "The file couldn't be opened. Choose it again.";
const NOT_THERE = "The part that reads files could not be fetched. Try again.";
const TOO_MUCH = "This device couldn't read so large a file. Save it with fewer triangles, or read it on another device.";

const ARCHIVE = "/reading.zip";

const fault = (sentence, error) => JSON.stringify({ fault: { sentence, detail: String(error) } });

/** A buffer as Python's bytes, copied once. */
const asBytes = (python, buffer) => python.pyimport("operator").methodcaller("to_bytes")(new Uint8Array(buffer));

/** The part of the core that reads files. It is not in the image: an image's start takes it from an archive, any other has it. */
async function reading(python) {
  const bring = python.globals.get("bring");
  if (bring) {
    python.FS.writeFile(ARCHIVE, new Uint8Array(await (await fetch(new URL("../image/reading.zip", import.meta.url))).arrayBuffer()));
    bring(ARCHIVE);
  }
  return python.pyimport("brimbook.reading.file");
}

/** The file's content as Python's bytes. It may be gone since it was chosen, or lie where the network would be needed. */
async function content(python, file, tell) {
  try {
    return asBytes(python, await file.arrayBuffer());
  } catch (error) {
    tell(fault(NOT_OPENED, error));
    return null;
  }
}

/**
 * Read a file; always ends with an answer or a fault.
 * @param {object} core what start gave: python
 * @param {object} asked file; ask, the core's name for this kind of reading; and with, its request
 * @param {(told: string) => void} tell called with each of the core's texts
 */
export async function readFile({ python }, { file, ask, with: request }, tell) {
  const data = await content(python, file, tell);
  if (!data) return;
  const reader = await reading(python).catch((error) => tell(fault(NOT_THERE, error)));
  if (!reader) return;
  try {
    for (const told of reader.read(ask, JSON.stringify(request), data)) tell(told);
  } catch (error) {
    tell(fault(TOO_MUCH, error));
  }
}
