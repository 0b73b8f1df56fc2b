// The fields of a calculator: they send what was typed to the engine and put the answer into the page.
import { ask, follow } from "./engine.js";
import * as faults from "./faults.js";
import * as mine from "./mine.js";
import { t } from "./store.js";
import { onChange } from "./units.js";

const PAUSE = 250; // after the last key, ms
const STILL = t("The worked example still stands.");

export const start = (root) => {
  const { calculator, engine } = root.dataset;
  const here = new URL(location.pathname, location.href);
  const site = { engine, shop: new URL(root.dataset.shop, here).href, display: JSON.parse(root.dataset.display), plans: {} };
  // the worked example is written in both units: 400 square feet to the gallon are not 400 square metres to the litre
  const texts = (units) => JSON.parse(units === site.display.units ? root.dataset.start : root.dataset.otherStart);
  const usual = mine.settings()?.units ?? site.display.units;
  let begin = { ...texts(usual), units: usual };
  const say = root.querySelector("[data-live-say]");
  const progress = root.querySelector("progress");
  const block = document.querySelector('[data-fragment="answer"]');
  const story = document.querySelector("[data-calc-story]");
  const fields = [...root.querySelectorAll("[data-name]")];
  let timer;
  let busy = false;
  let next = null;

  const read = () => Object.fromEntries(fields.map((field) => [field.dataset.name, field.value]));
  const changed = () => Object.entries(read()).filter(([name, text]) => text !== begin[name]);
  const fill = (texts) => {
    for (const field of fields) {
      const text = texts[field.dataset.name] ?? begin[field.dataset.name];
      field.value = text;
      if (field.matches("select") && field.selectedIndex < 0) field.value = begin[field.dataset.name];
    }
  };

  // what still stands as the example has it is written in the unit that is shown now
  const measureIn = (units, chosen) => {
    const before = begin;
    begin = { ...texts(units), units: chosen };
    for (const field of fields) {
      const name = field.dataset.name;
      if (name === "units") field.value = units;
      else if (field.value === before[name]) field.value = begin[name];
    }
  };

  // one question at a time; of those that come meanwhile only the last is asked
  const update = async (address) => {
    clearTimeout(timer);
    next = { address };
    if (busy) return;
    busy = true;
    root.setAttribute("aria-busy", "true");
    while (next) {
      const { address: how } = next;
      next = null;
      try {
        take(await ask({ ask: "calculate", calculator, chosen: read(), mine: mine.settings() }, site), how);
      } catch (error) {
        faults.clear(root);
        faults.show(root, [{ control: "", message: t("This cannot be worked out here: {why}.", { why: error.message }), help: STILL }]);
        say.textContent = "";
      }
    }
    busy = false;
    root.removeAttribute("aria-busy");
  };

  const take = (answer, how) => {
    faults.clear(root);
    if (!answer.ok) {
      faults.show(root, answer.faults);
      say.textContent = t("Not shown. {why}", { why: answer.faults[0]?.message });
      return;
    }
    block.innerHTML = answer.fragments.answer;
    const own = changed();
    story.hidden = own.length > 0;
    root.querySelector("[data-live-reset]").disabled = own.length === 0;
    if (how !== "keep") remember(new URLSearchParams(own).toString(), how);
    say.textContent = answer.say;
  };

  const remember = (query, how) => {
    const address = here.pathname + (query ? `?${query}` : "") + location.hash;
    if (address === location.pathname + location.search + location.hash) return;
    if (how === "push") history.pushState(history.state, "", address);
    else history.replaceState(history.state, "", address);
  };

  const fillFromAddress = () => {
    const own = Object.fromEntries(new URLSearchParams(location.search));
    const units = own.units === "in" || own.units === "mm" ? own.units : begin.units;
    begin = { ...texts(units), units: begin.units };
    fill(own);
  };

  root.addEventListener("input", ({ target }) => {
    if (!target.dataset.name) return;
    clearTimeout(timer);
    timer = setTimeout(() => update("replace"), PAUSE);
  });
  root.addEventListener("change", ({ target }) => {
    if (target.dataset.name === "units") measureIn(target.value, begin.units);
    if (target.dataset.name) update("push");
  });
  root.addEventListener("click", async ({ target }) => {
    const button = target.closest("button");
    if (button?.matches("[data-live-reset]")) {
      begin = { ...texts(begin.units), units: begin.units };
      fill({});
      update("push");
    } else if (button?.matches("[data-live-copy]")) {
      try {
        await navigator.clipboard.writeText(location.href);
        say.textContent = t("The link is copied.");
      } catch { say.textContent = t("The link: {address}", { address: location.href }); }
    }
  });

  const onBack = () => {
    if (location.pathname !== here.pathname) return;
    fillFromAddress();
    update("keep");
  };
  const stop = follow((state) => {
    if (!root.isConnected) {
      stop();
      removeEventListener("popstate", onBack);
      return;
    }
    progress.hidden = !state?.words;
    if (state) progress.value = state.stage;
    if (state?.words) say.textContent = `${state.words}…`;
  });
  addEventListener("popstate", onBack);
  const leave = onChange(({ detail }) => {
    if (!root.isConnected) return leave();
    measureIn(detail.units, detail.units);
    update("replace");
  });

  root.inert = false;
  fillFromAddress();
  if (changed().length || begin.units !== site.display.units) update("keep");
};
