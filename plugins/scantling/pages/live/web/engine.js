// The engine, in a worker so that the page never freezes; started by the first question of a visit.
import { base, t } from "./store.js";
import { register } from "./offline.js";

const PATIENCE = 60_000;
let worker = null;
let handed = new Set(); // what the worker has been given already
const waiting = [];
let listeners = [];
let timer;
let keepSoon = () => {};

const reset = (reason) => {
  worker?.terminate();
  worker = null;
  handed = new Set();
  clearTimeout(timer);
  listeners.forEach((listen) => listen(null));
  for (const { refuse } of waiting.splice(0)) refuse(new Error(reason));
};

const watch = () => {
  clearTimeout(timer);
  if (waiting.length) timer = setTimeout(() => reset(t("it took too long")), PATIENCE);
};

const hear = ({ data }) => {
  if (data.failed) return reset(data.failed);
  if (data.stage) listeners.forEach((listen) => listen(data));
  else waiting.shift()?.settle(JSON.parse(data.answer));
  watch();
  // what was used is kept for later, when nobody waits any more
  if (data.answer && !waiting.length) keepSoon();
};

const begin = (engine) => {
  worker = new Worker(new URL("worker.js", import.meta.url), { type: "module" });
  worker.onmessage = hear;
  worker.onerror = (event) => { event.preventDefault(); reset(t("the worker did not start")); };
  worker.onmessageerror = () => reset(t("the worker was not understood"));
  worker.postMessage({ folder: new URL(`assets/scantling/live/${engine}/`, base).href });
  keepSoon = () => {
    keepSoon = () => {};
    register(engine);
  };
};

const fetched = new Map();
const json = (address) => {
  if (!fetched.has(address)) fetched.set(address, load(address));
  return fetched.get(address);
};
const load = async (address) => {
  const answer = await fetch(address).catch(() => null);
  if (answer?.ok) return answer.json();
  fetched.delete(address);
  throw new Error(t("the plan's numbers could not be fetched"));
};

// Calls back with {stage, words} while the engine gets ready, with null when it has stopped.
export const follow = (listen) => {
  listeners.push(listen);
  return () => { listeners = listeners.filter((other) => other !== listen); };
};

// Asks a question. `site` says where things are: {engine, shop, display, plans: {slug: address}}.
export const ask = async (question, site) => {
  if (!worker) begin(site.engine);
  watch();
  const missing = Object.entries(site.plans).filter(([slug]) => !handed.has(`plan ${slug}`));
  const wantsShop = !handed.has("shop");
  const [shop, ...plans] = await Promise.all([
    wantsShop ? json(site.shop) : null,
    ...missing.map(([, address]) => json(address)),
  ]);
  if (!worker) begin(site.engine);
  const more = { plans: Object.fromEntries(missing.map(([slug], at) => [slug, plans[at]])) };
  if (wantsShop) Object.assign(more, { shop, display: site.display });
  handed.add("shop");
  missing.forEach(([slug]) => handed.add(`plan ${slug}`));
  return new Promise((settle, refuse) => {
    waiting.push({ settle, refuse });
    worker.postMessage({ text: JSON.stringify({ ...question, ...more }) });
    watch();
  });
};
