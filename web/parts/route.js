// Which screen the address asks for. A fragment that begins with "/" is the page's own;
// any other is a vessel carried in a link.

/**
 * The route of the present address: {page, id} with page "start", "shelf", "new", "vessel", "materials", "plan", "lots", "book",
 * "settings", "demo" or "link".
 */
export function route() {
  const fragment = location.hash.slice(1);
  if (!fragment) return { page: "start", id: "" };
  if (!fragment.startsWith("/")) return { page: "link", id: fragment };
  const [, page, id] = fragment.split("/");
  return { page: page || "shelf", id: id ? decodeURIComponent(id) : "" };
}

/** The fragment of a vessel in the book. */
export const vesselAddress = (id) => `#/vessel/${encodeURIComponent(id)}`;

/** The fragment of an example vessel. */
export const demoAddress = (id) => `#/demo/${encodeURIComponent(id)}`;

/** The fragment of the page where a lot is looked for. */
export const lotAddress = (lot) => `#/lots/${encodeURIComponent(lot)}`;

/** The page's address without its fragment. */
export const bareAddress = () => location.href.split("#").at(0);

/** Go somewhere without leaving a step behind for the back button. */
export function replaceRoute(fragment) {
  history.replaceState(null, "", fragment);
  dispatchEvent(new HashChangeEvent("hashchange"));
}

/** What the present step of the history remembers, such as which card lies open. */
export const remembered = () => history.state ?? {};

/** Remember something with the present step; a reload and the back button bring it back. */
export function remember(what) {
  history.replaceState({ ...remembered(), ...what }, "");
}

/** Change the address alone, while the screen stays as it is. */
export function renameRoute(fragment) {
  history.replaceState(history.state, "", fragment);
}

/** What lies over the screen ("share", "keep", "choose"), or "". The back button takes it away. */
export const over = () => history.state?.over ?? "";

/** Lay something over the screen. */
export function openOver(name) {
  history.pushState({ ...remembered(), over: name }, "");
  dispatchEvent(new PopStateEvent("popstate"));
}

/** Take away what lies over the screen. */
export function closeOver() {
  if (over()) history.back();
}
