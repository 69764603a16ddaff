// Runs beside the pages. Keeps pages and files for when there is no network, and keeps forms that could not be sent before the
// screen says so. Nothing here decides about an entry: the program does, when it gets it.
importScripts("/static/kept-store.js");

const FILES = "fayline-files-1";
const PAGES = "fayline-pages-1";
const MOST_PAGES = 80;
const PATIENCE_MS = 6000;
// photos take their time over bad wireless: so many bytes a millisecond are waited for
const SLOW_BYTES_PER_MS = 50;
const MOST_PATIENCE_MS = 45000;
// of photos with one note, so that what is sent later is not too long at once
const MOST_PHOTO_BYTES = 8000000;
const SHELL = [
  "/kept", "/static/app.css", "/static/tokens.css", "/static/mark.svg", "/static/app.js", "/static/kept-store.js", "/static/kept.js",
  "/static/better.js", "/static/clocks.js", "/static/confirm.js", "/static/cups.js", "/static/plies.js", "/static/drafts.js", "/static/files.js", "/static/folds.js",
  "/static/keypad.js", "/static/labels.js", "/static/door.js", "/static/lines.js", "/static/live.js", "/static/pack.js", "/static/photos.js", "/static/pots.js",
  "/static/renew.js", "/static/ring.js", "/static/shop-clock.js",
  "/fonts/AtkinsonHyperlegible-Regular.ttf", "/fonts/AtkinsonHyperlegible-Bold.ttf", "/lib/htmx/dist/htmx.min.js",
];
const KEPT_PAGES = /^\/$|^\/kept$|^\/card\/[^/]+\/\d+\/[^/]+$|^\/fits$|^\/fit\/[^/]+(\/read)?$|^\/inspections$|^\/stores\/(receive|count|lot)$/;
const FORMS = new RegExp([
  "^/card/[^/]+/\\d+/[^/]+/(start|finish|note|reading|correct|ply|mix|lot|leak|wrong)$",
  "^/fit/[^/]+/read$",
  "^/inspections/(visit|finding|put-right|sign-off)$",
  "^/stores/(receive|count|lot/move)$",
].join("|"));
const OWN_FILES = /^\/(static|fonts|lib)\//;
const NO_ENTRY_OF_FORM = ["csrf", "once", "seen-project", "seen-person"];

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const files = await caches.open(FILES);
    for (const one of SHELL) {
      const answer = await fetch(one, { redirect: "error" });
      if (!answer.ok) throw new Error(`${one} answered ${answer.status}`);
      await (one === "/kept" ? remember("/kept", answer) : files.put(one, answer));
    }
    await self.skipWaiting();
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (![FILES, PAGES].includes(name)) await caches.delete(name);
    await self.clients.claim();
  })());
});

self.addEventListener("message", (event) => {
  if (event.data === "send") event.waitUntil(self.faylineKept.send().catch(() => { /* it is tried again */ }));
  if (event.data && event.data.remember) event.waitUntil(ahead(event.data.remember));
});
self.addEventListener("sync", (event) => event.waitUntil(self.faylineKept.send()));

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (url.origin !== location.origin) return;
  if (event.request.mode === "navigate" && event.request.method === "POST" && FORMS.test(url.pathname)) {
    event.respondWith(submit(event, url));
  } else if (event.request.mode === "navigate" && event.request.method === "POST" && /^\/sign-(in|out)/.test(url.pathname)) {
    // whoever comes next opens their own pages; what was typed stays until its own person sends it
    event.waitUntil(caches.delete(PAGES));
  } else if (event.request.mode === "navigate" && event.request.method === "GET") {
    event.respondWith(page(event, url));
  } else if (event.request.method === "GET" && OWN_FILES.test(url.pathname)) {
    event.respondWith(file(event.request));
  } else if (event.request.method === "GET" && event.request.headers.has("Fayline-By-Itself") && KEPT_PAGES.test(url.pathname)) {
    event.respondWith(renewed(event, url));
  }
});

function within(ms, promise) {
  return Promise.race([promise, new Promise((yes, no) => setTimeout(() => no(new Error("no answer in time")), ms))]);
}

async function file(request) {
  const files = await caches.open(FILES);
  try {
    const answer = await fetch(request);
    if (answer.ok && answer.status === 200) await files.put(request.url, answer.clone());
    return answer;
  } catch (gone) {
    return (await files.match(request.url, { ignoreVary: true })) || Promise.reject(gone);
  }
}

// A page is kept with the moment at which it was fetched, for its clocks, and stands as the newest.
async function remember(address, answer) {
  const pages = await caches.open(PAGES);
  const html = await answer.text();
  const key = new URL(address, location.origin).href.replace(/#.*/, "");
  await pages.delete(key, { ignoreVary: true });
  await pages.put(key, new Response(html, {
    headers: { "Content-Type": "text/html; charset=utf-8", "Fetched": String(Date.now()), "Content-Security-Policy": answer.headers.get("Content-Security-Policy") || "default-src 'self'" },
  }));
  const keys = (await pages.keys()).filter((k) => new URL(k.url).pathname !== "/kept");
  for (const old of keys.slice(0, Math.max(0, keys.length - MOST_PAGES))) await pages.delete(old, { ignoreVary: true });
}

// Pages that one goes on to: the stations of a fit, and again for their flush.
async function ahead(addresses) {
  const pages = await caches.open(PAGES);
  for (const address of addresses.slice(0, 60)) {
    if (!KEPT_PAGES.test(new URL(address, location.origin).pathname)) continue;
    if (await pages.match(new URL(address, location.origin).href, { ignoreVary: true })) continue;
    const answer = await fetch(address, { redirect: "error" });
    if (answer.ok) await remember(address, answer);
  }
}

// When a form was answered last.
let taken = 0;

async function page(event, url) {
  const stored = KEPT_PAGES.test(url.pathname) ? await kept(url) : null;
  try {
    const asked = fetch(event.request);
    // where a form was taken just now, the program is there, and its page says what became of the form
    const patience = Date.now() - taken < PATIENCE_MS ? MOST_PATIENCE_MS : PATIENCE_MS;
    const answer = await (stored ? within(patience, asked) : asked);
    if (answer.ok && answer.status === 200 && KEPT_PAGES.test(url.pathname)) {
      event.waitUntil(remember(url.href, answer.clone()));
    }
    return answer;
  } catch {
    return stored || absent();
  }
}

// What an open page fetched of itself is what its reader saw last: without network they are shown no less.
async function renewed(event, url) {
  const answer = await fetch(event.request);
  if (answer.ok && answer.status === 200) event.waitUntil(remember(url.href, answer.clone()));
  return answer;
}

// The same page may have been opened with its project in the address and without.
function isSame(key, url) {
  const [a, b] = [new URL(key), url].map((u) => new URLSearchParams(u.search));
  const [p, q] = [a.get("project"), b.get("project")];
  a.delete("project");
  b.delete("project");
  return new URL(key).pathname === url.pathname && a.toString() === b.toString() && (!p || !q || p === q);
}

// Of all under which it was kept, the one fetched last.
async function newest(url) {
  const pages = await caches.open(PAGES);
  let last = null;
  for (const key of await pages.keys()) {
    const one = isSame(key.url, url) ? await pages.match(key, { ignoreVary: true }) : null;
    if (one && (!last || Number(one.headers.get("Fetched")) >= Number(last.headers.get("Fetched")))) last = one;
  }
  return last;
}

// A page from the store says when it was fetched, has no news of then, and its forms have fresh numbers: what is typed into it
// twice is two entries.
async function kept(url) {
  const found = await newest(url);
  if (!found) return null;
  const html = (await found.text())
    .replace("<html ", `<html data-kept-at="${found.headers.get("Fetched")}" `)
    .replace(/<div class="said" role="status"[^>]*>[^<]*<\/div>/, "")
    .replace(/name="once" value="[^"]*"/g, () => `name="once" value="${crypto.randomUUID()}"`);
  return new Response(html, { headers: found.headers });
}

function plain(status, title, ...sentences) {
  const body = `<!doctype html><html lang="en" data-theme="machine" data-density="fitting"><head><meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1"><title>${title} · Fayline</title>
<link rel="stylesheet" href="/static/app.css"></head><body><main id="main"><h1>${title}</h1>${sentences.map((s) => `<p>${s}</p>`).join("")}
<p><a class="button" href="/">Today</a> <a class="button" href="/kept">Kept on this phone</a></p></main></body></html>`;
  return new Response(body, { status, headers: { "Content-Type": "text/html; charset=utf-8", "Content-Security-Policy": "default-src 'self'" } });
}

function absent() {
  return plain(503, "No network", "The program cannot be reached, and this page was not opened on this phone before, so it is not kept here.",
    "Today, cards, fits, inspections and forms of the stores that were opened here can be read.");
}

async function submit(event, url) {
  const copy = event.request.clone();
  let ended = false;
  const sending = fetch(event.request);
  sending.catch(() => { /* heard below */ });
  const form = await copy.formData();
  const bytes = [...form.values()].reduce((sum, v) => sum + (typeof v === "string" ? 0 : v.size), 0);
  try {
    const answer = await within(Math.min(MOST_PATIENCE_MS, PATIENCE_MS + bytes / SLOW_BYTES_PER_MS), sending);
    // 401 and 403: the sign-in or the page is too old; 503: nobody knows whether it was taken. The number of the form tells.
    // Each page of the program has a policy: a refusal without one is the server's at half a request, or of something between.
    const ours = answer.type === "opaqueredirect" || answer.ok || answer.headers.has("Content-Security-Policy");
    if (ours && ![401, 403, 503].includes(answer.status)) {
      taken = Date.now();
      return answer;
    }
    ended = answer.status === 401;
  } catch { /* no network */ }
  try {
    await keep(form, url);
  } catch (e) {
    return plain(507, "Not kept", "There is no network, and this phone could not keep the entry either. Nothing was recorded.",
      `Go back: what was typed is still there. The browser says: ${String(e && e.name).replace(/[^A-Za-z]/g, "")}`);
  }
  if (self.registration.sync) self.registration.sync.register("send").catch(() => { /* the pages send it */ });
  // the page it stood on is not shown to somebody who is not signed in, so it is said here
  if (ended) {
    return plain(401, "Kept on this phone", "Your sign-in has ended. What you typed is kept on this phone and not yet in the record.",
      "It is sent by itself once you sign in here again, and by nobody else.");
  }
  return Response.redirect(back(event.request, url), 303);
}

// A file as text, as the program reads it again.
async function asText(file) {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const pieces = [];
  for (let i = 0; i < bytes.length; i += 32768) pieces.push(String.fromCharCode(...bytes.subarray(i, i + 32768)));
  return `data:image/jpeg;base64,${btoa(pieces.join(""))}`;
}

async function keep(form, url) {
  const typed = [];
  let bytes = 0;
  for (const [name, value] of form) {
    if (NO_ENTRY_OF_FORM.includes(name)) continue;
    if (typeof value === "string") typed.push(name, value);
    else if (value.size > 0) {
      bytes += value.size;
      if (bytes > MOST_PHOTO_BYTES) throw new DOMException("photos", "PhotosTooLarge");
      typed.push(name, await asText(value));
    }
  }
  const now = Date.now();
  const { at, sure } = await self.faylineKept.shopTime(now);
  return self.faylineKept.add({
    id: form.get("once") || crypto.randomUUID(),
    path: url.pathname + url.search,
    project: String(form.get("seen-project") || ""),
    by: String(form.get("by") || form.get("seen-person") || ""),
    at,
    typed: now,
    fields: typed,
    record: (await self.faylineKept.fact("record")) || "",
    ...(sure ? {} : { state: "refused", typed: null, say: "This phone's clock has gone back. Set it, and say below when this was." }),
  });
}

// Back to the page that the form stood on.
function back(request, url) {
  let from = url.pathname.startsWith("/card/") ? new URL(url.pathname.replace(/\/[a-z]+$/, "") + url.search, location.origin) : null;
  if (!from) {
    from = new URL(request.referrer || "/", location.origin);
    if (from.origin !== location.origin) from = new URL("/", location.origin);
  }
  return from.href.replace(/#.*/, "") + "#kept";
}
