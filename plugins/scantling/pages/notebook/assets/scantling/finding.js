// Narrowing the catalog down. The build measured and counted; this compares, hides and tells.
(() => {
  "use strict";

  const GROUPS = ["room", "skill", "time", "material", "tag"];

  const wake = (form) => {
    const known = JSON.parse(form.dataset.words ?? "{}"); // the site's own words, where they are not these
    const t = (words, values) => (known[words] ?? words).replace(/\{(\w+)\}/g, (_, name) => values[name] ?? "");
    const list = form.parentElement.querySelector(".sc-cards");
    const boxes = {};
    for (const box of form.querySelectorAll("input[type=checkbox]")) {
      const count = box.parentElement.querySelector("small");
      (boxes[box.name] ??= []).push({ box, word: box.value, count, told: count.textContent });
    }
    const limits = [...form.querySelectorAll("select[data-limit]")].map((select) => ({
      select, name: select.name, fact: select.dataset.limit, options: [...select.options].slice(1),
    }));
    const order = form.elements.order;
    const say = form.querySelector("[data-say]");
    const chosen = [...form.querySelectorAll("[data-chosen]")];
    const tools = boxes.have ?? [];
    let gone = []; // what an old address asks for and no plan has: a renamed tag

    // what is not known fits nowhere and stands last
    const number = (words) => (words == null ? Infinity : Number(words));
    const cards = [...list.children].map((card, place) => ({
      card, place, title: card.dataset.title, revised: card.dataset.new,
      words: Object.fromEntries(GROUPS.map((name) => [name, JSON.parse(card.dataset[name])])),
      tools: JSON.parse(card.dataset.tools),
      named: [...new Set(JSON.parse(card.dataset.tools).flat())],
      cost: number(card.dataset.cost), width: number(card.dataset.width),
      facts: Object.fromEntries(limits.map(({ fact, select }) => [select.name, number(card.getAttribute(`data-${fact}`))])),
    }));

    const ORDERS = {
      "": (one, other) => one.place - other.place,
      title: (one, other) => one.title.localeCompare(other.title) || one.place - other.place,
      cost: (one, other) => (one.cost > other.cost) - (one.cost < other.cost) || one.place - other.place,
      width: (one, other) => (one.width > other.width) - (one.width < other.width) || one.place - other.place,
      new: (one, other) => (one.revised < other.revised) - (one.revised > other.revised) || one.place - other.place,
    };

    // ---- what is chosen ----
    const choice = () => {
      const ticked = {};
      for (const name of GROUPS)
        ticked[name] = new Set((boxes[name] ?? []).filter(({ box }) => box.checked).map(({ word }) => word));
      const have = new Set(tools.filter(({ box }) => box.checked).map(({ word }) => word));
      const most = {};
      for (const { select, name } of limits)
        if (select.value) most[name] = Number(select.selectedOptions[0].dataset.most);
      return { ticked, have, hasAll: have.size === tools.length, most };
    };

    // the kinds of choice that a card does not meet; two are as many as matter
    const against = (card, { ticked, have, hasAll, most }) => {
      const found = [];
      for (const name of GROUPS)
        if (ticked[name].size && !card.words[name].some((word) => ticked[name].has(word))) found.push(name);
      if (!hasAll && !card.tools.every((either) => either.some((tool) => have.has(tool)))) found.push("have");
      for (const { name } of limits)
        if (name in most && !(card.facts[name] <= most[name])) found.push(name);
      return found;
    };

    // ---- what is shown: each choice counts the plans that it would leave with all other choices as they are ----
    const show = () => {
      const now = choice();
      const counts = {};
      const add = (name, words) => {
        const group = (counts[name] ??= new Map());
        for (const word of words) group.set(word, (group.get(word) ?? 0) + 1);
      };
      let left = 0;
      for (const card of cards) {
        const no = against(card, now);
        if (card.card.hidden !== no.length > 0) card.card.hidden = no.length > 0;
        if (no.length === 0) left += 1;
        const counted = (name) => no.length === 0 || (no.length === 1 && no[0] === name);
        for (const name of GROUPS) if (counted(name)) add(name, card.words[name]);
        if (counted("have")) add("have", card.named);
        for (const { name, options } of limits)
          if (counted(name))
            add(name, options.filter((option) => card.facts[name] <= Number(option.dataset.most)).map((option) => option.value));
      }
      for (const [name, group] of Object.entries(boxes))
        for (const one of group) {
          const told = String(counts[name]?.get(one.word) ?? 0);
          if (told === one.told) continue;
          one.count.textContent = one.told = told;
          one.box.parentElement.toggleAttribute("data-none-left", told === "0");
        }
      for (const { name, options } of limits)
        for (const option of options)
          option.textContent = `${option.dataset.words} (${counts[name]?.get(option.value) ?? 0})`;
      for (const mark of chosen) {
        const name = mark.dataset.chosen;
        const many = boxes[name].filter(({ box }) => box.checked).length;
        mark.textContent = name === "have" ? (now.hasAll ? "" : t("{some} of {all}", { some: many, all: tools.length })) : many ? t("{count} chosen", { count: many }) : "";
      }
      say.textContent = left === cards.length ? t("{all} plans", { all: left })
        : left ? t("{some} of {all} plans", { some: left, all: cards.length }) : t("No plan fits all of that. Take something off.");
      if (!gone.length) return;
      const words = gone.map((word) => t("'{word}'", { word })).join(", ");
      say.textContent = `${say.textContent.replace(/\.$/, "")}. ${t("Nothing here is called {words} any more.", { words })}`;
    };

    let shownOrder = "";
    const sort = () => {
      if (order.value === shownOrder) return;
      shownOrder = order.value;
      list.append(...[...cards].sort(ORDERS[shownOrder]).map(({ card }) => card));
    };

    // ---- the address holds the choice ----
    const write = () => {
      const query = new URLSearchParams();
      for (const name of GROUPS)
        for (const { box, word } of boxes[name] ?? []) if (box.checked) query.append(name, word);
      const yes = tools.filter(({ box }) => box.checked), no = tools.filter(({ box }) => !box.checked);
      if (no.length && (yes.length === 0 || no.length <= yes.length)) for (const { word } of no) query.append("without", word);
      else if (no.length) for (const { word } of yes) query.append("have", word);
      for (const { select, name } of limits) if (select.value) query.set(name, select.value);
      if (order.value) query.set("order", order.value);
      const words = query.toString();
      const address = location.pathname + (words ? `?${words}` : "") + location.hash;
      if (address !== location.pathname + location.search + location.hash) history.replaceState(history.state, "", address);
    };
    const read = () => {
      const query = new URLSearchParams(location.search);
      for (const name of GROUPS) for (const one of boxes[name] ?? []) one.box.checked = query.getAll(name).includes(one.word);
      gone = GROUPS.flatMap((name) => query.getAll(name).filter((word) => !(boxes[name] ?? []).some((one) => one.word === word)));
      const without = query.getAll("without"), have = query.getAll("have");
      for (const { box, word } of tools) box.checked = have.length ? have.includes(word) : !without.includes(word);
      const known = (select, key) => ([...select.options].some(({ value }) => value === key) ? key : "");
      for (const { select, name } of limits) select.value = known(select, query.get(name) ?? "");
      order.value = known(order, query.get("order") ?? "");
      for (const group of form.querySelectorAll("details")) {
        const mine = [...group.querySelectorAll("input")];
        if (mine.some((box) => box.checked !== box.defaultChecked)) group.open = true;
      }
      sort();
      show();
    };

    const changed = () => { gone = []; sort(); show(); write(); };
    form.addEventListener("change", changed);
    form.addEventListener("submit", (event) => event.preventDefault());
    form.addEventListener("click", ({ target }) => {
      if (!(target instanceof HTMLButtonElement)) return;
      if (target.hasAttribute("data-clear")) form.reset();
      for (const { box } of boxes[target.dataset.all ?? target.dataset.none] ?? []) box.checked = "all" in target.dataset;
      changed();
    });
    document.addEventListener("scantling-reworded", () => { if (form.isConnected) show(); });
    addEventListener("popstate", () => { if (form.isConnected) read(); });
    read();
    form.hidden = false;
  };

  const ready = () => {
    for (const form of document.querySelectorAll("form[data-find][hidden]")) wake(form);
  };
  if (typeof document$ !== "undefined") document$.subscribe(ready);
  else if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", ready);
  else ready();
})();
