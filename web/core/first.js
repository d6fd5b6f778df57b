// What the build worked out beforehand, so that the first paint needs no Python.

/** The core's answer to "first", made at build time: blank, sheet, shelf, demos, settings, settings_form. */
export async function firstAnswer() {
  const response = await fetch(new URL("../first.json", import.meta.url));
  if (!response.ok) throw new Error("The first page could not be read.");
  const reply = await response.json();
  return reply.answer ?? reply;
}
