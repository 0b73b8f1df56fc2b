// The site's own words in its language, which a build has put in the place of these; values by name.
export const t = (words, values = {}) => words.replace(/\{(\w+)\}/g, (_, name) => values[name] ?? "");

// What is kept on this device, and nowhere else. Each site, each kind of thing and each version has a key of its own.
export const base = new URL("../../../", import.meta.url);
const VERSION = 1;
const key = (name) => `scantling ${base.pathname} ${name}`;

// Returns {data, damaged}: null data where nothing is kept, or nothing that this version understands.
export const recall = (name) => {
  try {
    const text = localStorage.getItem(key(name));
    if (text === null) return { data: null, damaged: false };
    const kept = JSON.parse(text);
    if (kept?.version === VERSION && typeof kept.data === "object") return { data: kept.data, damaged: false };
  } catch { /* damaged, or a reader who forbids storage */ }
  return { data: null, damaged: true };
};

export const keep = (name, data) => {
  try {
    localStorage.setItem(key(name), JSON.stringify({ version: VERSION, data }));
    return true;
  } catch { return false; }
};

export const forget = (name) => {
  try { localStorage.removeItem(key(name)); } catch { /* nothing was kept */ }
};
