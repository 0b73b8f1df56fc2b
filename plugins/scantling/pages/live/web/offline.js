// Lets the pages that were used be opened again without a network; what was not used is not kept.
import { base } from "./store.js";

export const register = async (engine) => {
  if (!("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register(new URL("scantling-sw.js", base), { scope: base.pathname });
    const { active } = await navigator.serviceWorker.ready;
    const used = performance.getEntriesByType("resource").map((entry) => entry.name);
    const files = ["pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "stdlib.zip", "engine.zip", "lock.json"];
    const parts = files.map((name) => new URL(`assets/scantling/live/${engine}/${name}`, base).href);
    const scripts = [new URL("worker.js", import.meta.url).href];
    const own = [location.origin + location.pathname, ...used, ...parts, ...scripts];
    active.postMessage({ keep: own.filter((address) => address.startsWith(base.href)) });
  } catch { /* the page works without; only not offline */ }
};
