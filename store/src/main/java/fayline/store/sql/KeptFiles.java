package fayline.store.sql;

import fayline.flow.record.EntryFiles;
import fayline.flow.record.MemoryFiles;
import fayline.store.file.FolderFiles;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedSet;
import org.jooq.DSLContext;

/** The files of a data folder as they are seen beside one state of its database; only read. */
final class KeptFiles {
    private KeptFiles() {}

    static EntryFiles of(Path folder, DSLContext db) {
        return DataFolder.elsewhere(folder).isPresent()
                ? inTable(db)
                : new FolderFiles(folder.resolve(DataFolder.FILES));
    }

    /** A record that an earlier version left has no such table yet. */
    private static EntryFiles inTable(DSLContext db) {
        boolean there = Boolean.TRUE.equals(db.fetchValue("select to_regclass('entry_file') is not null"));
        return there ? new InTable(db) : new MemoryFiles();
    }

    private record InTable(DSLContext db) implements EntryFiles {
        @Override
        public String put(byte[] content) {
            throw new UnsupportedOperationException("a check writes nothing");
        }

        @Override
        public Optional<byte[]> get(String sha256) {
            return TableFiles.get(db, sha256);
        }

        @Override
        public void remove(String sha256) {
            throw new UnsupportedOperationException("a check writes nothing");
        }

        @Override
        public SortedSet<String> hashes() {
            return TableFiles.hashes(db);
        }
    }
}
