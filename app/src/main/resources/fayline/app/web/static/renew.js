// Takes over from a page that was fetched anew what the program changed in it since it was last served, and leaves all else alone: what is
// typed, unfolded, scrolled to or has the focus, and what other scripts did. For that the page is kept as it was served.
const main = document.getElementById("main");
const SAME_FOR_ALL = 'input[name="once"], input[name="csrf"], input[name="seen-head"]';
const FIELDS = "input:not([type=hidden]), textarea, select";

// From a node as it was served to the one on the screen.
const shown = new Map();
let served = main.cloneNode(true);
couple(served, main);
bare(served);

function couple(copy, node) {
  shown.set(copy, node);
  [...copy.childNodes].forEach((c, i) => couple(c, node.childNodes[i]));
}

// Without what differs on every page or is said once, so that only news differ.
function bare(part) {
  part.querySelectorAll(SAME_FOR_ALL).forEach((e) => e.setAttribute("value", ""));
  part.querySelectorAll(".said[role=status]").forEach((e) => e.remove());
}

function changed(e) {
  if (e.matches("[type=checkbox], [type=radio]")) return e.checked !== e.defaultChecked;
  if (!e.matches("select")) return e.value !== e.defaultValue;
  const usual = Math.max(0, [...e.options].findIndex((o) => o.defaultSelected));
  return e.selectedIndex !== usual;
}

// A form that somebody is in stays as it is: a number typed for one thing may not end up under another.
function inHand(part) {
  if (!(part instanceof Element)) return false;
  const at = document.activeElement;
  if (part.contains(at) && at.matches(FIELDS)) return true;
  const fields = [...part.querySelectorAll(FIELDS)];
  if (part.matches(FIELDS)) fields.push(part);
  return fields.some(changed);
}

// What tells one of several from the others: its own id or that of the first thing in it, what it leads to, or its heading.
function sign(node) {
  if (node.nodeType !== Node.ELEMENT_NODE) return `#${node.nodeType}`;
  const own = node.id || node.getAttribute("aria-labelledby") || node.getAttribute("href") || node.getAttribute("name");
  const inner = own || node.querySelector("[id]")?.id || node.querySelector("a[href]")?.getAttribute("href");
  return `${node.nodeName} ${inner || node.querySelector("summary, h2, h3, strong")?.textContent.trim() || ""}`;
}

// Whether one may have become the other: with forms in them they must ask for the same, so that no form stands under another's name.
function related(a, b) {
  if (a.nodeName !== b.nodeName || a.nodeType !== Node.ELEMENT_NODE) return false;
  const [x, y] = [a, b].map((e) => new Set([...e.querySelectorAll("form [id], form[id]")].map((f) => f.id)));
  return x.size === 0 && y.size === 0 ? !a.id && !b.id : [...x].some((id) => y.has(id));
}

class Renewal {
  constructor(page) {
    this.fresh = page.getElementById("main");
    this.values = {};
    for (const name of ["once", "csrf", "seen-head"]) this.values[name] = this.fresh.querySelector(`input[name="${name}"]`)?.value || "";
    this.kept = [];
    bare(this.fresh);
  }

  // Whether all could be taken over.
  run() {
    this.node(served, this.fresh);
    for (const [old, now] of this.kept) now.replaceWith(old);
    served = this.fresh;
    for (const key of [...shown.keys()]) if (!served.contains(key)) shown.delete(key);
    this.basis();
    return this.kept.length === 0;
  }

  node(old, now) {
    const here = shown.get(old);
    if (old.isEqualNode(now)) { this.carry(old, now); return; }
    // another script has put something else there
    if (!here?.isConnected) return;
    if (here.nodeName === "FORM" && inHand(here)) { this.keep(old, now); return; }
    shown.set(now, here);
    if (now.nodeType !== Node.ELEMENT_NODE) { here.nodeValue = now.nodeValue; return; }
    if (now.matches("svg, select")) {
      if (inHand(here)) { this.keep(old, now); return; }
      const made = this.made(now);
      here.replaceWith(made);
      couple(now, made);
      return;
    }
    if (now.matches(FIELDS) && inHand(here)) { this.keep(old, now); return; }
    this.attributes(old, now, here);
    this.children(old, now, here);
    if (now.matches("textarea")) here.value = here.defaultValue;
  }

  carry(old, now) {
    shown.set(now, shown.get(old));
    [...now.childNodes].forEach((c, i) => this.carry(old.childNodes[i], c));
  }

  keep(old, now) { this.kept.push([old, now]); }

  attributes(old, now, here) {
    for (const a of [...old.attributes]) if (!now.hasAttribute(a.name) && a.name !== "open") here.removeAttribute(a.name);
    for (const a of [...now.attributes]) {
      if (old.getAttribute(a.name) === a.value || a.name === "open") continue;
      here.setAttribute(a.name, a.value);
      if (a.name === "value" && here.matches(FIELDS)) here.value = a.value;
    }
    if (here.matches("[type=checkbox], [type=radio]")) here.checked = here.defaultChecked;
  }

  children(old, now, here) {
    const before = [...old.childNodes];
    const pairs = this.pairs(before, [...now.childNodes]);
    const stays = new Set(pairs.filter((p) => p[0]).map((p) => p[0]));
    for (const gone of before.filter((b) => !stays.has(b))) this.remove(gone, now);
    const mine = new Set(before.map((b) => shown.get(b)));
    let last = null;
    for (const [was, is] of pairs) {
      const there = was ? shown.get(was) : null;
      let node = there;
      if (was) this.node(was, is);
      else { node = this.made(is); couple(is, node); }
      if (was && shown.get(is)) node = shown.get(is);
      if (!node) continue;
      let next = last ? last.nextSibling : here.firstChild;
      // what other scripts put in stays where it is
      while (next && next !== node && !mine.has(next)) next = next.nextSibling;
      if (next !== node && node.parentNode === here && !inHand(node)) here.insertBefore(node, next);
      else if (node.parentNode !== here) here.insertBefore(node, next);
      mine.add(node);
      last = node;
    }
  }

  pairs(before, after) {
    if (before.length === after.length && before.every((b, i) => sign(b) === sign(after[i]))) return after.map((a, i) => [before[i], a]);
    const free = new Map();
    for (const b of before) {
      const s = sign(b);
      if (!free.has(s)) free.set(s, []);
      free.get(s).push(b);
    }
    const pairs = after.map((a) => [free.get(sign(a))?.shift() || null, a]);
    const left = [...free.values()].flat().sort((a, b) => before.indexOf(a) - before.indexOf(b));
    for (const pair of pairs.filter((p) => !p[0])) {
      const i = left.findIndex((b) => related(b, pair[1]));
      if (i >= 0) [pair[0]] = left.splice(i, 1);
    }
    return pairs;
  }

  remove(gone, now) {
    const node = shown.get(gone);
    if (!node) return;
    if (!inHand(node)) { node.remove?.(); return; }
    // it is no longer served, yet somebody types in it: it stays, and the next page is compared with it again
    const place = document.createComment("");
    now.append(place);
    this.keep(gone, place);
  }

  made(now) {
    const made = document.importNode(now, true);
    for (const [name, value] of Object.entries(this.values)) {
      made.querySelectorAll?.(`input[name="${name}"]`).forEach((e) => e.setAttribute("value", value));
    }
    return made;
  }

  // Forms nobody is in were served anew: what they change is seen as of now. A program that was started anew gave another token.
  basis() {
    for (const e of main.querySelectorAll('input[name="csrf"]')) if (this.values.csrf) e.value = this.values.csrf;
    const left = new Set(this.kept.map(([old]) => shown.get(old)));
    for (const e of main.querySelectorAll('input[name="seen-head"]')) {
      if (this.values["seen-head"] && !left.has(e.form) && !inHand(e.form)) e.value = this.values["seen-head"];
    }
  }
}

// Takes over what is new in a page; whether all of it could be.
export function renew(page) {
  const at = document.elementFromPoint(innerWidth / 2, Math.min(120, innerHeight / 2));
  const top = at?.getBoundingClientRect().top;
  const whole = new Renewal(page).run();
  // where the browser does not hold the place by itself
  if (!CSS.supports("overflow-anchor", "auto") && at?.isConnected && main.contains(at)) scrollBy(0, at.getBoundingClientRect().top - top);
  document.dispatchEvent(new Event("fayline:renewed"));
  return whole;
}
