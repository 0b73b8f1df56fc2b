// My shop: the panel, and what of it is kept on this device.
import { forget, keep, recall, t } from "./store.js";
import { choose, onChange } from "./units.js";

const NAME = "my shop";
const DAMAGED = t("The settings kept on this device were of another version or damaged, and are left out.");

export const settings = () => recall(NAME).data;

// whether readers said anything that is not as the page has it anyway
const isOwn = (data, display) => Object.entries(data ?? {}).some(([name, value]) => {
  if (name in display) return value && String(value) !== String(display[name]);
  return typeof value === "object" ? Object.keys(value ?? {}).length > 0 : Boolean(value);
});

export const attach = (root, changed) => {
  const panel = root.querySelector(".sc-mine");
  const list = panel.querySelector("[data-mine-owned]");
  const row = panel.querySelector("[data-mine-row]");
  const kept = recall(NAME);
  if (kept.damaged) forget(NAME);

  const addRow = (stock, size, count) => {
    const item = row.content.cloneNode(true).firstElementChild;
    const box = (name) => item.querySelector(`[data-owned="${name}"]`);
    if (stock) box("stock").value = stock;
    if (stock && box("stock").value !== stock) return null; // of a stock that this page does not list
    if (size) box("size").value = size;
    if (count) box("count").value = count;
    list.append(item);
    return item;
  };

  const fill = (data) => {
    for (const box of panel.querySelectorAll("[data-mine]")) {
      const value = data?.[box.dataset.mine];
      if (box.matches("select")) for (const choice of box.options) choice.selected = value ? choice.value === String(value) : choice.defaultSelected;
      else box.value = typeof value === "string" ? value : "";
    }
    const leftOut = Array.isArray(data?.["left out"]) ? data["left out"] : [];
    for (const box of panel.querySelectorAll("[data-mine-carried]")) box.checked = !leftOut.includes(box.dataset.mineCarried);
    for (const box of panel.querySelectorAll("[data-mine-price]")) {
      const price = data?.prices?.[box.dataset.minePrice];
      box.value = typeof price === "string" ? price : "";
    }
    list.replaceChildren();
    for (const [stock, sizes] of Object.entries(data?.owned ?? {}))
      for (const [size, count] of Object.entries(sizes ?? {})) addRow(stock, size, count);
    name();
  };

  // what this page does not show (another plan's boards) is kept as it was
  const read = () => {
    const before = settings() ?? {};
    const made = { ...before };
    for (const box of panel.querySelectorAll("[data-mine]")) {
      if (box.matches("select")) made[box.dataset.mine] = box.dataset.mine === "fraction" ? Number(box.value) : box.value;
      else made[box.dataset.mine] = box.value;
    }
    const here = new Set([...panel.querySelectorAll("[data-mine-carried]")].map((box) => box.dataset.mineCarried));
    made["left out"] = (Array.isArray(before["left out"]) ? before["left out"] : []).filter((id) => !here.has(id));
    for (const box of panel.querySelectorAll("[data-mine-carried]:not(:checked)")) made["left out"].push(box.dataset.mineCarried);
    made.prices = { ...before.prices };
    for (const box of panel.querySelectorAll("[data-mine-price]")) {
      if (box.value.trim()) made.prices[box.dataset.minePrice] = box.value.trim();
      else delete made.prices[box.dataset.minePrice];
    }
    const listed = new Set([...row.content.querySelectorAll("option")].map((option) => option.value));
    made.owned = Object.fromEntries(Object.entries(before.owned ?? {}).filter(([stock]) => !listed.has(stock)));
    for (const item of list.children) {
      const [count, stock, size] = ["count", "stock", "size"].map((name) => item.querySelector(`[data-owned="${name}"]`).value.trim());
      if (size) made.owned[stock] = { ...made.owned[stock], [size]: count };
    }
    return made;
  };

  // each row answers for what it says
  const name = () => {
    for (const item of list.children) {
      const [stock, size] = ["stock", "size"].map((part) => item.querySelector(`[data-owned="${part}"]`));
      size.dataset.control = `mine owned ${stock.value} ${size.value.trim()}`;
    }
  };

  const save = (control) => {
    name();
    keep(NAME, read());
    changed(control);
  };

  panel.addEventListener("change", ({ target }) => save(target.dataset.control ?? ""));
  panel.addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (!button) return;
    if (button.matches("[data-mine-add]")) addRow().querySelector('[data-owned="size"]').focus();
    if (button.matches("[data-owned-remove]")) {
      button.closest("li").remove();
      panel.querySelector("[data-mine-add]").focus();
      save("");
    }
    if (button.matches("[data-mine-reset]")) {
      forget(NAME);
      fill(null);
      changed("");
    }
  });
  // the switch at the head of the page and the field here are one
  const stop = onChange(() => {
    if (!root.isConnected) return stop();
    fill(settings());
    changed("");
  });
  const units = document.querySelector(".sc-units select");
  panel.querySelector('[data-mine="units"]').addEventListener("change", (event) => {
    if (!units) return;
    event.stopPropagation();
    choose(event.target.value, units.parentElement.dataset.units);
  });
  fill(kept.data);
  return { damaged: kept.damaged ? DAMAGED : "", isSet: () => isOwn(settings(), JSON.parse(root.dataset.display)) };
};
