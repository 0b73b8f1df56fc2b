// Small comforts of a page; everything reads without them.
(() => {
  "use strict";

  // opened as a file, a folder's address shows no page
  const mend = () => {
    if (location.protocol !== "file:") return;
    for (const link of document.querySelectorAll("a[href$='/']"))
      if (link.protocol === "file:") link.href = link.href + "index.html";
  };

  // ticks in the aisle stay on this device, plan by plan
  const key = (box) => `scantling ticked ${location.pathname} ${box.dataset.check}`;
  const recall = () => {
    for (const box of document.querySelectorAll("input[data-check]")) {
      try { box.checked = localStorage.getItem(key(box)) !== null; } catch { return; }
    }
  };
  document.addEventListener("change", ({ target }) => {
    if (!target.matches("input[data-check]")) return;
    try {
      if (target.checked) localStorage.setItem(key(target), "1");
      else localStorage.removeItem(key(target));
    } catch { /* a reader who forbids storage still ticks */ }
  });

  // a table that is wider than the screen scrolls by key as well
  const reach = () => {
    for (const box of document.querySelectorAll(".md-typeset__scrollwrap, pre > code")) {
      if (box.scrollWidth > box.clientWidth) box.tabIndex = 0;
      else box.removeAttribute("tabindex");
    }
  };
  addEventListener("resize", reach);

  // paper says where it comes from, at the reader's own size
  addEventListener("beforeprint", () => {
    for (const told of document.querySelectorAll(".sc-address")) told.textContent = told.dataset.address + location.search;
  });

  // a list that was worked out anew gets its ticks back
  document.addEventListener("scantling-changed", recall);

  const ready = () => { mend(); recall(); setTimeout(reach, 50); };
  if (typeof document$ !== "undefined") document$.subscribe(ready);
  else if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", ready);
  else ready();
})();
