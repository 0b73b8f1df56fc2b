// Wakes the live parts of a page; a page without them, or a browser without modules, loads nothing more.
(() => {
  "use strict";
  const here = document.currentScript.src;
  const t = (words) => words; // as in store.js
  const wake = () => {
    const units = document.querySelector(".sc-units");
    if (units && location.protocol !== "file:") import(new URL("units.js", here)).then(({ start }) => start(units)).catch(() => {});
    for (const root of document.querySelectorAll(":is([data-live], [data-viewer]):not([data-awake])")) {
      root.dataset.awake = "";
      if (location.protocol === "file:") {
        root.hidden = true;
        for (const words of document.querySelectorAll("[data-live-file]")) words.hidden = false;
        continue;
      }
      import(new URL(`${root.dataset.live ?? "turn"}.js`, here))
        .then((page) => page.start(root))
        .catch(() => {
          const words = document.createElement("p");
          words.className = "sc-live__without";
          words.textContent = root.dataset.failed ?? t("The script that works out other sizes could not be loaded. The sizes above still work.");
          root.before(words);
          root.hidden = true;
        });
    }
  };
  if (typeof document$ !== "undefined") document$.subscribe(wake);
  else if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", wake);
  else wake();
})();
