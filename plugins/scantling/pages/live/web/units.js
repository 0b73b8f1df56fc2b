// Inches or millimetres, for the whole site: what readers choose at the head of a page is kept on their device.
// Pages that hold both writings show the other one at once; those that the engine writes ask it.
import { forget, keep, recall } from "./store.js";

const NAME = "my shop"; // the units are one of the things that a reader says of their shop
const EVENT = "scantling-units";

export const chosen = () => recall(NAME).data?.units;
export const onChange = (listen) => {
  document.addEventListener(EVENT, listen);
  return () => document.removeEventListener(EVENT, listen);
};

// what a reader says of the units alone is forgotten when it is what the site says anyway
export const choose = (units, usual) => {
  const data = { ...recall(NAME).data, units };
  if (units === usual) delete data.units;
  if (Object.keys(data).length) keep(NAME, data);
  else forget(NAME);
  document.dispatchEvent(new CustomEvent(EVENT, { detail: { units } }));
};

// each piece with two writings shows the one that is wanted and keeps the other
const show = (units) => {
  for (const piece of document.querySelectorAll("[data-other]")) {
    if ((piece.dataset.units ?? "") === units) continue;
    const words = piece.dataset.other;
    if (piece.dataset.words === undefined) {
      piece.dataset.other = piece.textContent;
      piece.textContent = words;
    } else {
      piece.dataset.other = piece.dataset.words;
      piece.dataset.words = words;
    }
    piece.dataset.units = units;
  }
  document.dispatchEvent(new CustomEvent("scantling-reworded"));
};

let listens = false;
export const start = (root) => {
  const select = root.querySelector("select");
  const usual = root.dataset.units;
  const apply = () => {
    select.value = chosen() ?? usual;
    for (const piece of document.querySelectorAll("[data-other]:not([data-units])")) piece.dataset.units = usual;
    show(select.value);
  };
  root.hidden = false;
  apply();
  if (listens) return;
  listens = true;
  select.addEventListener("change", () => choose(select.value, usual));
  onChange(apply);
};
