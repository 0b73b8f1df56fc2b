// What a reader has at home: which plans it is enough for. The engine ranks them all at once, then cuts one after the other.
import { ask, follow } from "./engine.js";
import * as faults from "./faults.js";
import * as mine from "./mine.js";
import { keep, recall, t } from "./store.js";
import { onChange } from "./units.js";

const NAME = "what I have";
const AT_A_TIME = 12; // plans that are cut before a reader asks for more

export const start = (root) => {
  const here = new URL(location.pathname, location.href);
  const home = new URL(root.dataset.plans, here);
  const box = root.querySelector("[data-stock-text]");
  const say = root.querySelector("[data-live-say]");
  const progress = root.querySelector("progress");
  const more = root.querySelector("[data-stock-more]");
  const display = JSON.parse(root.dataset.display);
  const site = (slugs) => ({
    engine: root.dataset.engine,
    shop: new URL(root.dataset.shop, here).href,
    display,
    plans: Object.fromEntries(slugs.map((slug) => [slug, new URL(`${slug}/live.json`, home).href])),
  });
  let catalog = null;
  let waiting = []; // plans and sizes that are still to be cut, best first
  let turn = 0; // the latest look; an earlier one that is still at work gives up

  const look = async () => {
    const mine_ = mine.settings();
    const now = (turn += 1);
    keep(NAME, { text: box.value });
    clear();
    root.setAttribute("aria-busy", "true");
    try {
      catalog ??= await fetch(new URL(root.dataset.catalog, here)).then((answer) => answer.json());
      const answer = await ask({ ask: "from-stock", text: box.value, catalog, mine: mine_ }, site([]));
      if (now !== turn) return;
      root.querySelector("[data-stock-understood]").innerHTML = answer.understood ?? "";
      faults.show(root, answer.faults ?? []);
      say.textContent = answer.say ?? "";
      waiting = answer.found ?? [];
      await cut(now);
    } catch (error) {
      faults.show(root, [{ control: "", message: t("This cannot be worked out here: {why}.", { why: error.message }), help: "" }]);
    } finally {
      if (now === turn) root.removeAttribute("aria-busy");
    }
  };

  const cut = async (now) => {
    const text = box.value;
    for (const [place, number] of waiting.splice(0, AT_A_TIME)) {
      const plan = catalog[place];
      const size = plan.sizes[number];
      const answer = await ask({ ask: "one-from-stock", text, slug: plan.slug, chosen: size.chosen, mine: mine.settings() }, site([plan.slug]));
      if (now !== turn) return;
      if (answer.ok) show(plan, size, answer);
    }
    more.hidden = waiting.length === 0;
  };

  const show = (plan, size, { enough, more: words, also }) => {
    const part = root.querySelector(`[data-stock-part="${enough ? "enough" : "more"}"]`);
    const line = document.createElement("li");
    const link = Object.assign(document.createElement("a"), {
      href: new URL(`${plan.slug}/${size.at ? `${size.at}/` : ""}`, home).href,
      textContent: size.at ? `${plan.title}, ${size.label}` : plan.title,
    });
    line.append(link, Object.assign(document.createElement("small"), { textContent: [words, also].filter(Boolean).join("; ") }));
    part.querySelector("ul").append(line);
    part.hidden = false;
  };

  const clear = () => {
    faults.clear(root);
    say.textContent = "";
    more.hidden = true;
    for (const part of root.querySelectorAll("[data-stock-part]")) {
      part.hidden = true;
      part.querySelector("ul").replaceChildren();
    }
  };

  root.addEventListener("click", ({ target }) => {
    if (target.closest("[data-stock-look]")) look();
    if (target.closest("[data-stock-more]")) cut(turn);
  });
  const stop = follow((state) => {
    if (!root.isConnected) return stop();
    progress.hidden = !state?.words;
    if (state) progress.value = state.stage;
    if (state?.words) say.textContent = `${state.words}…`;
  });
  const leave = onChange(() => {
    if (!root.isConnected) return leave();
    if (box.value && turn) look();
  });

  // what was written here before, else what "my shop" knows
  const owned = Object.entries(mine.settings()?.owned ?? {}).flatMap(([stock, sizes]) =>
    Object.entries(sizes ?? {}).map(([size, count]) => `${count} ${stock} ${size}`));
  box.value = recall(NAME).data?.text ?? owned.join("\n");
  root.inert = false;
};
