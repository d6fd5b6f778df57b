// New ids. Over plain http a browser offers no randomUUID, but it names every object URL with one.

/** An id that no other device makes. */
export function newId() {
  if (crypto.randomUUID) return crypto.randomUUID();
  const address = URL.createObjectURL(new Blob());
  URL.revokeObjectURL(address);
  return address.split("/").pop();
}
