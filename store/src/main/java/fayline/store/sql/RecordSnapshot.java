package fayline.store.sql;

import fayline.flow.record.Entry;
import fayline.store.sql.PeopleTables.KnownDevice;
import fayline.store.sql.PeopleTables.KnownPerson;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jooq.exception.DataAccessException;

/**
 * Everything that a data folder's database keeps and that cannot be made anew, at one moment: a beginning of the record that
 * holds every entry acknowledged before.
 *
 * @param entries every entry in order, as it stands there
 * @param people who may enter
 * @param devices phones and tablets that are known
 */
public record RecordSnapshot(List<Entry> entries, List<KnownPerson> people, List<KnownDevice> devices) {
    /** Copies the lists. */
    public RecordSnapshot {
        entries = List.copyOf(entries);
        people = List.copyOf(people);
        devices = List.copyOf(devices);
    }

    /** Whether a folder holds a record, or says where one is. */
    public static boolean isIn(Path folder) {
        return ReadOnly.isIn(folder);
    }

    /**
     * Reads a folder, whether a program has it open or not.
     *
     * @param folder the data folder
     * @throws StoreException if there is no record or it cannot be read to its end
     */
    public static RecordSnapshot of(Path folder) {
        try {
            return ReadOnly.ask(folder, db -> {
                List<Entry> entries = new ArrayList<>();
                EntryRows.each(db, Long.MIN_VALUE, entries::add);
                return new RecordSnapshot(entries, PeopleTables.people(db), PeopleTables.devices(db));
            });
        } catch (DataAccessException e) {
            throw new StoreException("The record in " + folder + " cannot be read to its end: " + e.getMessage(), e);
        }
    }

    /**
     * A file that an entry names, if it is there and as it was kept.
     *
     * @param folder the data folder
     * @param sha256 the file's hash
     * @throws StoreException if the record cannot be reached
     */
    public static Optional<byte[]> file(Path folder, String sha256) {
        return ReadOnly.ask(folder, db -> KeptFiles.of(folder, db).get(sha256));
    }
}
