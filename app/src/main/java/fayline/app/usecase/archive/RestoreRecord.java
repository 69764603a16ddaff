package fayline.app.usecase.archive;

import fayline.app.usecase.open.CannotOpenException;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.store.file.archive.ArchiveReader;
import fayline.store.file.archive.DamagedArchiveException;
import fayline.store.sql.DataFolder;
import fayline.store.sql.FolderInUseException;
import fayline.store.sql.RecordSnapshot;
import fayline.store.sql.StoreException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Makes a shop's data folder of an archive, in whichever database the folder names. */
public final class RestoreRecord {
    private RestoreRecord() {}

    /**
     * Restores, once the archive was checked to its end.
     *
     * @param file the archive
     * @param data the data folder, without a record in it
     * @return how many entries stand there now
     * @throws UnreadableArchiveException if the archive is not as it was written
     * @throws UnsoundRecordException if the chain in it does not hold
     * @throws CannotOpenException if the folder holds a record, is in use or out of reach
     * @throws IOException if the archive cannot be read
     */
    public static long into(Path file, Path data) throws IOException {
        RecordSnapshot kept = read(file);
        try (DataFolder folder = DataFolder.open(data)) {
            folder.restore(kept);
        } catch (FolderInUseException e) {
            throw CannotOpenException.of(e);
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
        return kept.entries().size();
    }

    private static RecordSnapshot read(Path file) throws IOException {
        List<Entry> entries = new ArrayList<>();
        Chain chain = new Chain();
        try (ArchiveReader archive = ArchiveReader.open(file)) {
            archive.compareFiles();
            archive.entries(e -> {
                chain.next(e);
                entries.add(e);
            });
            chain.end().ifPresent(f -> {
                throw new UnsoundRecordException(f.sentence(), "nothing was restored");
            });
            return PeopleText.read(archive.people(), entries);
        } catch (DamagedArchiveException e) {
            throw new UnreadableArchiveException(e);
        }
    }
}
