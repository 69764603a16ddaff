package fayline.store.sql;

import com.zaxxer.hikari.HikariDataSource;
import fayline.flow.record.EntryFiles;
import fayline.store.file.DefinitionFolder;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;

/** Files of entries in a table of the database server, where every seat finds them. */
final class TableFiles implements EntryFiles {
    private static final Table<Record> FILE = DSL.table(DSL.unquotedName("entry_file"));
    private static final Field<String> HASH = EntryRows.field("sha256", String.class);
    private static final Field<byte[]> CONTENT = EntryRows.field("content", byte[].class);

    private final HikariDataSource pool;

    TableFiles(HikariDataSource pool) {
        this.pool = pool;
    }

    @Override
    public String put(byte[] content) {
        String hash = DefinitionFolder.hash(content);
        try {
            return Transaction.write(pool, Engine.POSTGRESQL, db -> {
                db.insertInto(FILE, HASH, CONTENT)
                        .values(hash, content)
                        .onConflictDoNothing()
                        .execute();
                if (get(db, hash).isEmpty()) {
                    // It is there and was damaged: the table's rules let what fits its hash come back, and nothing
                    // else.
                    db.update(FILE).set(CONTENT, content).where(HASH.eq(hash)).execute();
                }
                return hash;
            });
        } catch (StoreException e) {
            throw new CannotKeepException("The file could not be kept: " + e.getMessage(), e);
        }
    }

    @Override
    public Optional<byte[]> get(String sha256) {
        return Transaction.read(pool, Engine.POSTGRESQL, db -> get(db, sha256));
    }

    @Override
    public void remove(String sha256) {
        try {
            Transaction.write(
                    pool,
                    Engine.POSTGRESQL,
                    db -> db.deleteFrom(FILE).where(HASH.eq(sha256)).execute());
        } catch (StoreException e) {
            throw new CannotKeepException("The file could not be taken away: " + e.getMessage(), e);
        }
    }

    @Override
    public SortedSet<String> hashes() {
        return Transaction.read(pool, Engine.POSTGRESQL, TableFiles::hashes);
    }

    static Optional<byte[]> get(DSLContext db, String sha256) {
        return db.select(CONTENT)
                .from(FILE)
                .where(HASH.eq(sha256))
                .fetchOptional(CONTENT)
                .filter(c -> DefinitionFolder.hash(c).equals(sha256));
    }

    static SortedSet<String> hashes(DSLContext db) {
        return new TreeSet<>(db.select(HASH).from(FILE).fetch(HASH));
    }
}
