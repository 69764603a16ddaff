package fayline.store.sql;

import com.zaxxer.hikari.HikariDataSource;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryFiles.CannotKeepException;
import fayline.flow.record.EntryLog;
import fayline.flow.record.Head;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordFold;
import fayline.flow.record.erasure.Erasable;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.erdtman.jcs.JsonCanonicalizer;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The record in a database. One thread writes. After an error of the database the connection is dropped, because the driver
 * would go on after the engine has already ended the transaction; what became of the entry is answered "unknown", and whoever
 * sent it sends it again under the same id.
 */
final class SqlEntryLog implements EntryLog, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(SqlEntryLog.class);
    private static final long CLOSING_S = 10;

    private final HikariDataSource pool;
    private final Engine engine;
    private final EntryFiles files;
    private final ExecutorService writer = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "record-writer");
        thread.setDaemon(true);
        return thread;
    });
    /** What the entries amount to, for the reading tables; null where the database must be asked anew. Writer's only. */
    private @Nullable RecordFold fold;

    /**
     * Of a database.
     *
     * @param pool connections to it
     * @param engine which one it is
     * @param files where the files of its entries lie
     */
    SqlEntryLog(HikariDataSource pool, Engine engine, EntryFiles files) {
        this.pool = pool;
        this.engine = engine;
        this.files = files;
    }

    @Override
    public Head head() {
        return reading(EntryRows::head);
    }

    @Override
    public List<Entry> read(long fromSeq) {
        return reading(db -> {
            List<Entry> entries = new ArrayList<>();
            EntryRows.each(db, fromSeq, entries::add);
            return List.copyOf(entries);
        });
    }

    @Override
    public Optional<Entry> entry(long seq) {
        return reading(db -> EntryRows.at(db, seq));
    }

    private <T> T reading(Function<DSLContext, T> question) {
        return Transaction.read(pool, engine, question);
    }

    @Override
    public List<Answer> append(List<NewEntry> fresh) {
        List<NewEntry> sent = List.copyOf(fresh);
        if (sent.isEmpty()) {
            return List.of();
        }
        try {
            List<Answer> answers = writer.submit(() -> write(sent)).get();
            if (sent.stream().anyMatch(SqlEntryLog::isErasure)) {
                sweepFiles();
            }
            return answers;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return unknown(sent, "the program is being stopped");
        } catch (RejectedExecutionException e) {
            return unknown(sent, "the record is closed");
        } catch (ExecutionException e) {
            LOG.error("the writer failed", e.getCause());
            return unknown(sent, "the writer failed: " + e.getCause());
        }
    }

    private static boolean isErasure(NewEntry one) {
        return one.kind().equals(Erasable.ERASED);
    }

    private static List<Answer> unknown(List<NewEntry> sent, String reason) {
        return Collections.nCopies(
                sent.size(),
                new Answer.Unknown("It is not known whether this was recorded: " + reason + ". Send it again."));
    }

    private List<Answer> write(List<NewEntry> sent) {
        RecordFold now = fold;
        // Taken back only once the transaction is through: after any trouble the database is asked anew.
        fold = null;
        try (Connection connection = pool.getConnection()) {
            try {
                connection.setAutoCommit(false);
                DSLContext db = engine.over(connection);
                RecordFold upToDate = now == null ? readAgain(db) : now;
                List<Answer> answers = new ArrayList<>();
                for (NewEntry one : sent) {
                    answers.add(take(db, upToDate, one));
                }
                if (answers.stream().anyMatch(Answer.Taken.class::isInstance)) {
                    ReadingTables.setHead(db, upToDate.head());
                    connection.commit();
                } else {
                    connection.rollback();
                }
                fold = upToDate;
                if (sent.stream().anyMatch(SqlEntryLog::isErasure)) {
                    forget(connection);
                }
                return List.copyOf(answers);
            } catch (SQLException | DataAccessException e) {
                LOG.warn("the database refused or failed; the connection is dropped", e);
                pool.evictConnection(connection);
                return unknown(sent, String.valueOf(e.getMessage()));
            }
        } catch (SQLException e) {
            LOG.warn("the database cannot be reached or a connection did not close", e);
            fold = null;
            return unknown(sent, String.valueOf(e.getMessage()));
        }
    }

    /**
     * Takes away what erased entries leave: pages of the database that still hold a text. The entries are kept by now, whatever
     * becomes of this.
     */
    private void forget(Connection connection) {
        try {
            engine.forget(connection);
        } catch (SQLException e) {
            LOG.warn("what was erased may still be found in unused pages of the database until the next erasure", e);
            pool.evictConnection(connection);
        }
    }

    /** Takes away the files that erased entries name and no other entry does; what fails is tried again at the next start. */
    void sweepFiles() {
        try {
            reading(EntryRows::filesOfErasedAlone).forEach(files::remove);
        } catch (CannotKeepException | StoreException e) {
            LOG.warn("a file that only erased entries name may still be there", e);
        }
    }

    private static RecordFold readAgain(DSLContext db) {
        RecordFold again = new RecordFold();
        EntryRows.each(db, 1, again::take);
        return again;
    }

    private static Answer take(DSLContext db, RecordFold fold, NewEntry one) {
        var before = EntryRows.withClient(db, one.client());
        if (before.isPresent()) {
            return MemoryLog.answerTo(before.get(), one);
        }
        Optional<String> refused = MemoryLog.refuses(one, seq -> EntryRows.at(db, seq));
        if (refused.isPresent()) {
            return new Answer.Refused(refused.get());
        }
        Entry entry = Entry.next(fold.head(), one);
        requireCanonical(entry);
        EntryRows.insert(db, entry);
        entry.erases().ifPresent(named -> EntryRows.empty(db, named));
        ReadingTables.refresh(db, fold, fold.take(entry));
        return new Answer.Taken(entry.seq(), entry.hash());
    }

    /** The form is written by our own code; a public implementation of RFC 8785 agrees, or the entry is not taken. */
    private static void requireCanonical(Entry entry) {
        try {
            for (String text : List.of(entry.payload(), entry.canonicalHead())) {
                if (!new JsonCanonicalizer(text).getEncodedString().equals(text)) {
                    throw new IllegalStateException("entry " + entry.seq() + " is not in canonical form");
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("entry " + entry.seq() + " is not in canonical form", e);
        }
    }

    /**
     * Takes a whole record that was kept elsewhere, in one transaction.
     *
     * @param entries a sound chain from its first entry
     * @throws StoreException if there are entries here already, or the database refuses
     */
    void takeWhole(List<Entry> entries) {
        onWriter("The record was not restored", () -> {
            fold = null;
            return Transaction.write(pool, engine, db -> {
                if (!EntryRows.head(db).equals(Head.EMPTY)) {
                    throw new StoreException("There is a record here already; a backup is restored into an empty one.");
                }
                RecordFold whole = new RecordFold();
                for (Entry e : entries) {
                    requireCanonical(e);
                    EntryRows.insert(db, e);
                    whole.take(e);
                }
                ReadingTables.rebuild(db, whole.state());
                return Boolean.TRUE;
            });
        });
    }

    private void onWriter(String failed, Callable<?> work) {
        try {
            writer.submit(work).get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StoreException(failed + ": the program is being stopped.", e);
        } catch (ExecutionException e) {
            throw new StoreException(failed + ": " + (e.getCause() == null ? e : e.getCause()).getMessage(), e);
        }
    }

    /** Drops the reading tables and fills them again from the entries. */
    void rebuildReadingTables() {
        onWriter("The reading tables were not rebuilt", this::rebuild);
    }

    private @Nullable Void rebuild() throws SQLException {
        fold = null;
        try (Connection connection = pool.getConnection()) {
            try {
                connection.setAutoCommit(false);
                DSLContext db = engine.over(connection);
                RecordFold again = readAgain(db);
                ReadingTables.rebuild(db, again.state());
                connection.commit();
                fold = again;
                return null;
            } catch (SQLException | DataAccessException e) {
                pool.evictConnection(connection);
                throw e;
            }
        }
    }

    @Override
    public void close() {
        writer.shutdown();
        try {
            if (!writer.awaitTermination(CLOSING_S, TimeUnit.SECONDS)) {
                LOG.warn("the writer did not end within {} s", CLOSING_S);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        pool.close();
    }
}
