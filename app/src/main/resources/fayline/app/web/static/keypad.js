// Big keys for gloves: they type into the field that was touched last. Without script the field takes the device's own keys.
const form = document.querySelector(".keypad-form");
const pad = form?.querySelector("[data-keypad]");

if (pad) {
  const inputs = [...form.querySelectorAll("input[data-keys]")];
  let field = inputs[0];
  pad.hidden = false;
  // The drawing stays in sight while keys are pressed: the page begins there, and taking the field does not move it.
  if (matchMedia("(max-width: 899px)").matches) form.closest(".reading")?.scrollIntoView({ block: "start" });
  field.focus({ preventScroll: true });
  for (const i of inputs) {
    i.inputMode = "none";
    i.addEventListener("focus", () => { field = i; });
  }
  pad.addEventListener("click", (event) => {
    const key = event.target.closest("[data-key]")?.dataset.key;
    if (!key) return;
    if (key === "clear") field.value = "";
    else if (key === "back") field.value = field.value.slice(0, -1);
    else if (key === "-") field.value = field.value.startsWith("-") ? field.value.slice(1) : `-${field.value}`;
    else if (field.value.length < field.maxLength) field.value += key;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  });
}
