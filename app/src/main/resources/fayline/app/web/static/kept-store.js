// What is kept on this device until it is in the record. Used by the pages and by the worker, so it is no module: it hangs its
// functions on "self". Format 1: an entry has n (its place in the row), id, path, project, by, at (when, by the shop's clock as it was
// last heard), typed (the same by this device's own clock; null where a person has said when), fields (name and value in turn),
// record (the record it was kept for), state ("kept", "refused" or "sent"), and once it was answered seq and say.
(() => {
  const FORMAT = 1;
  const SENT_SHOWN = 30;
  // nobody need be before the device: it is no use of a sign-in
  const BY_ITSELF = { "Fayline-By-Itself": "yes" };
  const done = (request) => new Promise((yes, no) => {
    request.onsuccess = () => yes(request.result);
    request.onerror = () => no(request.error);
  });

  function open() {
    const request = indexedDB.open("fayline-kept", 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("entries", { keyPath: "n", autoIncrement: true }).createIndex("id", "id", { unique: true });
      request.result.createObjectStore("facts");
    };
    return done(request);
  }

  // Resolves when the transaction is on the disk, not when it is only under way.
  async function within(stores, mode, act) {
    const db = await open();
    try {
      const t = db.transaction(stores, mode, { durability: "strict" });
      const over = new Promise((yes, no) => {
        t.oncomplete = yes;
        t.onabort = t.onerror = () => no(t.error || new Error("the browser keeps nothing more"));
      });
      const answer = await act(...stores.map((s) => t.objectStore(s)));
      await over;
      return answer;
    } finally {
      db.close();
    }
  }

  const fact = (name) => within(["facts"], "readonly", (facts) => done(facts.get(name)));
  const know = (name, value) => within(["facts"], "readwrite", (facts) => done(facts.put(value, name)));
  const all = () => within(["entries"], "readonly", (entries) => done(entries.getAll()));

  // The same form twice is one entry; another text under a number that is used is another entry and gets a number of its own.
  async function add(entry) {
    const kept = await within(["entries"], "readwrite", async (entries) => {
      const before = await done(entries.index("id").get(entry.id));
      if (before && JSON.stringify([before.path, before.fields]) === JSON.stringify([entry.path, entry.fields])) return before;
      const fresh = { ...entry, id: before ? crypto.randomUUID() : entry.id, format: FORMAT, state: entry.state || "kept" };
      fresh.n = await done(entries.add(fresh));
      return fresh;
    });
    tell();
    return kept;
  }

  async function change(n, how) {
    await within(["entries"], "readwrite", async (entries) => {
      const one = await done(entries.get(n));
      if (one) await done(entries.put({ ...one, ...how(one) }));
    });
    tell();
  }

  async function discard(n) {
    await within(["entries"], "readwrite", (entries) => done(entries.delete(n)));
    tell();
  }

  // What is in the record is shown for a while; only of those the oldest go.
  async function trim() {
    const sent = (await all()).filter((e) => e.state === "sent");
    for (const e of sent.slice(0, Math.max(0, sent.length - SENT_SHOWN))) await discard(e.n);
  }

  function tell() {
    new BroadcastChannel("fayline-kept").postMessage("changed");
  }

  // The narrow JSON of the record: no spaces, keys in order.
  function canonical(v) {
    if (Array.isArray(v)) return `[${v.map(canonical).join(",")}]`;
    if (v && typeof v === "object") return `{${Object.keys(v).sort().map((k) => `${JSON.stringify(k)}:${canonical(v[k])}`).join(",")}}`;
    return JSON.stringify(v);
  }

  // RFC 9162, section 2.1.4.2: whether a tree of "size" and "root" begins with the earlier one that this device saw.
  const bytes = (hex) => Uint8Array.from(hex.match(/../g), (two) => parseInt(two, 16));
  const hex = (buffer) => Array.from(new Uint8Array(buffer), (b) => b.toString(16).padStart(2, "0")).join("");
  const node = async (left, right) => hex(await crypto.subtle.digest("SHA-256", new Uint8Array([1, ...bytes(left), ...bytes(right)])));

  async function goesOn(seen, { size, root, path }) {
    if (size < seen.size) return false;
    if (size === seen.size) return root === seen.root;
    // halved by division: a shift takes 32 bits only
    const half = (n) => Math.floor(n / 2);
    let first = seen.size - 1;
    let last = size - 1;
    while (first % 2 === 1) { first = half(first); last = half(last); }
    const rest = [...path];
    let earlier = first === 0 ? seen.root : rest.shift();
    let later = earlier;
    for (const hash of rest) {
      if (last === 0) return false;
      if (first % 2 === 1 || first === last) {
        earlier = await node(hash, earlier);
        later = await node(hash, later);
        while (first > 0 && first % 2 === 0) { first = half(first); last = half(last); }
      } else {
        later = await node(later, hash);
      }
      first = half(first);
      last = half(last);
    }
    return last === 0 && earlier === seen.root && later === root;
  }

  // Each device holds the newest end of the record that it saw, and asks whether the record goes on from there.
  async function watch(seen, facts) {
    if (seen && seen.record === facts.record && seen.size > 0 && !await goesOn(seen, facts)) {
      await know("broken", { seen: seen.size, size: facts.size });
    } else {
      await know("tree", { record: facts.record, size: facts.size, root: facts.root });
      await know("broken", null);
    }
    tell();
  }

  async function head() {
    const seen = await fact("tree");
    const answer = await fetch(`/kept/head?size=${seen ? seen.size : 0}`, { headers: { Accept: "application/json", ...BY_ITSELF }, redirect: "error", cache: "no-store" });
    if (!answer.ok) throw new Error(`the program answered ${answer.status}`);
    const facts = await answer.json();
    await know("record", facts.record);
    await know("ahead", Date.parse(facts.now) - Date.now());
    await know("heard", Date.now());
    await watch(seen, facts);
    return facts;
  }

  const shown = (ms) => new Date(ms).toISOString().replace(/\.\d+Z$/, "Z");

  // When it is by the shop's clock. A device whose clock has gone back since it last heard the shop does not know.
  async function shopTime(typed) {
    const ahead = (await fact("ahead")) || 0;
    return { at: shown(typed + ahead), sure: typed >= ((await fact("heard")) || 0) };
  }

  async function post(token, record, entries) {
    // how long ago it was typed is surer than what the shop's clock was thought to say then
    const ahead = await fact("ahead");
    const form = ({ id, path, project, by, at, typed, fields }) => ({ id, path, project, by, at: typed ? shown(typed + ahead) : at, fields });
    return fetch("/kept/send", {
      method: "POST",
      headers: { "Content-Type": "application/json", "X-CSRF-Token": token, ...BY_ITSELF },
      redirect: "error",
      body: canonical({ format: FORMAT, record, entries: entries.map(form) }),
    });
  }

  // One that fails the program again and again is for a person, and holds the others up no longer.
  const MOST_TRIES = 5;

  function settled(answer, entry, first, head) {
    if (answer.what === "taken" || answer.what === "there") return { state: "sent", seq: answer.seq, say: answer.say, sentAt: Date.now() };
    if (answer.what === "refused") return { state: "refused", say: answer.say, head };
    const tries = (entry.tries || 0) + (first ? 1 : 0);
    return { say: answer.say, tries: tries % MOST_TRIES, ...(tries >= MOST_TRIES ? { state: "refused", head } : {}) };
  }

  // Sends the row in its order, a few at a time. Whatever is not answered stays for the next time.
  async function sendRow() {
    const facts = await head();
    let most = 20;
    for (;;) {
      // where people sign in, each one's entries wait for them
      const waiting = (await all()).filter((e) => e.state === "kept" && (!facts.person || e.by === facts.person));
      if (waiting.length === 0) break;
      const record = waiting[0].record || "";
      const other = waiting.findIndex((e) => (e.record || "") !== record);
      const some = waiting.slice(0, Math.min(most, other < 0 ? waiting.length : other));
      const answer = await post(facts.token, record, some);
      if ([400, 413].includes(answer.status) && some.length > 1) {
        most = 1;
        continue;
      }
      if ([400, 413].includes(answer.status)) {
        await change(some[0].n, () => ({ state: "refused", say: "The program could not read it." }));
        continue;
      }
      if (!answer.ok) throw new Error(`the program answered ${answer.status}`);
      const { answers, head: now } = await answer.json();
      let unknown = false;
      let known = 0;
      for (const a of answers) {
        const one = some.find((e) => e.id === a.id);
        if (!one) continue;
        const first = a.what === "unknown" && !unknown;
        unknown = unknown || first;
        known += 1;
        await change(one.n, () => settled(a, one, first, now));
      }
      if (unknown || known === 0) break;
    }
    await trim();
  }

  // One sender at a time on this device, so that the order holds.
  const send = () => (navigator.locks ? navigator.locks.request("fayline-send", sendRow) : sendRow());

  self.faylineKept = { fact, know, all, shown, shopTime, add, change, discard, send, head, goesOn };
})();
