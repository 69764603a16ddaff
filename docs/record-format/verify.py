#!/usr/bin/env python3
"""Checks records of Fayline, written from README.md beside it alone: python3 verify.py [--head HEAD] PLACE ...

PLACE is a data folder with shop.db, a shop.db, or an archive (ZIP). Prints one line for each and exits with 1 if one is not
sound, 2 if one is no record. Needs Python 3.9 or later and nothing else; signatures are not checked.
"""
import base64, hashlib, json, os, re, sqlite3, sys, zipfile
from datetime import datetime

ZEROS = "0" * 64
HEAD = ["version", "seq", "client", "by", "phone", "at", "project", "kind", "payload", "files", "previous"]
COLUMNS = ("version, seq, client_id, who, phone_at, taken_at, project, kind, payload, payload_hash, files, previous, hash")
NAMES = ("version", "seq", "client", "by", "phone", "at", "project", "kind", "payload", "payload_hash", "files", "previous", "hash")
EMPTIED = '{"erased":"yes"}'
ERASABLE = ("step-noted", "week-told", "deviation-raised", "finding-raised", "finding-corrected", "person-admitted",
            "device-paired", "device-ended", "corrected")


class Fault(Exception):
    pass


def sha(data):
    return hashlib.sha256(data.encode("utf-8", "surrogatepass") if isinstance(data, str) else data).hexdigest()


def canonical(value):
    """RFC 8785 for texts, whole numbers, lists and fields."""
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False)
    if isinstance(value, int) and not isinstance(value, bool) and abs(value) <= 2**53 - 1:
        return str(value)
    if isinstance(value, list):
        return "[" + ",".join(map(canonical, value)) + "]"
    if isinstance(value, dict):
        keys = sorted(value, key=lambda k: k.encode("utf-16-be", "surrogatepass"))
        return "{" + ",".join(canonical(k) + ":" + canonical(value[k]) for k in keys) + "}"
    raise Fault("a value that the record does not hold")


def is_time(text):
    if not re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z", text):
        return False
    try:
        datetime.fromisoformat(text[:19])
        return True
    except ValueError:
        return False


def leaf(hash_hex):
    return hashlib.sha256(b"\0" + bytes.fromhex(hash_hex)).digest()


def root(leaves):
    if len(leaves) < 2:
        return leaves[0] if leaves else hashlib.sha256().digest()
    k = 1
    while 2 * k < len(leaves):
        k *= 2
    return hashlib.sha256(b"\1" + root(leaves[:k]) + root(leaves[k:])).digest()


def kept_head(text):
    """(seq, 'hash' or 'root', digits) of a head in either form or as a QR code holds it."""
    text = text.strip()
    if text.startswith("{"):
        signed = json.loads(text)
        return signed["size"], "root", signed["root"]
    m = re.fullmatch(r"([0-9]{1,15})-([0-9a-f]{8,64})", text)
    if m:
        return int(m[1]), "hash", m[2]
    m = re.fullmatch(r"([0-9]{1,15})-((?:[A-Za-z0-8][ -]?){26})", text)
    if not m:
        raise SystemExit("verify.py: --head: found %r" % text)
    digits = re.sub("[ -]", "", m[2]).upper().translate(str.maketrans("018", "OIB"))
    return int(m[1]), "root", base64.b32decode(digits + "======").hex()


def is_emptied(e):
    return e["payload"] == EMPTIED and e["payload_hash"] != sha(EMPTIED)


def erased_by(e):
    """The entry that an entry says was erased, or None; 0 where it names none."""
    if e["kind"] != "erased":
        return None
    try:
        named = json.loads(e["payload"]).get("entry")
    except (ValueError, AttributeError):
        return 0
    return named if isinstance(named, int) else 0


def check(entries, outside):
    """Walks a chain; returns how many entries are sound, the last hash, and the first fault or None."""
    seq, previous, leaves, fault = 0, ZEROS, [], None
    silent, erased, kinds = {}, set(), {}
    for e in entries:
        if isinstance(e, Fault):
            if fault is None:
                return seq, previous, "entry %d: %s" % (seq + 1, e)
            break
        if fault is None:
            wrong = judge(e, seq + 1, previous) or judge_erasure(e, silent, erased, kinds)
            if wrong:
                fault = "entry %d: %s" % (seq + 1, wrong)
            else:
                leaves.append(leaf(e["hash"]))
                if outside and outside[0] == e["seq"]:
                    found = e["hash"] if outside[1] == "hash" else root(leaves).hex()
                    if not found.startswith(outside[2]):
                        fault = "entry %d: rewritten at or before it" % e["seq"]
        if fault is None:
            kinds[e["seq"]] = e["kind"]
            if is_emptied(e):
                silent[e["seq"]] = (seq, previous)
            seq, previous = e["seq"], e["hash"]
        named = erased_by(e)
        if named is not None:
            silent.pop(named, None)
            if fault is None:
                erased.add(named)
    if silent:
        first = min(silent)
        return silent[first] + ("entry %d: emptied, and no later entry says that it was erased" % first,)
    if fault is None and outside and outside[0] > seq:
        fault = "entry %d: missing" % (seq + 1)
    return seq, previous, fault


def judge_erasure(e, silent, erased, kinds):
    named = erased_by(e)
    if named is None or (named in silent and named not in erased):
        return None
    if named not in kinds:
        return "erases entry %s, which does not stand before it" % named
    if named in erased:
        return "erases entry %d, which was erased before" % named
    if kinds[named] not in ERASABLE:
        return "erases entry %d, of a kind that is never erased" % named
    return "erases entry %d, whose payload still stands there" % named


def judge(e, seq, previous):
    if e["seq"] != seq:
        return "entry %s stands there" % e["seq"]
    if e["version"] != 1:
        return "version %s" % e["version"]
    if e["previous"] != previous:
        return "names another entry before it"
    if is_emptied(e):
        if e["kind"] not in ERASABLE:
            return "emptied, and of a kind that is never erased"
    elif sha(e["payload"]) != e["payload_hash"]:
        return "payload altered"
    head = {**{k: e[k] for k in HEAD}, "payload": e["payload_hash"]}
    try:
        if sha(canonical(head)) != e["hash"]:
            return "a field altered"
        if canonical(json.loads(e["payload"])) != e["payload"]:
            return "payload not in canonical form"
    except (Fault, ValueError) as x:
        return "form: %s" % x
    return None if is_time(e["at"]) else "no time"


def from_database(path):
    db = sqlite3.connect("file:%s?mode=ro" % path, uri=True)
    try:
        entries = []
        for row in db.execute("select %s from entry order by seq" % COLUMNS):
            e = dict(zip(NAMES, row))
            e["files"] = e["files"].split(" ") if e["files"] else []
            entries.append(e)
        noted = db.execute("select seq, hash from record_head").fetchone()
        return entries, noted
    finally:
        db.close()


def from_lines(data):
    for line in data.decode("utf-8").split("\n")[:-1]:
        try:
            e = json.loads(line)
            if canonical(e) != line or set(e) != set(NAMES):
                raise Fault("line not in the form of an entry")
            e["payload"] = canonical(e["payload"])
            yield e
        except (Fault, ValueError) as x:
            yield Fault(x)


def missing(entries, is_there):
    for e in entries:
        for h in e["files"] if e["kind"] != "file-saved" and not is_emptied(e) else []:
            if not is_there(h):
                return "entry %d: its file %s is missing or was changed" % (e["seq"], h)
    return None


def in_folder(folder):
    def is_there(h):
        for ending in ("jpg", "png", "bin"):
            try:
                with open(os.path.join(folder, "files", "%s.%s" % (h, ending)), "rb") as f:
                    if sha(f.read()) == h:
                        return True
            except OSError:
                pass
        return False
    return is_there


def verify_archive(path, outside):
    with zipfile.ZipFile(path) as z:
        names = z.namelist()
        manifest = json.loads(z.read("manifest.json"))
        listed = {f["path"]: f for f in manifest["files"]}
        seq, last, fault = check(from_lines(z.read("entries.jsonl")), outside)
        if fault:
            return seq, fault
        if sorted(names) != sorted(list(listed) + ["manifest.json"]):
            return seq, "the files are not those of the manifest"
        fault = missing(from_lines(z.read("entries.jsonl")), lambda h: "files/" + h in listed)
        if fault:
            return seq, fault
        for name, f in listed.items():
            data = z.read(name)
            if name.startswith("files/") and name != "files/" + f["sha256"]:
                return seq, "%s altered" % name
            if len(data) != f["bytes"] or sha(data) != f["sha256"]:
                return seq, "%s altered" % name
        if manifest["head"] != "%d-%s" % (seq, last):
            return seq, "the manifest names another head"
        return seq, None


def verify(path, outside):
    if os.path.isdir(path):
        path = os.path.join(path, "shop.db")
    if zipfile.is_zipfile(path):
        return verify_archive(path, outside)
    entries, noted = from_database(path)
    seq, last, fault = check(entries, outside)
    fault = missing(entries[:seq], in_folder(os.path.dirname(path))) or fault
    if not fault and noted != ((seq, last) if seq else None) and not (seq == 0 and noted == (0, ZEROS)):
        at = min(seq, noted[0]) if noted else seq
        fault = "entry %d: the head noted beside the entries is another" % (at + 1)
    return seq, fault


def main(arguments):
    outside = None
    if arguments[:1] == ["--head"]:
        outside, arguments = kept_head(arguments[1]), arguments[2:]
    if not arguments:
        print(__doc__)
        return 2
    worst = 0
    for path in arguments:
        try:
            seq, fault = verify(path, outside)
        except (OSError, sqlite3.Error, zipfile.BadZipFile, KeyError, ValueError) as x:
            print("%s: no record that can be read: %s" % (path, x))
            worst = max(worst, 2)
            continue
        print("%s: %s" % (path, fault if fault else "%d entries, all sound" % seq))
        worst = max(worst, 1 if fault else 0)
    return worst


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
