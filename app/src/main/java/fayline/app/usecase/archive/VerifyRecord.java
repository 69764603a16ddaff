package fayline.app.usecase.archive;

import fayline.app.usecase.open.CannotOpenException;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.KeptHead;
import fayline.store.file.archive.ArchiveReader;
import fayline.store.file.archive.DamagedArchiveException;
import fayline.store.sql.RecordCheck;
import fayline.store.sql.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Checks the chain of a data folder, open in a program or not, or of an archive; writes nothing. */
public final class VerifyRecord {
    private VerifyRecord() {}

    /**
     * What was found.
     *
     * @param head the head up to which the chain is sound, as it can be written down
     * @param paper the same in the short form of the sheets
     * @param entries how many entries are sound
     * @param fault the first bad entry or file in a sentence, where there is one
     * @param files how many files those entries name
     * @param strays how many files lie in a data folder that no entry names, which is harmless
     */
    public record Report(String head, String paper, long entries, Optional<String> fault, int files, int strays) {
        private static Report of(RecordCheck.Report r) {
            return new Report(
                    r.head().toString(),
                    r.tree().paper(),
                    r.head().seq(),
                    r.fault().map(Chain.Fault::sentence),
                    r.files(),
                    r.strays());
        }

        private static Report of(Chain chain, Optional<Chain.Fault> missing, int files) {
            Optional<Chain.Fault> first = Stream.concat(chain.end().stream(), missing.stream())
                    .min(Comparator.comparingLong(Chain.Fault::seq));
            return new Report(
                    chain.head().toString(),
                    chain.treeHead().paper(),
                    chain.head().seq(),
                    first.map(Chain.Fault::sentence),
                    files,
                    0);
        }

        private Report orElse(Optional<String> further) {
            return fault.isPresent() ? this : new Report(head, paper, entries, further, files, strays);
        }
    }

    /**
     * Checks.
     *
     * @param place a data folder or an archive
     * @param outside a head that was kept elsewhere, where there is one
     * @throws CannotOpenException if there is no record or it is out of reach
     * @throws UnreadableArchiveException if a file is no archive at all
     * @throws IOException if an archive cannot be read
     */
    public static Report verify(Path place, Optional<? extends KeptHead> outside) throws IOException {
        if (Files.isRegularFile(place)) {
            return archive(place, outside);
        }
        try {
            return Report.of(RecordCheck.check(place, outside));
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
    }

    /** The entries first: a bad one is named even where the file around it is found to be altered as well. */
    private static Report archive(Path file, Optional<? extends KeptHead> outside) throws IOException {
        try (ArchiveReader archive = ArchiveReader.open(file)) {
            Chain chain = new Chain(outside);
            Optional<String> altered = Optional.empty();
            Set<String> attached = Set.copyOf(archive.attached());
            List<Chain.Fault> missing = new ArrayList<>();
            try {
                archive.entries(e -> {
                    chain.next(e);
                    missing(e, attached).filter(m -> chain.isSound()).ifPresent(missing::add);
                });
            } catch (DamagedArchiveException e) {
                String where = e.isOfEntry() ? "entry " + (chain.reached() + 1) + ": " : "";
                altered = Optional.of(where + e.getMessage());
            }
            Report report = Report.of(chain, missing.stream().findFirst(), attached.size());
            if (altered.isPresent() && chain.isSound()) {
                return new Report(report.head(), report.paper(), report.entries(), altered, attached.size(), 0);
            }
            return report.orElse(otherFiles(archive, report));
        } catch (DamagedArchiveException e) {
            throw new UnreadableArchiveException(e);
        }
    }

    /** The first file of an entry that is not among those there. */
    static Optional<Chain.Fault> missing(Entry e, Set<String> there) {
        return e.filesBeside().stream()
                .filter(hash -> !there.contains(hash))
                .findFirst()
                .map(hash -> new Chain.Fault(e.seq(), "its file " + hash + " is missing"));
    }

    private static Optional<String> otherFiles(ArchiveReader archive, Report report) throws IOException {
        try {
            archive.compareFiles();
        } catch (DamagedArchiveException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
        return archive.head().equals(report.head())
                ? Optional.empty()
                : Optional.of("the record ends at " + report.head() + ", the manifest says at " + archive.head());
    }
}
