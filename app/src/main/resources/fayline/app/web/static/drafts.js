// What is being typed survives a reload or a lost connection. A draft keeps the form's own number with it, so that sending it
// twice makes one entry. What was sent and is then changed is another entry: nobody may have heard that the first was taken.
const key = (form) => `draft ${location.pathname} ${form.dataset.draft}`;

function fields(form) {
  return [...form.elements].filter((e) => e.name && !["hidden", "submit", "button", "password", "file"].includes(e.type));
}

function keep(form, sent = false) {
  if (form.dataset.sentBefore && !sent && form.elements.once) {
    delete form.dataset.sentBefore;
    form.elements.once.value = crypto.randomUUID();
  }
  const kept = { sent, once: form.elements.once ? form.elements.once.value : "", values: [] };
  fields(form).forEach((e, i) => kept.values.push([i, e.name, ["checkbox", "radio"].includes(e.type) ? e.checked : e.value]));
  try { sessionStorage.setItem(key(form), JSON.stringify(kept)); } catch { /* no room: typing goes on */ }
}

function restore(form) {
  let kept;
  try { kept = JSON.parse(sessionStorage.getItem(key(form)) || "null"); } catch { kept = null; }
  if (!kept) return;
  const list = fields(form);
  for (const [i, name, value] of kept.values) {
    const e = list[i];
    if (!e || e.name !== name) continue;
    if (typeof value === "boolean") e.checked = value; else if (value !== "") e.value = value;
  }
  if (kept.once && form.elements.once) form.elements.once.value = kept.once;
  if (kept.sent) form.dataset.sentBefore = "yes";
}

// A page that says the entry was taken names the drafts that are over.
for (const done of document.querySelectorAll("[data-draft-done]")) {
  for (const k of Object.keys(sessionStorage)) {
    if (k.startsWith("draft ") && k.endsWith(` ${done.dataset.draftDone}`)) sessionStorage.removeItem(k);
  }
}

for (const form of document.querySelectorAll("form[data-draft]")) {
  if (form.dataset.fresh === "yes") sessionStorage.removeItem(key(form));
  restore(form);
  form.addEventListener("input", () => keep(form));
  // another script may still ask a question and stop it
  form.addEventListener("submit", (event) => setTimeout(() => { if (!event.defaultPrevented && sessionStorage.getItem(key(form))) keep(form, true); }));
}
