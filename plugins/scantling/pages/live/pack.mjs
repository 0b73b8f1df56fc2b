// Packs the engine and the part of the standard library that it uses for a reader's browser.
//
//     node pack.mjs PYODIDE PLUGINS OUT
//
// PYODIDE is the unpacked core, PLUGINS the folder that holds the package, OUT gets `stdlib.zip` and
// `engine.zip`. Both hold code compiled by that very Python, since compiling is most of a cold start.
import { pathToFileURL } from "node:url";
import { dirname, join } from "node:path";
import { readFileSync } from "node:fs";

const [core, plugins, out] = process.argv.slice(2);
const { loadPyodide } = await import(pathToFileURL(join(core, "pyodide.mjs")).href);

const fresh = async () => {
  const python = await loadPyodide({ indexURL: core + "/" });
  for (const [at, root] of [["/plugins", plugins], ["/out", out]]) {
    python.FS.mkdirTree(at);
    python.FS.mount(python.FS.filesystems.NODEFS, { root }, at);
  }
  python.runPython("import sys; sys.dont_write_bytecode = True; sys.path.insert(0, '/plugins')");
  return python;
};
const packing = await fresh();
packing.runPython(readFileSync(join(dirname(process.argv[1]), "pack.py"), "utf8"), { filename: "pack.py" });
packing.runPython("watch_dataclasses()");
const named = packing.runPython("names_in_engine()");

// what the browser will have loaded is seen in an interpreter where the packer has loaded nothing itself
const used = (await fresh()).runPython(`
import importlib, sys
for name in ["scantling.pages.live.session", *${JSON.stringify(named)}.split()]:
    importlib.import_module(name)
" ".join(sorted(sys.modules))`);
packing.runPython(`write_archives(${JSON.stringify(used)})`);
