// What is kept on this phone, shown: the count in the head, the lines on cards and fits, the list. The worker keeps and sends.
import "/static/kept-store.js";

const store = self.faylineKept;
const root = document.documentElement;
const able = "serviceWorker" in navigator && "indexedDB" in self && self.isSecureContext;
const UNTRUSTED = "Entries cannot be kept on this phone: it does not trust the connection. The page /trust says how it learns to.";
const LACKS = self.isSecureContext
  ? "Entries cannot be kept on this phone: its browser has no service worker. Another browser or its ordinary window may."
  : UNTRUSTED;
const SEND_EVERY_MS = 15000;

function put(parent, tag, text, css) {
  const e = document.createElement(tag);
  if (text) e.textContent = text;
  if (css) e.className = css;
  parent.append(e, " ");
  return e;
}

const word = (name) => document.getElementById(`word-${name}`).content.cloneNode(true);
const signs = { kept: "kept", refused: "refused", sent: "recorded" };

function value(entry, name) {
  const at = entry.fields.findIndex((f, i) => i % 2 === 0 && f === name);
  return at < 0 ? "" : entry.fields[at + 1];
}

function time(entry) {
  return new Date(entry.at).toLocaleString([], { weekday: "short", hour: "2-digit", minute: "2-digit", day: "numeric", month: "short" });
}

function carried(entry) {
  const photos = entry.fields.filter((f, i) => i % 2 === 0 && f === "photo").length;
  return photos === 0 ? "" : photos === 1 ? ", with a photo" : `, with ${photos} photos`;
}

// What was counted: the lots beside which something is typed.
function counted(entry) {
  const all = (name) => entry.fields.filter((f, i) => i % 2 === 1 && entry.fields[i - 1] === name);
  const left = all("left");
  return all("lot").flatMap((lot, i) => (left[i]?.trim() ? [`${lot} ${left[i]}`] : []));
}

function ofStores(entry, form) {
  if (form === "count") return `Stock-take: ${counted(entry).join(", ")}`;
  const lot = value(entry, "lot");
  if (form === "lot") return `Lot ${lot} carried ${value(entry, "to") === "cold" ? "into the cold" : "into the room"}`;
  return `Lot ${lot} received: ${value(entry, "quantity")} of ${value(entry, "stuff")}`;
}

function ofInspection(entry, form) {
  const deeds = {
    visit: `Visit${value(entry, "who") ? ` of ${value(entry, "who")}` : ""}`,
    finding: `Finding on ${value(entry, "about")}`,
    "put-right": `Finding of entry ${value(entry, "finding")} put right`,
    "sign-off": `Finding of entry ${value(entry, "finding")} ${value(entry, "accepted") === "no" ? "not accepted" : "accepted"}`,
  };
  return `${deeds[form]}${value(entry, "text") ? `: ${value(entry, "text")}` : ""}${carried(entry)}`;
}

function what(entry) {
  const path = entry.path.replace(/\?.*/, "").split("/");
  if (path[1] === "fit") return `${path[2]}: station ${value(entry, "station")}, ${value(entry, "kind")} ${value(entry, "value")}`;
  if (path[1] === "stores") return ofStores(entry, path[2]);
  if (path[1] === "inspections") return ofInspection(entry, path[2]);
  const deeds = {
    start: "Start", finish: "Finish", note: "Note", reading: "Reading", correct: "Correction",
    ply: `Ply ${value(entry, "ply")}`, mix: `Cup ${value(entry, "batch")}`, lot: `Lot ${value(entry, "lot-typed") || value(entry, "lot")}`,
    wrong: "Something is wrong",
    leak: `Leak-down, ${value(entry, "which")}`,
  };
  const said = value(entry, "text") || value(entry, "value") || value(entry, "why");
  return `${deeds[path[5]]}, ${path[2]} ${path[3]}, ${path[4]}${said ? `: ${said}` : ""}${carried(entry)}`;
}

// Where people sign in, what somebody else typed here is theirs alone: told that it waits, and nothing of it.
const foreign = (entry) => root.dataset.person !== undefined && entry.by !== root.dataset.person;

function row(list, entry) {
  const li = put(list, "li");
  li.append(word(signs[entry.state]), " ");
  if (foreign(entry)) {
    put(li, "span", `An entry of ${entry.by}. It waits until ${entry.by} signs in here.`);
    return li;
  }
  put(li, "span", what(entry));
  put(li, "span", `${entry.by}, ${time(entry)}${entry.seq ? `, entry ${entry.seq}` : ""}`, "quiet small");
  if (entry.say && entry.state !== "sent") put(li, "p", entry.say, "strong");
  if (entry.say && entry.state === "sent" && entry.say.includes("Caution")) put(li, "p", entry.say);
  return li;
}

const UNTYPED = ["by", "places", "how", "entry", "kind", "unit", "state", "passed", "photo", "seen-head", "visit", "finding", "accepted", "certificate", "to"];

// A person decides about what was not taken: it is sent again, changed, as a new entry with a number of its own; or it goes.
function decide(li, entry) {
  const form = put(li, "form");
  const boxes = [];
  entry.fields.forEach((f, i) => {
    if (i % 2 || UNTYPED.includes(f)) return;
    // of a stock-take only what was counted, by the name of its lot
    if (f === "left" && !entry.fields[i + 1]) return;
    if (f === "lot" && entry.fields[i + 2] === "left") return;
    const label = put(form, "label", `${f === "left" && i > 1 ? `left of ${entry.fields[i - 1]}` : f} `);
    const box = document.createElement("input");
    box.value = entry.fields[i + 1];
    label.append(box);
    boxes.push([i + 1, box]);
  });
  const label = put(form, "label", "when ");
  const when = document.createElement("input");
  when.value = entry.at;
  label.append(when);
  const buttons = put(form, "p", "", "buttons");
  put(buttons, "button", "Send it so");
  const away = put(buttons, "button", "Throw it away");
  away.type = "button";
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (Number.isNaN(Date.parse(when.value))) { when.focus(); return; }
    const fields = [...entry.fields];
    for (const [i, box] of boxes) fields[i] = box.value;
    // what stood in the way was told above: it has been seen
    const seen = fields.findIndex((f, i) => i % 2 === 0 && f === "seen-head");
    if (seen >= 0 && entry.head) fields[seen + 1] = String(entry.head);
    await store.change(entry.n, () => ({ fields, at: store.shown(Date.parse(when.value)), typed: when.value === entry.at ? entry.typed : null, id: crypto.randomUUID(), state: "kept", say: "" }));
    send();
  });
  away.addEventListener("click", async () => {
    if (window.confirm(`Throw away "${what(entry)}"? It is only on this phone and is then gone for good.`)) await store.discard(entry.n);
  });
}

// Where something is being typed, the lists wait: a redraw would take it away.
const typing = (list) => list.contains(document.activeElement) && document.activeElement.tagName === "INPUT";

function lists(all) {
  const list = document.querySelector("[data-kept-list]");
  if (!list || typing(list)) return;
  const waiting = all.filter((e) => e.state !== "sent");
  const sent = all.filter((e) => e.state === "sent" && !foreign(e)).reverse();
  list.replaceChildren();
  for (const e of waiting) {
    const li = row(list, e);
    if (e.state === "refused" && !foreign(e)) decide(li, e);
  }
  const old = document.querySelector("[data-kept-sent]");
  old.replaceChildren();
  for (const e of sent) row(old, e);
  document.querySelector("[data-kept-none]").hidden = waiting.length > 0;
  document.querySelector("[data-kept-none-sent]").hidden = sent.length > 0;
  document.querySelector("[data-kept-send]").hidden = waiting.length === 0;
}

const PART_OF_PAGE = /\/(start|finish|note|reading|correct|read|ply|mix|lot|leak|wrong|visit|finding|put-right|sign-off|move)$/;

function here(entry) {
  const path = entry.path.replace(/\?.*/, "");
  // the page of one lot is told from another's by what stands after its question mark
  if (path === "/stores/lot/move" && value(entry, "lot") !== new URLSearchParams(location.search).get("lot")) return false;
  return path.replace(PART_OF_PAGE, "") === location.pathname.replace(/\/read$/, "");
}

function onPage(all) {
  const list = document.querySelector("[data-kept-here]");
  if (!list) return;
  const born = Number(root.dataset.keptAt || performance.timeOrigin);
  const mine = all.filter((e) => here(e) && !foreign(e) && (e.state !== "sent" || (e.sentAt || 0) > born));
  list.replaceChildren();
  for (const e of mine) row(list, e);
  const started = mine.some((e) => e.state === "kept" && /\/start(\?|$)/.test(e.path));
  for (const part of document.querySelectorAll("[data-kept-after=start]")) part.hidden = !started;
  for (const button of document.querySelectorAll("[data-kept-after=start] button")) button.classList.toggle("main", started);
  for (const part of document.querySelectorAll("#start, button[form=start]")) part.hidden = started;
  const plies = mine.filter((e) => e.state !== "refused" && /\/ply(\?|$)/.test(e.path)).map((e) => value(e, "ply"));
  document.dispatchEvent(new CustomEvent("fayline:plies", { detail: plies }));
}

// A form whose text is kept begins anew: what is typed next is another entry.
function renew(all) {
  const used = new Set(all.map((e) => e.id));
  for (const form of document.querySelectorAll("form[data-draft]")) {
    if (!form.elements.once || !used.has(form.elements.once.value)) continue;
    sessionStorage.removeItem(`draft ${location.pathname} ${form.dataset.draft}`);
    form.reset();
    form.elements.once.value = crypto.randomUUID();
  }
}

// On a fit without network: on to the next station that has no reading, here or kept; after the last gap to the flush where it follows.
function onward(all) {
  if (location.hash !== "#kept" || !root.dataset.keptAt) return;
  const stations = [...document.querySelectorAll("a[data-mark]")];
  const at = stations.findIndex((a) => a.getAttribute("aria-current"));
  const state = new URLSearchParams(location.search).get("state");
  const mine = all.filter((e) => here(e) && e.state !== "sent" && (!state || value(e, "state") === state));
  const kind = document.querySelector(".keypad-form [name=kind]")?.value;
  const read = new Set(mine.filter((e) => value(e, "kind") === kind).map((e) => value(e, "station")));
  if (at < 0 || !read.has(stations[at].dataset.mark)) return;
  const next = [...stations.slice(at + 1), ...stations.slice(0, Math.max(at, 0))]
    .find((a) => !read.has(a.dataset.mark) && a.querySelector(".typed")?.textContent === "not read");
  const then = stations[0].dataset.then;
  if (next) location.replace(`${next.getAttribute("href")}#kept`);
  else if (then && mine.every((e) => value(e, "kind") !== "flush")) location.replace(`${then}#kept`);
}

// The record does not go on from where this device saw it end.
function alarm(broken) {
  document.querySelector("[data-broken-line]")?.remove();
  const line = document.getElementById("broken-line");
  if (!broken || !line) return;
  document.getElementById("main").before(line.content.cloneNode(true));
  document.querySelector("[data-broken-seen]").textContent = String(broken.seen);
}

async function show() {
  const all = await store.all();
  const waiting = all.filter((e) => e.state !== "sent");
  for (const e of document.querySelectorAll("[data-kept-count]")) e.hidden = waiting.length === 0;
  for (const e of document.querySelectorAll("[data-kept-number]")) e.textContent = String(waiting.length);
  alarm(await store.fact("broken"));
  renew(all);
  lists(all);
  onPage(all);
  return all;
}

function line(text) {
  const e = document.querySelector("[data-kept-line]");
  if (e) { e.textContent = text; e.hidden = !text; }
}

async function send() {
  const worker = (await navigator.serviceWorker.ready).active;
  if (worker) worker.postMessage("send");
}

async function begin() {
  const watched = navigator.serviceWorker.controller !== null;
  await navigator.serviceWorker.register("/worker.js");
  new BroadcastChannel("fayline-kept").addEventListener("message", show);
  const all = await show();
  if (root.dataset.keptAt) {
    line(`No network. This page is as it was at ${new Date(Number(root.dataset.keptAt)).toLocaleString([], { dateStyle: "medium", timeStyle: "short" })}.`);
    onward(all);
  }
  if (all.some((e) => e.state !== "sent") && navigator.storage?.persist) navigator.storage.persist();
  send();
  self.addEventListener("online", send);
  // a page from the store that was brought up to date is one of now
  document.addEventListener("fayline:renewed", () => { delete root.dataset.keptAt; line(""); show(); });
  document.addEventListener("visibilitychange", () => { if (!document.hidden) send(); });
  setInterval(async () => { if ((await store.all()).some((e) => e.state === "kept")) send(); }, SEND_EVERY_MS);
  document.querySelector("[data-kept-send]")?.addEventListener("click", send);
  const marked = [...document.querySelectorAll("a[data-mark]")];
  const stations = [...marked.map((a) => a.getAttribute("href")), ...marked.map((a) => a.dataset.then).filter(Boolean)];
  const worker = (await navigator.serviceWorker.ready).active;
  // the page that was there before the worker is kept too
  if (!watched && worker) worker.postMessage({ remember: [location.pathname + location.search] });
  if (stations.length > 0 && !root.dataset.keptAt && worker) worker.postMessage({ remember: stations });
}

// Said where one asks, and where something would be kept.
function lacks(words) {
  for (const e of document.querySelectorAll("[data-kept-able]")) e.textContent = words;
  if (document.querySelector("[data-kept-here]")) line(words);
}

for (const e of document.querySelectorAll("[data-kept-able]")) {
  e.textContent = "This device keeps entries while there is no network, and cards and fits that were opened on it.";
}
if (able) begin().catch((e) => lacks(e.name === "SecurityError" ? UNTRUSTED : `Entries cannot be kept on this phone: ${e.message}`));
else lacks(LACKS);
