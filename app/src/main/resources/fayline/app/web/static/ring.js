// Clocks that ring: by sound, by shaking, in the title, and as a notice where that was allowed. Each rings once on a device. Moments are
// the shop's; the phone's own clock only measures how long it is until then.
import { ahead, shopNow } from "/static/shop-clock.js";

const root = document.documentElement;
const MINUTE = 60000;
const LATE = 12 * 60 * MINUTE;
const JUST_NOW = 15 * MINUTE;
const MOVED = 10 * MINUTE;
const MEMORY = 14 * 24 * 60 * MINUTE;
const ROUNDS = 40;
const TITLE = document.title;

let audio = null;
let ringing = [];
let rounds = 0;
let beat = 0;
let lock = null;

function kept(name) {
  try { return JSON.parse(localStorage.getItem(name) || "{}"); } catch { return {}; }
}

function keep(name, value) {
  try { localStorage.setItem(name, JSON.stringify(value)); } catch { /* no room: only this page remembers */ }
}

const isSilent = () => kept("fayline-silent").yes === true;
const clocks = () => [...document.querySelectorAll("time[data-ring]")].map((el) => ({
  key: el.dataset.ring,
  says: el.dataset.ringSays || "",
  at: Date.parse(el.dateTime) - Number(el.dataset.ringEarly || 0) * MINUTE,
})).filter((c) => !Number.isNaN(c.at));

// Browsers let sound out only after the page was touched.
function wake() {
  if (!self.AudioContext || clocks().length === 0) return;
  audio ??= new AudioContext();
  if (audio.state === "suspended") audio.resume();
}

function tone(at, hertz) {
  const voice = audio.createOscillator();
  const volume = audio.createGain();
  voice.type = "triangle";
  voice.frequency.value = hertz;
  volume.gain.setValueAtTime(0, at);
  volume.gain.linearRampToValueAtTime(0.6, at + 0.03);
  volume.gain.linearRampToValueAtTime(0, at + 0.28);
  voice.connect(volume).connect(audio.destination);
  voice.start(at);
  voice.stop(at + 0.3);
}

function sound() {
  if (audio?.state === "running") [740, 740, 988].forEach((hertz, i) => tone(audio.currentTime + i * 0.35, hertz));
  navigator.vibrate?.([400, 200, 400]);
}

function round() {
  rounds += 1;
  document.title = rounds % 2 ? `Ringing: ${ringing[0].says}` : TITLE;
  if (rounds <= ROUNDS) sound();
}

async function notice(c) {
  if (!self.Notification || Notification.permission !== "granted") return;
  const told = { body: "A clock of Fayline. Check by hand.", tag: c.key };
  try {
    const worker = await navigator.serviceWorker?.getRegistration();
    if (worker) await worker.showNotification(c.says, told); else new Notification(c.says, told);
  } catch { /* some phones let no page give notice by itself */ }
}

function banner() {
  document.querySelector("[data-ringing-box]")?.remove();
  if (ringing.length === 0) return;
  const box = document.createElement("div");
  box.className = "ringing";
  box.dataset.ringingBox = "";
  box.setAttribute("role", "alert");
  for (const c of ringing) {
    const p = document.createElement("p");
    p.className = "big";
    p.textContent = c.says;
    box.append(p);
  }
  const button = document.createElement("button");
  button.type = "button";
  button.className = "main";
  button.textContent = "Silence";
  button.addEventListener("click", silence);
  box.append(button);
  document.querySelector("main").before(box);
}

function silence() {
  ringing = [];
  clearInterval(beat);
  beat = 0;
  navigator.vibrate?.(0);
  document.title = TITLE;
  delete root.dataset.ringing;
  banner();
}

function ring(c) {
  ringing.push(c);
  rounds = 0;
  root.dataset.ringing = c.key;
  banner();
  notice(c);
  if (beat === 0) beat = setInterval(round, 2500);
  round();
}

// Rings what is over and was awaited on this device, or was over only just now when the page was opened.
function check() {
  const now = shopNow();
  const states = kept("fayline-rings");
  let changed = false;
  for (const c of clocks()) {
    const state = states[c.key] || {};
    const over = now - c.at;
    if (over < 0) {
      if (state.awaited !== c.at) { states[c.key] = { ...state, awaited: c.at }; changed = true; }
    } else if (Math.abs((state.rung || 0) - c.at) > MOVED && over < LATE && (state.awaited || over < JUST_NOW)) {
      states[c.key] = { rung: c.at };
      changed = true;
      if (!isSilent()) ring(c);
    }
  }
  for (const [key, s] of Object.entries(states)) {
    if (now - (s.rung || s.awaited || 0) > MEMORY) { delete states[key]; changed = true; }
  }
  if (changed) keep("fayline-rings", states);
}

function moment(at) {
  const when = new Date(at - ahead);
  const time = `${String(when.getHours()).padStart(2, "0")}:${String(when.getMinutes()).padStart(2, "0")}`;
  const days = Math.round((new Date(when).setHours(0, 0, 0, 0) - new Date().setHours(0, 0, 0, 0)) / (24 * 60 * MINUTE));
  return days === 0 ? time : days === 1 ? `${time} tomorrow` : `${time} in ${days} days`;
}

// The times are those of this device's own clock, since its own alarm is set by that.
function alarms() {
  const now = shopNow();
  const next = [...new Set(clocks().filter((c) => c.at > now).sort((a, b) => a.at - b.at).map((c) => moment(c.at)))].slice(0, 3);
  for (const p of document.querySelectorAll("[data-ring-alarm]")) {
    if (next.length > 0) p.textContent = `A locked phone may stay silent: set its own alarm too, for ${next.join(", ")}.`;
  }
}

// The screen stays on while a card is open of which a clock runs.
async function stayAwake() {
  const now = shopNow();
  const runs = document.querySelector("[data-stay-awake]") && clocks().some((c) => c.at > now);
  if (!runs) { lock?.release(); lock = null; return; }
  if (lock || document.hidden || !navigator.wakeLock) return;
  try {
    lock = await navigator.wakeLock.request("screen");
    lock.addEventListener("release", () => { lock = null; awake(false); });
    awake(true);
  } catch { awake(false); }
}

function awake(yes) {
  for (const p of document.querySelectorAll("[data-ring-awake]")) p.textContent = yes ? "The screen stays on while this card is open." : "";
}

function say(text) {
  for (const p of document.querySelectorAll("[data-ring-says]:not(time)")) p.textContent = text;
}

async function tryOut() {
  wake();
  if (self.Notification && Notification.permission === "default") await Notification.requestPermission();
  if (audio?.state === "suspended") await audio.resume();
  sound();
  const notices = !self.Notification ? "This browser gives no notices." : Notification.permission === "granted"
    ? "Notices are allowed." : "Notices are not allowed: only an open page rings.";
  say(`${audio ? "That is how it rings." : "This browser makes no sound."} ${notices}`);
}

for (const box of document.querySelectorAll("[data-ring-box]")) {
  box.querySelector("[data-ring-controls]").hidden = false;
  box.querySelector("[data-ring-try]").addEventListener("click", tryOut);
  const silent = box.querySelector("[data-ring-silent]");
  silent.checked = isSilent();
  silent.addEventListener("change", () => { keep("fayline-silent", { yes: silent.checked }); if (silent.checked) silence(); });
}

function all() {
  check();
  alarms();
  stayAwake();
}

for (const touch of ["pointerdown", "keydown"]) addEventListener(touch, wake);
for (const renewed of ["fayline:renewed", "fayline:pot", "visibilitychange"]) document.addEventListener(renewed, all);
all();
setInterval(all, 1000);
