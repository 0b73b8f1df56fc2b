// The button on a plan's picture that opens the piece to be turned around. What draws it is fetched when it
// is pressed, and the picture stays wherever that does not work.
import { base, t } from "./store.js";

const NO_DRAWING = t("This browser does not draw in three dimensions here. The picture is still here.");

const TAKEN = t("The browser took the drawing away. The picture is still here.");

const draws = () => {
  const context = document.createElement("canvas").getContext("webgl2");
  context?.getExtension("WEBGL_lose_context")?.loseContext();
  return context !== null;
};

export const start = (root) => {
  const folder = new URL(`assets/scantling/live/${root.dataset.viewer}/`, base).href;
  const file = new URL("plan.glb", new URL(location.pathname, location.href)).href;
  const opener = root.querySelector('[data-turn="open"]');
  const say = root.querySelector("[data-turn-say]");
  const stage = root.querySelector("[data-turn-stage]");
  const told = root.querySelector("[data-turn-part]");
  const canvas = stage.querySelector("canvas");
  let view = null;
  let asked = 0;
  let isStale = false; // whether the size changed while the piece was being fetched

  // the piece at the size that the page shows: the file beside it, or what the engine makes for the reader
  const model = async () => {
    const wish = new CustomEvent("scantling-model", { cancelable: true, detail: {} });
    if (!document.dispatchEvent(wish)) return wish.detail.answer;
    const answer = await fetch(file);
    if (!answer.ok) throw new Error("the piece could not be fetched");
    return answer.arrayBuffer();
  };

  const tell = (part) => {
    told.replaceChildren();
    if (!part) return;
    const bit = (name, words, kind = "") => Object.assign(document.createElement(name), { textContent: words, className: kind });
    told.append(bit("span", part.letter, "sc-mark"), " ", bit("b", part.part), ", ", bit("span", part.size));
  };

  const open = async () => {
    if (!draws()) return fail(NO_DRAWING);
    const mine = ++asked;
    opener.disabled = true;
    isStale = false;
    say.textContent = t("Fetching what turns it around…");
    try {
      const [viewer, bytes] = await Promise.all([import("./viewer.js"), model()]);
      // the canvas has no size, and so nothing to draw on, before it is seen
      root.parentElement.classList.add("sc-turning");
      stage.hidden = false;
      view ??= await viewer.open(folder, canvas, tell);
      if (mine === asked) await view.show(bytes);
      if (stage.hidden) return;
      say.textContent = "";
      canvas.focus({ preventScroll: true });
      if (isStale) follow();
    } catch (error) {
      fail(t("It cannot be turned around here: {why}. The picture is still here.", { why: error.message }));
    }
    opener.disabled = false;
  };

  const fail = (words) => {
    close();
    say.textContent = words;
  };

  const close = () => {
    asked += 1;
    const hadFocus = stage.contains(document.activeElement);
    stage.hidden = true;
    say.textContent = "";
    root.parentElement.classList.remove("sc-turning");
    opener.disabled = false;
    if (hadFocus) opener.focus();
  };

  // another size was chosen
  const follow = async () => {
    if (!root.isConnected) return document.removeEventListener("scantling-sized", follow);
    if (stage.hidden || !view) {
      isStale = true;
      return;
    }
    const mine = ++asked;
    try {
      const bytes = await model();
      if (mine === asked) await view.show(bytes);
    } catch (error) {
      fail(t("This size cannot be turned around: {why}.", { why: error.message }));
    }
  };

  const doings = {
    open,
    close,
    on: () => view?.step(1),
    back: () => view?.step(-1),
    closer: () => view?.zoom(0.8),
    farther: () => view?.zoom(1.25),
  };
  const keys = {
    ArrowLeft: () => view?.turn(-1, 0),
    ArrowRight: () => view?.turn(1, 0),
    ArrowUp: () => view?.turn(0, -1),
    ArrowDown: () => view?.turn(0, 1),
    "+": doings.closer,
    "=": doings.closer,
    "-": doings.farther,
    Enter: (event) => view?.step(event.shiftKey ? -1 : 1),
    Escape: () => { if (!view?.letGo()) close(); },
  };
  root.addEventListener("click", ({ target }) => doings[target.closest("[data-turn]")?.dataset.turn]?.());
  canvas.addEventListener("keydown", (event) => {
    if (!keys[event.key] || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    keys[event.key](event);
  });
  // who scrolls past means the page; who has taken hold of the piece means the piece
  stage.addEventListener("wheel", (event) => {
    if (document.activeElement !== canvas) event.stopImmediatePropagation();
  }, { capture: true, passive: true });
  canvas.addEventListener("webglcontextlost", () => {
    if (!stage.hidden) fail(TAKEN);
  });
  document.addEventListener("scantling-sized", follow);
  root.hidden = false;
};
