package fayline.app.usecase.change;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.card.PrintMark;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Treatment;
import fayline.flow.record.change.Verdict;
import fayline.flow.record.payload.Value;
import fayline.store.file.DefinitionFolder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Tells of something printed whether it still holds, by the mark at its foot. */
public final class CheckPrint {
    private final ShopRecord shop;

    /** On a shop's record. */
    public CheckPrint(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is known of something printed.
     *
     * @param standing whether it holds
     * @param change the change that withdrew it, where one did
     * @param drawing the drawing that holds instead, where it is another
     */
    public record Answer(Standing standing, Optional<Change> change, String drawing) {}

    /** Whether something printed holds. */
    public enum Standing {
        /** It was printed from the definition as it is now. */
        HOLDS,
        /** The definition has moved on since, and no change withdrew it. */
        OLDER,
        /** A change withdrew it. */
        WITHDRAWN,
        /** The definition holds nothing of that name. */
        NO_SUCH_PART,
        /** This record never held such a definition. */
        NOT_OURS
    }

    /**
     * Judges a print.
     *
     * @param d the definition now
     * @param mark what stands on it
     */
    public Answer of(Definition d, PrintMark mark) {
        if (d.parts().find(mark.made()).isEmpty()
                && d.joints().find(mark.made()).isEmpty()) {
            return new Answer(Standing.NO_SUCH_PART, Optional.empty(), "");
        }
        String project = d.facts().id();
        String now = Followed.drawing(d, mark.made());
        List<Version> versions = versions(project);
        Optional<Change> by = shop.state().change().ofProject(project).stream()
                .filter(c -> c.isInForce() && withdraws(c, mark, versions))
                .reduce((a, b) -> b);
        if (by.isPresent()) {
            return new Answer(Standing.WITHDRAWN, by, now);
        }
        if (d.hash().startsWith(mark.definition())) {
            return new Answer(Standing.HOLDS, Optional.empty(), now);
        }
        boolean known = versions.stream().anyMatch(v -> v.hash().startsWith(mark.definition()));
        return new Answer(known ? Standing.OLDER : Standing.NOT_OURS, Optional.empty(), now);
    }

    private static boolean withdraws(Change c, PrintMark mark, List<Version> versions) {
        Optional<Verdict.Withdrawn> old = c.verdict().stream()
                .flatMap(v -> v.withdraws().stream())
                .filter(w -> w.made().equals(mark.made()))
                .findFirst();
        Optional<Change.Settled> line = c.settled(Change.itemOf(mark.made()));
        if (old.isEmpty() || line.filter(l -> l.how() == Treatment.UNCHANGED).isPresent()) {
            return false;
        }
        if (!old.get().drawing().isEmpty()) {
            return mark.drawing().equals(old.get().drawing());
        }
        // Without a drawing the definition tells: while the new revision is not in, none holds; later, those before it
        // do not.
        return line.isEmpty()
                || versions.stream()
                        .filter(v -> v.hash().startsWith(mark.definition()))
                        .reduce((a, b) -> b)
                        .filter(v -> v.until() <= line.get().seq())
                        .isPresent();
    }

    /**
     * A definition as it was for a while.
     *
     * @param hash its hash
     * @param until the entry that made it another one; the largest number there is while it holds
     */
    private record Version(String hash, long until) {}

    /** The definitions of a project that the record ever held, the oldest first. */
    private List<Version> versions(String project) {
        SortedMap<String, String> files = new TreeMap<>();
        List<Version> versions = new ArrayList<>();
        for (Entry e : shop.entries(1)) {
            Value.Fields f = e.fields();
            boolean mine = f.text("scope").equals("shop") || e.project().equals(project);
            boolean saved = e.kind().equals(EntryKind.FILE_SAVED.key());
            if (mine && (saved || e.kind().equals(EntryKind.FILE_REMOVED.key()))) {
                if (!files.isEmpty()) {
                    versions.add(new Version(DefinitionFolder.hashOf(files), e.seq()));
                }
                if (saved) {
                    files.put(f.text("path"), f.text("sha256"));
                } else {
                    files.remove(f.text("path"));
                }
            }
        }
        versions.add(new Version(DefinitionFolder.hashOf(files), Long.MAX_VALUE));
        return versions;
    }
}
