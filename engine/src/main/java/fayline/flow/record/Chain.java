package fayline.flow.record;

import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.proof.Digest;
import fayline.flow.record.proof.HashTree;
import java.util.Objects;
import java.util.Optional;

/**
 * Checks a chain entry by entry and names the first bad one: its place in the sequence, the hash of the entry before, the hash
 * of the payload, its own hash. A payload that was emptied is sound where a later entry says that it was erased. A cut tail is found only against a head that was kept elsewhere.
 */
public final class Chain {
    private Head head = Head.EMPTY;
    private Optional<Fault> fault = Optional.empty();
    private final Optional<? extends KeptHead> outside;
    private final HashTree tree = new HashTree();
    private final ErasureCheck erasures = new ErasureCheck();
    private boolean outsideMet;

    /**
     * A check without a head kept elsewhere.
     */
    public Chain() {
        this(Optional.empty());
    }

    /**
     * A check against a head kept elsewhere, on paper or on a phone.
     *
     * @param outside that head; its hash may be cut to its first digits
     */
    public Chain(Optional<? extends KeptHead> outside) {
        this.outside = outside;
        this.outsideMet = outside.isEmpty() || outside.get().seq() == 0;
    }

    /** Checks one chain held in memory. */
    public static Optional<Fault> check(Iterable<Entry> entries, Optional<? extends KeptHead> outside) {
        Chain chain = new Chain(outside);
        entries.forEach(chain::next);
        return chain.end();
    }

    /** Takes the next entry as it stands in the store; after the first fault nothing more is judged. */
    public void next(Entry entry) {
        if (fault.isPresent()) {
            erasures.lookAhead(entry);
            return;
        }
        fault = judge(entry);
        if (fault.isEmpty()) {
            erasures.take(entry, head);
            head = entry.head();
        } else {
            erasures.lookAhead(entry);
        }
    }

    /** Whether no bad entry was met so far; whether one that was emptied is named by a later one shows at the end. */
    public boolean isSound() {
        return fault.isEmpty();
    }

    /** The tree over the hashes of the entries up to which the chain is sound. */
    public TreeHead treeHead() {
        return TreeHead.of(head().seq(), tree.root((int) head().seq()));
    }

    /** The first fault, once every entry was given. */
    public Optional<Fault> end() {
        Optional<Fault> emptied = erasures.unnamed();
        if (emptied.isPresent()) {
            return emptied;
        }
        if (fault.isEmpty() && !outsideMet) {
            KeptHead wanted = outside.orElseThrow();
            return Optional.of(new Fault(
                    head.seq() + 1,
                    "entries are missing: the record ends at entry " + head.seq() + ", the head kept outside stands at "
                            + wanted.seq()));
        }
        return fault;
    }

    /** The head up to which the chain is sound, once every entry was given. */
    public Head head() {
        return erasures.soundBefore().orElse(head);
    }

    /** The last entry that was found good by itself and by those before it. */
    public long reached() {
        return head.seq();
    }

    private Optional<Fault> judge(Entry e) {
        long wanted = head.seq() + 1;
        if (e.seq() != wanted) {
            return Optional.of(new Fault(
                    wanted,
                    e.seq() > wanted
                            ? "entry " + wanted + " is missing; entry " + e.seq() + " follows"
                            : "entry " + e.seq() + " stands where entry " + wanted + " should"));
        }
        if (e.version() < 1 || e.version() > Entry.VERSION) {
            return fault(e, "its version is " + e.version() + ", this program reads 1 to " + Entry.VERSION);
        }
        if (!e.previous().equals(head.hash())) {
            return fault(e, "it names another entry before it than the one that stands there");
        }
        if (e.isEmptied()
                ? !Erasable.isKind(e.kind())
                : !CanonicalText.sha256(e.payload()).equals(e.payloadHash())) {
            return fault(e, "its payload is not the one that was recorded");
        }
        if (!Objects.equals(hashOf(e), e.hash())) {
            return fault(e, "one of its fields is not as recorded");
        }
        Optional<Fault> form = judgeForm(e);
        if (form.isPresent()) {
            return form;
        }
        Optional<String> wrong = erasures.wrong(e);
        if (wrong.isPresent()) {
            return fault(e, wrong.get());
        }
        tree.add(Digest.ofHex(e.hash()).bytes());
        return judgeOutside(e);
    }

    private static String hashOf(Entry e) {
        try {
            return CanonicalText.sha256(e.canonicalHead());
        } catch (IllegalArgumentException unwritable) {
            // A damaged field may hold what no entry can: then no hash fits either.
            return "";
        }
    }

    private static Optional<Fault> judgeForm(Entry e) {
        try {
            e.fields();
            e.taken();
            return Optional.empty();
        } catch (NotCanonicalException | java.time.format.DateTimeParseException x) {
            return fault(e, "its form is not that of the record: " + x.getMessage());
        }
    }

    private Optional<Fault> judgeOutside(Entry e) {
        if (outside.isPresent() && outside.get().seq() == e.seq()) {
            outsideMet = true;
            if (!outside.get().fits(e, tree.root())) {
                return fault(e, "it does not fit the head kept outside: the record was rewritten at or before it");
            }
        }
        return Optional.empty();
    }

    private static Optional<Fault> fault(Entry e, String what) {
        return Optional.of(new Fault(e.seq(), what));
    }

    /**
     * What is wrong first.
     *
     * @param seq sequence of the first bad or missing entry
     * @param what what is wrong with it
     */
    public record Fault(long seq, String what) {
        /** The fault as a sentence. */
        public String sentence() {
            return "entry " + seq + ": " + what;
        }
    }
}
