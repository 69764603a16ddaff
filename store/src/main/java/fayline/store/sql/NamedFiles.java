package fayline.store.sql;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Looks for the files that sound entries name, each once, and compares their hashes. */
public final class NamedFiles {
    private final EntryFiles files;
    private final Set<String> seen = new HashSet<>();
    private Optional<Chain.Fault> fault = Optional.empty();

    /** Among files of one place. */
    public NamedFiles(EntryFiles files) {
        this.files = files;
    }

    /** Takes the next sound entry; after the first fault nothing more is compared. */
    public void next(Entry e) {
        for (String hash : e.filesBeside()) {
            if (seen.add(hash) && fault.isEmpty() && files.get(hash).isEmpty()) {
                fault = Optional.of(new Chain.Fault(
                        e.seq(),
                        "its file " + hash
                                + (files.hashes().contains(hash) ? " is not as it was kept" : " is missing")));
            }
        }
    }

    /** The first entry whose file is missing or was changed. */
    public Optional<Chain.Fault> fault() {
        return fault;
    }

    /** How many files the entries name. */
    public int count() {
        return seen.size();
    }

    /** How many files lie there that none of the entries names. */
    int strays() {
        SortedSet<String> strays = new TreeSet<>(files.hashes());
        strays.removeAll(seen);
        return strays.size();
    }
}
