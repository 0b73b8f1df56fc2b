// What is wrong or doubtful, told beside the control that it concerns.
export const clear = (root) => {
  for (const place of root.querySelectorAll("[data-fault], [data-owned-fault]")) {
    place.hidden = true;
    place.textContent = "";
    place.classList.remove("sc-live__warning");
  }
  for (const control of root.querySelectorAll("[aria-invalid]")) control.removeAttribute("aria-invalid");
};

const place = (root, control) => {
  const places = [...root.querySelectorAll("[data-fault], [data-owned-fault]")];
  const named = (name) => places.find((one) => one.dataset.fault === name);
  const owned = [...root.querySelectorAll("[data-control]")].find((one) => one.dataset.control === control);
  return named(control) ?? owned?.closest("li")?.querySelector("[data-owned-fault]") ?? named("");
};

export const show = (root, faults, { doubtful = false } = {}) => {
  for (const { control, message, help } of faults) {
    const own = place(root, control);
    // a doubt about a setting whose panel is shut is told where it is seen
    const isShut = doubtful && own?.closest("details:not([open])");
    const words = isShut ? place(root, "") : own;
    if (!words) continue;
    const line = document.createElement("span");
    line.textContent = help ? `${message} ${help}` : message;
    words.append(line);
    words.hidden = false;
    words.classList.toggle("sc-live__warning", doubtful);
    words.closest("details")?.setAttribute("open", "");
    if (doubtful) continue;
    for (const box of root.querySelectorAll("[data-control]"))
      if (box.dataset.control === control) box.setAttribute("aria-invalid", "true");
  }
};

// What has changed in a plan since it was saved, in words of the engine.
export const changed = (place, html = "") => {
  place.hidden = html === "";
  (place.querySelector("[data-changed]") ?? place).innerHTML = html;
};
