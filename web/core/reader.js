// Reads one file in a worker of its own, bit by bit: each step is told, and the last word is the answer.

const NOT_OPENED = "The file couldn't be opened. Choose it again.";
const TOO_MUCH = "This device couldn't read so large a file. Save it with fewer triangles, or read it on another device.";

const fault = (sentence, error) => JSON.stringify({ fault: { sentence, detail: String(error) } });

/** A buffer as Python's bytes, copied once. */
const asBytes = (python, buffer) => python.pyimport("operator").methodcaller("to_bytes")(new Uint8Array(buffer));

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
 * @param {object} core what start gave: python and door
 * @param {object} asked file; ask, the core's name for this kind of reading; and with, its request
 * @param {(told: string) => void} tell called with each of the core's texts
 */
export async function readFile({ python, door }, { file, ask, with: request }, tell) {
  const data = await content(python, file, tell);
  if (!data) return;
  try {
    for (const told of door.reading(ask, JSON.stringify(request), data)) tell(told);
  } catch (error) {
    tell(fault(TOO_MUCH, error));
  }
}
