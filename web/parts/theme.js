// A classic script, run before the first paint: a chosen dark page must not flash white at night.
(() => {
  try {
    const theme = localStorage.getItem("brimbook.theme");
    if (theme === "light" || theme === "dark") document.documentElement.dataset.theme = theme;
  } catch {
    // Storage may be forbidden; the device's own theme then stands.
  }
})();
