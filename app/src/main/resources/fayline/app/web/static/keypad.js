// Big keys for gloves: they type into the field that was touched last, and a unit key ends the value with its unit. Without script the
// field takes the device's own keys.
const small = matchMedia("(max-width: 899px), (pointer: coarse)");

function units(form, field) {
  const row = form.querySelector("[data-unit-keys]");
  const known = (field.dataset.units || "").split(" ").filter(Boolean);
  row.hidden = known.length === 0;
  row.replaceChildren(...known.map((unit) => {
    const b = document.createElement("button");
    b.type = "button";
    b.dataset.unit = unit;
    b.textContent = unit;
    return b;
  }));
}

function press(field, key) {
  if (key === "clear") field.value = "";
  else if (key === "back") field.value = field.value.slice(0, -1);
  else if (key === "-") field.value = field.value.startsWith("-") ? field.value.slice(1) : `-${field.value}`;
  else if (field.value.length < field.maxLength) field.value += key;
}

function begin(form) {
  const pad = form.querySelector("[data-keypad]");
  const inputs = [...form.querySelectorAll("input[data-keys]")];
  const bench = form.closest(".reading");
  if (!pad || inputs.length === 0 || (!bench && !small.matches)) return;
  let field = inputs[0];
  const typed = () => field.dispatchEvent(new Event("input", { bubbles: true }));
  pad.hidden = false;
  const chooser = form.querySelector("[data-units-for]");
  if (chooser) {
    const choose = () => {
      field.dataset.units = chooser.selectedOptions[0]?.dataset.units || "";
      units(form, field);
    };
    chooser.addEventListener("change", choose);
    choose();
  }
  units(form, field);
  if (bench) {
    // The drawing stays in sight while keys are pressed: the page begins there, and taking the field does not move it.
    if (matchMedia("(max-width: 899px)").matches) bench.scrollIntoView({ block: "start" });
    field.focus({ preventScroll: true });
  }
  for (const i of inputs) {
    i.inputMode = "none";
    i.addEventListener("focus", () => { field = i; units(form, field); });
  }
  form.addEventListener("click", (event) => {
    const key = event.target.closest("[data-key]")?.dataset.key;
    const unit = event.target.closest("[data-unit]")?.dataset.unit;
    if (key) press(field, key);
    else if (unit) field.value = `${field.value.replace(/[\s%A-Za-z].*$/, "")} ${unit}`.slice(0, field.maxLength);
    else return;
    typed();
  });
}

document.querySelectorAll(".keypad-form").forEach(begin);
