// A pot's working life begins when it is mixed, which only the hands know: a tap starts its clock on this device. It survives a reload.
import { ahead } from "/static/shop-clock.js";

const STORE = "fayline-pots";
const DAY = 24 * 60 * 60000;

function kept() {
  try { return JSON.parse(localStorage.getItem(STORE) || "{}"); } catch { return {}; }
}

function change(key, mixed) {
  const pots = kept();
  for (const [k, at] of Object.entries(pots)) if (Date.now() - at > DAY) delete pots[k];
  if (mixed) pots[key] = mixed; else delete pots[key];
  try { localStorage.setItem(STORE, JSON.stringify(pots)); } catch { /* no room: the clock lasts as long as the page */ }
  return pots;
}

function button(text, act) {
  const b = document.createElement("input");
  b.type = "button";
  b.className = "button";
  b.value = text;
  b.addEventListener("click", act);
  return b;
}

function draw(place, pots) {
  const key = `${location.pathname} ${place.dataset.pot}`;
  const mixed = pots[key];
  if (!mixed) {
    place.replaceChildren(button("Mixed now", () => draw(place, change(key, Date.now()))));
  } else {
    const clock = document.createElement("time");
    clock.className = "count";
    clock.dateTime = new Date(mixed + Number(place.dataset.minutes) * 60000 + ahead).toISOString();
    clock.dataset.until = "";
    clock.dataset.ring = `pot ${key} ${mixed}`;
    clock.dataset.ringSays = `${place.dataset.says}: its working life is over.`;
    clock.textContent = `${place.dataset.minutes} min left`;
    place.replaceChildren(clock, " ", button("Not mixed yet", () => draw(place, change(key, 0))));
  }
  document.dispatchEvent(new Event("fayline:pot"));
}

for (const place of document.querySelectorAll("[data-pot]")) draw(place, kept());
