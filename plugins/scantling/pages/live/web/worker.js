// Runs the engine's own code: a small Python, then questions in and answers out, all as text.
const plain = self.fetch.bind(self);
const early = new Map();

// some hosts send .wasm with a type that browsers refuse to compile from, and then nothing would ever settle
const relabelled = async (answer) => {
  if (!answer.ok) throw new Error(`${answer.status} for ${answer.url}`);
  if (answer.headers.get("Content-Type") === "application/wasm") return answer;
  return new Response(answer.body, { headers: { "Content-Type": "application/wasm" } });
};
self.fetch = async (input, init) => {
  const address = String(input.url ?? input);
  const answer = await (early.get(address) ?? plain(input, init));
  early.delete(address);
  return address.endsWith(".wasm") ? relabelled(answer) : answer;
};

const t = (words) => words; // as in store.js, which a worker has no need of
const stage = (number, words) => postMessage({ stage: number, words });
const bytes = async (address) => {
  const answer = await plain(address);
  if (!answer.ok) throw new Error(`${answer.status} for ${address}`);
  return new Uint8Array(await answer.arrayBuffer());
};

const boot = async (folder) => {
  stage(1, t("Fetching what works out other sizes (once, about 6 MB)"));
  const wasm = `${folder}pyodide.asm.wasm`;
  // everything at once, and not one after the other as each is found to be needed
  early.set(wasm, plain(wasm));
  early.get(wasm).catch(() => { /* told of by whoever waits for it */ });
  const lockFileContents = plain(`${folder}lock.json`).then((answer) => answer.text());
  const engine = bytes(`${folder}engine.zip`);
  const trouble = early.get(wasm).then((answer) => { if (!answer.ok) throw new Error(`${answer.status} for ${wasm}`); });
  const { loadPyodide } = await import(`${folder}pyodide.mjs`);
  stage(2, t("Starting it"));
  const starting = loadPyodide({ indexURL: folder, stdLibURL: `${folder}stdlib.zip`, lockFileContents });
  const python = await Promise.race([starting, trouble.then(() => starting)]);
  python.FS.writeFile("/engine.zip", await engine);
  stage(3, t("Reading the plan"));
  return python.runPython(`
import dataclasses, gc, marshal, sys, zipimport
gc.disable()
sys.path.insert(0, "/engine.zip")
# the methods of dataclasses come compiled; what is not among them is compiled as ever
ready = marshal.loads(zipimport.zipimporter("/engine.zip").get_data("ready.bin"))
dataclasses.exec = lambda text, *scopes: exec(ready.get(text, text), *scopes)
from scantling.pages.live.session import Session
gc.enable()
gc.freeze()
Session().answer`);
};

let answer;
self.onmessage = async ({ data }) => {
  try {
    if (data.folder) answer = boot(data.folder);
    const asked = await answer;
    if (data.text) postMessage({ answer: asked(data.text) });
    else stage(4, "");
  } catch (error) {
    postMessage({ failed: String(error?.message ?? error) });
  }
};
