// Follows the record while the page is seen: the program says how far it is, the page fetches itself and takes over what is new. Where
// the stream is refused or falls silent, the page asks now and then.
import { renew } from "/static/renew.js";

const root = document.documentElement;
const line = document.querySelector("[data-live-line]");
const EARLIEST_MS = 300;
const SILENT_MS = 25000;
const ASK_MS = 5000;
const STREAM_AGAIN_MS = 60000;
const MINUTE_MS = 60000;

const NOW = "See the page as it is now.";

const parsed = (text) => {
  const [record, head, plan, definition] = text.split(" ");
  return { record, head: Number(head), plan, definition, text };
};
let shown = parsed(root.dataset.latest || "- 0 - -");
let wanted = shown;
let stream = null;
let heard = Date.now();
let asking = 0;
let refused = 0;
let unanswered = 0;
let fetchedAt = Date.now();
let waiting = 0;

function say(text, link) {
  delete line.dataset.passing;
  line.replaceChildren(text);
  if (link) {
    const a = document.createElement("a");
    a.href = location.href;
    a.textContent = link;
    // beside this page: nothing that is typed here is lost
    a.target = "_blank";
    a.rel = "noopener";
    line.append(" ", a);
  }
  line.hidden = !text;
}

// The newest entry that this device was shown, of this record.
function seen() {
  try {
    const kept = parsed(localStorage.getItem("fayline-seen") || "- 0 - -");
    return kept.record === shown.record ? kept.head : 0;
  } catch { return 0; }
}

function remember() {
  try { if (shown.head > seen()) localStorage.setItem("fayline-seen", shown.text); } catch { /* no room: only this page remembers */ }
}

// Never an older state than before without a word.
function isOld(head) {
  const before = Math.max(seen(), head);
  if (head === before) return false;
  say(`Here the record ends with entry ${head}; this device has seen entry ${before}. The page asks again. If this stays, the record was put back: tell the lead.`);
  return true;
}

async function get(address) {
  const answer = await fetch(address, { redirect: "manual", cache: "no-store", headers: { "Fayline-By-Itself": "yes" } });
  if (answer.type === "opaqueredirect") say("Your sign-in has ended. What is typed here stays.", "Sign in beside it.");
  if (answer.status === 404) say("What this page shows is no longer there.", NOW);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}`);
  return answer.text();
}

const about = (part) => part.querySelector("[data-about]")?.dataset.about || "";

// Who and which project the page is for, without what a script tells there of this device.
function whose(page) {
  const head = page.querySelector(".head-line")?.cloneNode(true);
  head?.querySelector("[data-kept-count]")?.remove();
  return head?.textContent.replace(/\s+/g, " ").trim() || "";
}

async function refresh() {
  const page = new DOMParser().parseFromString(await get(location.pathname + location.search), "text/html");
  const now = parsed(page.documentElement.dataset.latest || "- 0 - -");
  fetchedAt = Date.now();
  if (!page.getElementById("main") || page.documentElement.dataset.live !== "true") throw new Error("another page");
  if (now.record === shown.record && isOld(now.head)) throw new Error("an older page");
  if (whose(page) !== whose(document)) { say("This device is another person's or project's now.", NOW); return; }
  if (about(page) !== about(document)) { say("What this page asks for was entered meanwhile.", NOW); return; }
  const entries = now.head - shown.head;
  const whole = renew(page);
  for (const part of [".demo-line", ".foot"]) {
    const mine = document.querySelector(part);
    const theirs = page.querySelector(part);
    if (mine && theirs) mine.replaceChildren(...[...theirs.childNodes].map((n) => document.importNode(n, true)));
  }
  shown = now;
  root.dataset.latest = now.text;
  remember();
  if (whole) say("");
  else say(`${entries === 1 ? "A new entry is" : entries > 1 ? `${entries} new entries are` : "News are"} also about the form you are in. It stays as it is; what you send is checked against what is new.`, NOW);
}

// One fetch at a time, and none sooner than the last one took: many phones may not keep the program from its work.
function soon() {
  if (waiting) return;
  const patience = EARLIEST_MS * (0.5 + Math.random());
  waiting = setTimeout(async () => {
    const begin = Date.now();
    const target = wanted;
    try { await refresh(); unanswered = 0; } catch { unanswered += 1; }
    const rest = Math.max(700, 3 * (Date.now() - begin)) + (unanswered ? ASK_MS : 0);
    setTimeout(() => { waiting = 0; if (wanted.text !== target.text || unanswered) soon(); }, rest);
  }, patience);
}

function news(text) {
  heard = Date.now();
  unanswered = 0;
  const now = parsed(text);
  wanted = now;
  if (now.text !== shown.text) soon();
  else if (line.dataset.passing) say("");
}

async function ask() {
  try {
    news(await get("/live/head"));
  } catch {
    unanswered += 1;
    // a page from this device's own store says so itself
    if (unanswered < 3 || !line.hidden || root.dataset.keptAt) return;
    say(`Nothing was heard from the program since ${new Date(heard).toTimeString().slice(0, 5)}. What stands here may be old.`);
    line.dataset.passing = "yes";
  }
}

function askNowAndThen() {
  stream?.close();
  stream = null;
  refused = Date.now();
  root.dataset.follows = "asking";
  if (!asking) { asking = setInterval(ask, ASK_MS); ask(); }
}

function listen() {
  clearInterval(asking);
  asking = 0;
  stream = new EventSource("/live");
  heard = Date.now();
  stream.addEventListener("head", (event) => { root.dataset.follows = "stream"; news(event.data); });
  // the program has enough of them: others are listened to
  stream.addEventListener("enough", askNowAndThen);
  stream.addEventListener("error", () => { if (stream?.readyState === EventSource.CLOSED) askNowAndThen(); });
}

function rest() {
  stream?.close();
  stream = null;
  clearInterval(asking);
  asking = 0;
}

// Only while the page is seen: a browser holds few connections to one address.
function watch() {
  if (document.hidden) { rest(); return; }
  if (!stream && !asking) { if ("EventSource" in self) listen(); else askNowAndThen(); }
  if (stream && Date.now() - heard > SILENT_MS) askNowAndThen();
  else if (asking && "EventSource" in self && Date.now() - refused > STREAM_AGAIN_MS) listen();
  // what is due, open or shut moves with the clock though nothing is entered
  if (Date.now() - fetchedAt > MINUTE_MS) { fetchedAt = Date.now(); soon(); }
}

if (root.dataset.live === "true") {
  if (root.dataset.keptAt || isOld(shown.head)) soon(); else remember();
  watch();
  setInterval(watch, 2000);
  document.addEventListener("visibilitychange", watch);
  // a page that the browser kept and shows again
  addEventListener("pageshow", (event) => { if (event.persisted) { isOld(shown.head); soon(); watch(); } });
  addEventListener("pagehide", rest);
}
