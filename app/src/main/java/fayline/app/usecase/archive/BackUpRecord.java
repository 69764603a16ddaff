package fayline.app.usecase.archive;

import fayline.app.usecase.open.CannotOpenException;
import fayline.flow.record.Chain;
import fayline.flow.record.RecordState;
import fayline.store.file.archive.RecordArchive;
import fayline.store.sql.RecordSnapshot;
import fayline.store.sql.StoreException;
import java.io.ByteArrayInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Writes a shop's record into one file, whether a program has the data folder open or not. The file is a beginning of the
 * record that holds every entry acknowledged before.
 */
public final class BackUpRecord {
    private BackUpRecord() {}

    /**
     * What was written.
     *
     * @param entries how many entries
     * @param head where the record ends, as it can be written down
     * @param paper the same in the short form of the sheets
     */
    public record Report(long entries, String head, String paper) {}

    /**
     * Writes.
     *
     * @param data the data folder
     * @param file the archive
     * @param signIns whether who may enter goes in: needed to restore, not for handing over
     * @param now the machine's time
     * @param program the version that writes
     * @throws CannotOpenException if there is no record or it is out of reach
     * @throws UnsoundRecordException if the record is not sound; nothing is written then
     * @throws IOException if the archive cannot be written
     */
    public static Report write(Path data, Path file, boolean signIns, Instant now, String program) throws IOException {
        RecordSnapshot kept = snapshot(data);
        Chain chain = new Chain();
        kept.entries().forEach(chain::next);
        chain.end().ifPresent(f -> {
            throw new UnsoundRecordException(f.sentence(), "nothing was written");
        });
        RecordState state = RecordState.of(kept.entries());
        Map<String, String> tables = new TreeMap<>(StateTables.of(state));
        tables.put("files.csv", FileTable.of(kept.entries()));
        RecordArchive.write(
                file,
                new RecordArchive.Contents(
                        kept.entries(),
                        chain.head(),
                        chain.treeHead(),
                        signIns ? PeopleText.of(kept) : "",
                        tables,
                        state.projects().stream().collect(Collectors.toMap(p -> p, state::files)),
                        now,
                        program),
                hash -> new ByteArrayInputStream(RecordSnapshot.file(data, hash)
                        .orElseThrow(() -> new FileNotFoundException("the file " + hash
                                + ", which an entry names, is not there or not as it was kept: verify-record says"
                                + " which entry"))));
        return new Report(
                kept.entries().size(), chain.head().toString(), chain.treeHead().paper());
    }

    private static RecordSnapshot snapshot(Path data) {
        try {
            return RecordSnapshot.of(data);
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
    }
}
