// The lots offered are those of the ply that is picked, and the ply picked is the next one, also where the last was only kept on this phone.
const form = document.querySelector("[data-plies-form]");

function lots() {
  const ply = form.querySelector("[data-ply-next]").selectedOptions[0];
  const box = form.querySelector("[data-lots]");
  let first = null;
  for (const group of box.querySelectorAll("optgroup")) {
    const own = group.dataset.material === ply?.dataset.of;
    group.hidden = !own;
    group.disabled = !own;
    if (own) first = group.querySelector("[data-first]");
  }
  if (box.selectedOptions[0]?.parentNode.disabled || box.value === "") box.value = first ? first.value : "";
}

if (form) {
  const next = form.querySelector("[data-ply-next]");
  next.addEventListener("change", lots);
  lots();
  document.addEventListener("fayline:plies", (event) => {
    for (const number of event.detail) {
      const word = document.querySelector(`[data-ply="${CSS.escape(number)}"] [data-ply-word]`);
      const sign = document.getElementById("word-kept");
      if (word && sign && !word.dataset.kept) { word.replaceChildren(sign.content.cloneNode(true)); word.dataset.kept = "yes"; }
      const option = [...next.options].find((o) => o.value === number);
      if (option) option.disabled = true;
    }
    if (next.selectedOptions[0]?.disabled) {
      const open = [...next.options].find((o) => !o.disabled);
      if (open) open.selected = true;
    }
    lots();
  });
}
