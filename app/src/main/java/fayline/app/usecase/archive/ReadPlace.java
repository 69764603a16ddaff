package fayline.app.usecase.archive;

import fayline.app.usecase.open.CannotOpenException;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.MemoryFiles;
import fayline.flow.record.MemoryLog;
import fayline.store.file.archive.ArchiveReader;
import fayline.store.file.archive.DamagedArchiveException;
import fayline.store.sql.RecordSnapshot;
import fayline.store.sql.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Looks at a record where it lies, in a data folder that a program has open or not, or in an archive; writes nothing. */
public final class ReadPlace {
    private ReadPlace() {}

    /** Whether a folder holds a record, sound or not, or says where one is. */
    public static boolean holdsRecord(Path folder) {
        return RecordSnapshot.isIn(folder);
    }

    /**
     * Reads.
     *
     * @param place a data folder or an archive
     * @return the record, its clock at its last entry; what is added to it is lost
     * @throws UnsoundRecordException if its chain does not hold
     * @throws CannotOpenException if there is no record or it is out of reach
     * @throws UnreadableArchiveException if a file is no archive at all
     * @throws IOException if an archive cannot be read
     */
    public static ShopRecord read(Path place) throws IOException {
        if (Files.isRegularFile(place)) {
            return archive(place);
        }
        try {
            return record(RecordSnapshot.of(place).entries(), new Beside(place));
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
    }

    private static ShopRecord archive(Path file) throws IOException {
        try (ArchiveReader archive = ArchiveReader.open(file)) {
            archive.compareFiles();
            List<Entry> entries = new ArrayList<>();
            archive.entries(entries::add);
            MemoryFiles files = new MemoryFiles();
            archive.attached(files::put);
            return record(entries, files);
        } catch (DamagedArchiveException e) {
            throw new UnreadableArchiveException(e);
        }
    }

    private static ShopRecord record(List<Entry> entries, EntryFiles files) {
        Chain chain = new Chain();
        entries.forEach(chain::next);
        chain.end().ifPresent(f -> {
            throw new UnsoundRecordException(f.sentence(), "nothing was written");
        });
        Instant last = entries.isEmpty()
                ? Instant.EPOCH
                : entries.get(entries.size() - 1).taken();
        return new ShopRecord(new MemoryLog(entries), files, Clock.fixed(last, ZoneOffset.UTC));
    }

    /** The files of a data folder, each read when it is asked for. */
    private record Beside(Path data) implements EntryFiles {
        @Override
        public String put(byte[] content) {
            throw new UnsupportedOperationException("this record is only looked at");
        }

        @Override
        public Optional<byte[]> get(String sha256) {
            return RecordSnapshot.file(data, sha256);
        }

        @Override
        public void remove(String sha256) {
            throw new UnsupportedOperationException("this record is only looked at");
        }

        @Override
        public SortedSet<String> hashes() {
            return new TreeSet<>();
        }
    }
}
