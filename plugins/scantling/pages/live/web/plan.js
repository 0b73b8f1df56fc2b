// The controls of a plan page: they send what was typed to the engine and put what comes back into the page.
import { ask, follow } from "./engine.js";
import * as faults from "./faults.js";
import * as mine from "./mine.js";
import { keep, recall, t } from "./store.js";

const AS_OF = "as-of";
const QUIET = 900; // ms without a change before the chart of costs is made again
const STILL = t("The sizes offered above still work.");

export const start = (root) => {
  const { slug, title, up, engine, revised } = root.dataset;
  const here = new URL(location.pathname, location.href);
  const home = new URL(up, here);
  const begin = JSON.parse(root.dataset.start);
  const site = {
    engine,
    shop: new URL("../live-shop.json", home).href,
    display: JSON.parse(root.dataset.display),
    plans: { [slug]: new URL("live.json", home).href },
  };
  const say = root.querySelector("[data-live-say]");
  const progress = root.querySelector("progress");
  let chosen = {}; // what was chosen here, by name, as typed or as the engine wrote it
  let shown = null; // the last good answer
  let busy = false;
  let next = null;
  let asOf = ""; // the day of the plan for which a link was made
  let waiting = 0; // the timer of the chart of costs

  const controls = () => root.querySelectorAll("[data-name]");
  const general = (message, help = "") => faults.show(root, [{ control: "", message, help }]);

  const question = (touched, more = {}) => ({ ask: "fit", slug, up, asOf, start: begin, chosen: { ...chosen }, mine: mine.settings(), touched, ...more });

  // one question at a time; of those that come meanwhile only the last is asked
  const update = async (touched, how = {}) => {
    next = { touched, how };
    clearTimeout(waiting);
    if (busy) return;
    busy = true;
    root.setAttribute("aria-busy", "true");
    while (next) {
      const { touched: control, how: wanted } = next;
      next = null;
      try {
        const asked = question(control, { forgiving: wanted.forgiving ?? false });
        const answer = await ask({ ...asked, part: "words" }, site);
        take(answer, wanted, asked.chosen);
        if (!answer.ok || next) continue;
        document.dispatchEvent(new CustomEvent("scantling-sized"));
        const pictures = await ask({ ...asked, part: "pictures" }, site);
        if (pictures.ok) replace(pictures.fragments);
        waiting = setTimeout(chart, QUIET, asked);
      } catch (error) {
        faults.clear(root);
        general(t("Other sizes cannot be worked out here: {why}.", { why: error.message }), STILL);
        say.textContent = "";
      }
    }
    busy = false;
    root.removeAttribute("aria-busy");
  };

  // what each inch costs takes longest, so it is asked for when nothing has changed for a while
  const chart = async (asked) => {
    if (!document.querySelector('[data-fragment="cost"]')) return;
    const cost = await ask({ ...asked, part: "cost" }, site).catch(() => ({ ok: false }));
    if (cost.ok && !busy) replace(cost.fragments);
  };

  const take = (answer, { address = "push" }, asked) => {
    faults.clear(root);
    if (!answer.ok) {
      faults.show(root, answer.faults);
      say.textContent = shown || answer.faults.length ? t("Not shown. {why}", { why: answer.faults[0]?.message }) : "";
      return;
    }
    shown = answer;
    fill(answer, asked);
    replace(answer.fragments);
    headline(answer.label);
    mark(answer.address === "");
    if (address !== "keep") remember(answer.address, address);
    faults.show(root, answer.warnings, { doubtful: true });
    faults.changed(root.querySelector("[data-live-changed]"), answer.changed);
    say.textContent = answer.say;
    root.querySelector("[data-live-reset]").disabled = answer.address === "";
  };

  const fill = ({ sizes, options }, asked) => {
    const exact = { ...Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, size.exact])), ...options };
    // what was changed since the question was asked is still to be answered, and stays as it is
    const newer = new Set(Object.keys(chosen).filter((name) => chosen[name] !== asked[name]));
    const kept = Object.entries(chosen).filter(([name]) => newer.has(name) || name in exact);
    chosen = Object.fromEntries(kept.map(([name, text]) => [name, newer.has(name) ? text : exact[name]]));
    for (const [name, size] of Object.entries(sizes).filter(([name]) => !newer.has(name))) {
      for (const box of controls()) if (box.dataset.name === name && box.type === "text") write(box, size.text);
      for (const slider of root.querySelectorAll("[data-slider]")) {
        if (slider.dataset.slider !== name) continue;
        if (slider !== document.activeElement || !next) slider.value = size.position;
        slider.setAttribute("aria-valuetext", size.text);
      }
      for (const span of root.querySelectorAll("[data-range]")) if (span.dataset.range === name) span.textContent = size.range;
    }
    for (const box of controls())
      if (box.type === "radio" && !newer.has(box.dataset.name)) box.checked = options[box.dataset.name] === box.value;
  };

  // never over what a reader is typing at this moment
  const write = (box, text) => {
    if (box === document.activeElement && box.value !== (box.dataset.sent ?? box.defaultValue)) return;
    box.value = text;
    box.dataset.sent = text;
  };

  const replace = (fragments) => {
    let before = root;
    for (const [name, html] of Object.entries(fragments)) {
      let block = document.querySelector(`[data-fragment="${name}"]`);
      if (!block && html) block = insert(name, before);
      if (!block) continue;
      if (block.dataset.html !== html) block.innerHTML = html;
      block.dataset.html = html;
      const outer = block.parentElement.matches("[data-search-exclude]") && block.parentElement.children.length === 1 ? block.parentElement : block;
      outer.hidden = html === "";
      if (outer.previousElementSibling?.matches("h2")) outer.previousElementSibling.hidden = html === "";
      before = outer;
    }
    document.dispatchEvent(new CustomEvent("scantling-changed"));
  };

  // a section that the size as drawn has nothing for
  const insert = (name, before) => {
    const block = document.createElement("div");
    block.dataset.fragment = name;
    before.after(block);
    const heading = JSON.parse(root.dataset.sections)[name];
    if (heading) block.before(Object.assign(document.createElement("h2"), { textContent: heading }));
    return block;
  };

  const headline = (label) => {
    const head = document.querySelector("h1");
    if (head) head.textContent = label ? `${title}, ${label}` : title;
  };

  // which of the offered sizes this is, if any
  const current = document.querySelector(".sc-sizes [aria-current]");
  const mark = (isOffered) => {
    if (isOffered) current?.setAttribute("aria-current", "page");
    else current?.removeAttribute("aria-current");
  };

  const remember = (query, how) => {
    const address = here.pathname + (query ? `?${query}` : "") + location.hash;
    if (address === location.pathname + location.search + location.hash) return;
    if (how === "push") history.pushState(history.state, "", address);
    else history.replaceState(history.state, "", address);
  };

  // what an address chooses; names that are not the plan's are told of by the engine
  const fromAddress = () => {
    const { [AS_OF]: day, ...names } = Object.fromEntries(new URLSearchParams(location.search));
    asOf = day ?? "";
    return names;
  };

  root.addEventListener("change", ({ target }) => {
    if (!target.dataset.name) return;
    target.dataset.sent = target.value;
    chosen[target.dataset.name] = target.value;
    update(target.dataset.control);
  });
  root.addEventListener("input", ({ target }) => {
    const name = target.dataset.slider;
    if (!name) return;
    chosen[name] = JSON.parse(target.dataset.values)[target.value];
    for (const box of controls()) if (box.dataset.name === name) write(box, chosen[name]);
    update(`size ${name}`, { address: "replace" });
  });
  root.addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (button?.matches("[data-live-reset]")) {
      chosen = {};
      update("");
    } else if (button?.matches("[data-live-copy]")) copy();
    else if (button?.matches("[data-live-add]")) add();
  });

  const copy = async () => {
    // it says of which day the plan was, to tell later what has changed
    const link = new URL(location.href);
    if (revised && link.search) link.searchParams.set(AS_OF, revised);
    try {
      await navigator.clipboard.writeText(link.href);
      say.textContent = t("The link is copied.");
    } catch { say.textContent = t("The link: {address}", { address: link.href }); }
  };

  const add = () => {
    const items = recall("trip").data ?? [];
    const sizes = shown ? Object.fromEntries(Object.entries(shown.sizes).map(([name, size]) => [name, size.exact])) : begin;
    items.push({ slug, count: 1, chosen: { ...sizes, ...shown?.options }, revised });
    const kept = keep("trip", items);
    say.textContent = kept ? t("{plan} is on the shopping trip.", { plan: title }) : t("This browser does not let the page keep a list.");
    root.querySelector("[data-live-trip]").hidden = !kept;
  };

  const isAsBuilt = () => !shown?.address && !panel.isSet();

  // the piece in three dimensions, at the size that is shown
  const model = async () => {
    const answer = await ask(question("", { part: "model" }), site);
    if (!answer.ok) throw new Error(answer.faults[0]?.message);
    if (!answer.model) throw new Error(t("it has too many parts to be drawn"));
    return Uint8Array.from(atob(answer.model), (letter) => letter.charCodeAt(0)).buffer;
  };
  const onModel = (event) => {
    if (isAsBuilt() || !root.isConnected) return;
    event.preventDefault();
    event.detail.answer = model();
  };

  // the files beside the page, at the size that is shown
  const download = async (link, event) => {
    const name = link.getAttribute("href");
    if (isAsBuilt()) return;
    event.preventDefault();
    const content = name === "plan.glb" ? await model() : (await ask(question("", { files: true, part: "words" }), site)).files[name];
    const file = URL.createObjectURL(new Blob([content], { type: "application/octet-stream" }));
    Object.assign(document.createElement("a"), { href: file, download: name }).click();
    setTimeout(() => URL.revokeObjectURL(file), 10_000);
  };
  const onClick = (event) => {
    const link = event.target.closest?.('a[href="plan.json"], a[href="cut-list.csv"], a[href="plan.glb"]');
    if (link) download(link, event).catch((error) => general(t("The file could not be made: {why}.", { why: error.message })));
  };
  const onBack = () => {
    if (location.pathname !== here.pathname) return;
    chosen = fromAddress();
    update("", { forgiving: true, address: "keep" });
  };
  const stop = follow((state) => {
    if (!root.isConnected) return leave();
    progress.hidden = !state?.words;
    if (state) progress.value = state.stage;
    if (state?.words) say.textContent = `${state.words}…`;
  });
  const leave = () => {
    stop();
    clearTimeout(waiting);
    document.removeEventListener("click", onClick);
    document.removeEventListener("scantling-model", onModel);
    removeEventListener("popstate", onBack);
  };
  document.addEventListener("click", onClick);
  document.addEventListener("scantling-model", onModel);
  addEventListener("popstate", onBack);

  const panel = mine.attach(root, (control) => update(control, { address: "replace" }));
  root.querySelector("[data-live-trip]").hidden = !recall("trip").data?.length;
  root.inert = false;
  if (panel.damaged) general(panel.damaged);
  chosen = fromAddress();
  const isChosen = Object.keys(chosen).some((name) => name !== "h" && name !== "q");
  if (isChosen || panel.isSet()) update("", { forgiving: true, address: "keep" });
};
