// The shopping trip: a list of plans kept on this device, bought and cut as one.
import { ask, follow } from "./engine.js";
import * as faults from "./faults.js";
import * as mine from "./mine.js";
import { keep, recall, t } from "./store.js";

const NAME = "trip";
const DAMAGED = t("The list kept on this device was of another version or damaged, and is left out.");

export const start = (root) => {
  const plans = JSON.parse(root.dataset.plans);
  const list = root.querySelector("[data-trip-items]");
  const row = root.querySelector("[data-trip-row]");
  const say = root.querySelector("[data-live-say]");
  const progress = root.querySelector("progress");
  const kept = recall(NAME);
  const known = (item) => typeof item?.slug === "string" && Object.hasOwn(plans, item.slug);
  const listed = Array.isArray(kept.data) ? kept.data : [];
  let items = listed.filter(known);
  let busy = false;
  let again = false;

  const draw = (answered = []) => {
    root.querySelector("[data-trip-empty]").hidden = items.length > 0;
    root.querySelector("[data-trip-clear]").hidden = items.length === 0;
    list.replaceChildren(...items.map((item, at) => {
      const line = row.content.cloneNode(true).firstElementChild;
      const query = new URLSearchParams(item.chosen ?? {}).toString();
      const link = line.querySelector("a");
      link.textContent = plans[item.slug].title;
      link.href = `${plans[item.slug].at}?${query}`;
      line.querySelector("[data-trip-label]").textContent = answered[at]?.label ?? "";
      line.querySelector("[data-trip-cost]").textContent = answered[at]?.alone ?? "";
      const count = line.querySelector("input");
      count.value = item.count;
      count.dataset.at = at;
      count.setAttribute("aria-label", t("how many of {plan}", { plan: plans[item.slug].title }));
      line.querySelector("[data-trip-remove]").dataset.at = at;
      const changed = line.querySelector("[data-trip-changed]");
      faults.changed(changed, answered[at]?.changed);
      Object.assign(changed.querySelector("button").dataset, { at, revised: answered[at]?.revised ?? "" });
      line.querySelector("[data-fault]").dataset.fault = `item ${at}`;
      return line;
    }));
  };

  const site = () => ({
    engine: root.dataset.engine,
    shop: new URL(root.dataset.shop, location.href).href,
    display: JSON.parse(root.dataset.display),
    plans: Object.fromEntries(items.map(({ slug }) => [slug, new URL(`${plans[slug].at}live.json`, location.href).href])),
  });

  const update = async () => {
    again = true;
    if (busy) return;
    busy = true;
    root.setAttribute("aria-busy", "true");
    while (again) {
      again = false;
      try {
        if (items.length) take(await ask({ ask: "trip", items, mine: mine.settings() }, site()));
        else take({ ok: true, items: [], fragments: {}, warnings: [], say: "" });
      } catch (error) {
        faults.clear(root);
        faults.show(root, [{ control: "", message: t("The list cannot be worked out here: {why}.", { why: error.message }), help: "" }]);
        say.textContent = "";
      }
    }
    busy = false;
    root.removeAttribute("aria-busy");
  };

  const take = (answer) => {
    faults.clear(root);
    if (!answer.ok) return faults.show(root, answer.faults);
    const at = document.activeElement?.dataset?.at;
    draw(answer.items);
    if (at !== undefined) list.children[at]?.querySelector("input").focus();
    for (const block of document.querySelectorAll("[data-fragment]")) {
      block.innerHTML = answer.fragments[block.dataset.fragment] ?? "";
      block.closest("[data-trip-part]").hidden = !block.innerHTML;
    }
    document.dispatchEvent(new CustomEvent("scantling-changed"));
    faults.show(root, answer.warnings, { doubtful: true });
    say.textContent = answer.say;
  };

  const save = () => {
    keep(NAME, items);
    update();
  };
  list.addEventListener("change", ({ target }) => {
    items[target.dataset.at].count = Number(target.value);
    save();
  });
  root.addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (button?.matches("[data-trip-remove]")) {
      items = items.filter((_, at) => String(at) !== button.dataset.at);
      draw();
      root.querySelector("h2").focus();
      save();
    }
    if (button?.matches("[data-trip-seen]")) {
      items[button.dataset.at].revised = button.dataset.revised;
      save();
    }
    if (button?.matches("[data-trip-clear]")) {
      items = [];
      draw();
      root.querySelector("h2").focus(); // the button goes with what it emptied
      save();
    }
  });

  const stop = follow((state) => {
    if (!root.isConnected) return stop();
    progress.hidden = !state?.words;
    if (state) progress.value = state.stage;
    if (state?.words) say.textContent = `${state.words}…`;
  });
  const panel = mine.attach(root, update);
  draw();
  root.inert = false;
  for (const trouble of [panel.damaged, kept.damaged || items.length < listed.length ? DAMAGED : ""])
    if (trouble) faults.show(root, [{ control: "", message: trouble, help: "" }]);
  if (items.length) update();
};
