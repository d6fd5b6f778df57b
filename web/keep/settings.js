// The maker's settings: the core's own, the page's theme, and the blank that goes with the settings.

import { drop, get, put } from "./store.js";

const THEMES = ["light", "dark"];

/** The names of the settings in the device's storage. */
export const SETTINGS = ["settings", "settings-made"];

function read(name) {
  try {
    return JSON.parse(get(name) ?? "null");
  } catch {
    return null;
  }
}

/** The core's settings as the maker chose them; empty means the core's defaults. */
export function settings() {
  return read("settings") ?? {};
}

/** Keep the core's settings with the blank record and the form the core made for them. */
export function keepSettings(chosen, made) {
  put("settings", JSON.stringify(chosen));
  if (made) put("settings-made", JSON.stringify(made));
}

/** What the core made of the settings last: {blank, settings_form}, or null before any change. */
export function madeForSettings() {
  return read("settings-made");
}

/** "auto", "light" or "dark". */
export function theme() {
  const chosen = get("theme");
  return THEMES.includes(chosen) ? chosen : "auto";
}

/** Choose a theme and show it at once. */
export function chooseTheme(name) {
  if (THEMES.includes(name)) put("theme", name);
  else drop("theme");
  showTheme();
}

/** Put the chosen theme on the page, and its paper on the frame that the device draws around it. */
export function showTheme() {
  const name = theme();
  const page = document.documentElement;
  if (name === "auto") delete page.dataset.theme;
  else page.dataset.theme = name;
  const paper = getComputedStyle(page).getPropertyValue("--paper").trim();
  for (const meta of document.querySelectorAll("meta[name=theme-color]")) meta.content = paper;
}
