package fayline.app.usecase.archive;

import fayline.app.usecase.open.CannotOpenException;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
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
import java.util.Optional;
import java.util.Set;

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
        try (ArchiveReader archive = ArchiveReader.open(file)) {
            RecordSnapshot kept = read(archive);
            restore(archive, kept, data);
            return kept.entries().size();
        } catch (DamagedArchiveException e) {
            throw new UnreadableArchiveException(e);
        }
    }

    private static void restore(ArchiveReader archive, RecordSnapshot kept, Path data) throws IOException {
        try (DataFolder folder = DataFolder.open(data)) {
            folder.restore(kept, archive::attached);
        } catch (EntryFiles.CannotKeepException e) {
            throw new IOException(e.getMessage(), e);
        } catch (FolderInUseException e) {
            throw CannotOpenException.of(e);
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
    }

    private static RecordSnapshot read(ArchiveReader archive) throws IOException {
        List<Entry> entries = new ArrayList<>();
        Chain chain = new Chain();
        archive.compareFiles();
        archive.entries(e -> {
            chain.next(e);
            entries.add(e);
        });
        Set<String> attached = Set.copyOf(archive.attached());
        Optional<Chain.Fault> missing = entries.stream()
                .flatMap(e -> VerifyRecord.missing(e, attached).stream())
                .findFirst();
        chain.end().or(() -> missing).ifPresent(f -> {
            throw new UnsoundRecordException(f.sentence(), "nothing was restored");
        });
        return PeopleText.read(archive.people(), entries);
    }
}
