package fayline.store.sql;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryLog;
import fayline.flow.record.Head;
import fayline.store.file.FolderFiles;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Consumer;
import javax.sql.DataSource;

/**
 * A shop's data folder, open. It is made on first use, held for one running program at a time, and its tables are brought to
 * this version's form. The record lies in {@code shop.db}, or where {@code database.properties} says.
 */
public final class DataFolder implements AutoCloseable {
    /** The database file. */
    static final String DATABASE = "shop.db";

    /** Names another database: {@code url}, {@code user}, {@code password}. */
    static final String ELSEWHERE = "database.properties";

    /** Where files of entries lie, unless another database holds them. */
    static final String FILES = "files";

    /** Any number that other programs on one database server are unlikely to lock by. */
    private static final long SHOP_LOCK = 0x6661796c696e65L;

    private final Path path;
    private final FolderLock lock;
    private final Optional<Connection> held;
    private final SqlEntryLog log;
    private final EntryFiles files;
    private final PeopleTables people;

    private DataFolder(
            Path path,
            FolderLock lock,
            Optional<Connection> held,
            SqlEntryLog log,
            EntryFiles files,
            PeopleTables people) {
        this.path = path;
        this.lock = lock;
        this.held = held;
        this.log = log;
        this.files = files;
        this.people = people;
    }

    /**
     * Opens a folder, or makes it.
     *
     * @throws FolderInUseException if another running program has it open
     * @throws StoreException if it cannot be read or written
     */
    public static DataFolder open(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new StoreException("The data folder " + folder + " cannot be made: " + e.getMessage() + ".", e);
        }
        FolderLock lock = FolderLock.take(folder);
        Optional<Connection> held = Optional.empty();
        try {
            Optional<Properties> elsewhere = elsewhere(folder);
            Engine engine = elsewhere.isPresent() ? Engine.POSTGRESQL : Engine.SQLITE;
            DataSource source = source(folder, elsewhere, false);
            if (elsewhere.isPresent()) {
                held = Optional.of(holdServer(folder, source));
            }
            HikariDataSource pool = migrated(engine, source);
            EntryFiles files = elsewhere.isPresent() ? new TableFiles(pool) : swept(folder);
            SqlEntryLog log = new SqlEntryLog(pool, engine, files);
            log.sweepFiles();
            return new DataFolder(folder, lock, held, log, files, new PeopleTables(pool, engine));
        } catch (HikariPool.PoolInitializationException e) {
            release(lock, held);
            throw new StoreException("The database of " + folder + " cannot be opened: " + e.getMessage(), e);
        } catch (RuntimeException e) {
            release(lock, held);
            throw e;
        }
    }

    private static HikariDataSource migrated(Engine engine, DataSource source) {
        HikariDataSource pool = engine.pool(source);
        try {
            engine.migrate(pool);
            return pool;
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
    }

    private static FolderFiles swept(Path folder) {
        FolderFiles files = new FolderFiles(folder.resolve(FILES));
        files.sweep();
        return files;
    }

    static Optional<Properties> elsewhere(Path folder) {
        Path file = folder.resolve(ELSEWHERE);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        Properties named = new Properties();
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            named.load(in);
        } catch (IOException e) {
            throw new StoreException(file + " cannot be read: " + e.getMessage() + ".", e);
        }
        if (!named.getProperty("url", "").startsWith("jdbc:postgresql:")) {
            throw new StoreException(file + ": url: found \"" + named.getProperty("url", "")
                    + "\", expected one that begins with jdbc:postgresql:");
        }
        return Optional.of(named);
    }

    static DataSource source(Path folder, Optional<Properties> elsewhere, boolean readOnly) {
        return elsewhere.map(Engine::postgresql).orElseGet(() -> Engine.sqlite(folder.resolve(DATABASE), readOnly));
    }

    /** Keeps a second program off the same database, whatever folder it comes from; the server frees it with the session. */
    private static Connection holdServer(Path folder, DataSource source) {
        try {
            Connection connection = source.getConnection();
            try (Statement ask = connection.createStatement();
                    ResultSet answer = ask.executeQuery("select pg_try_advisory_lock(" + SHOP_LOCK + ")")) {
                if (answer.next() && answer.getBoolean(1)) {
                    return connection;
                }
            }
            connection.close();
            throw new FolderInUseException(folder, "it holds the database server's lock");
        } catch (SQLException e) {
            throw new StoreException("The database of " + folder + " cannot be reached: " + e.getMessage(), e);
        }
    }

    /** The folder. */
    public Path path() {
        return path;
    }

    /** Its record. */
    public EntryLog log() {
        return log;
    }

    /** The files that its entries name. */
    public EntryFiles files() {
        return files;
    }

    /** Who may enter from the shop's network. */
    public PeopleTables people() {
        return people;
    }

    /**
     * Takes what was kept elsewhere into this folder, which must hold no record yet: who may enter first, then all entries in
     * one transaction.
     *
     * @param kept a sound record
     * @param attached every file that its entries name; kept before the first entry is
     * @throws StoreException if there is a record here already, or the database refuses
     * @throws EntryFiles.CannotKeepException if a file cannot be kept
     * @throws IOException if a file cannot be read
     */
    public void restore(RecordSnapshot kept, Attached attached) throws IOException {
        if (!log.head().equals(Head.EMPTY)) {
            throw new StoreException(
                    "The folder " + path + " holds a record already; a backup is restored into an empty one.");
        }
        attached.each(files::put);
        kept.people().forEach(people::put);
        kept.devices().forEach(people::add);
        log.takeWhole(kept.entries());
    }

    /** Files of a record that was kept elsewhere. */
    @FunctionalInterface
    public interface Attached {
        /**
         * Gives each file.
         *
         * @throws IOException if one cannot be read
         */
        void each(Consumer<byte[]> taker) throws IOException;
    }

    /** Drops the tables for reading and fills them again from the entries. */
    public void rebuildReadingTables() {
        log.rebuildReadingTables();
    }

    @Override
    public void close() {
        log.close();
        release(lock, held);
    }

    private static void release(FolderLock lock, Optional<Connection> held) {
        held.ifPresent(DataFolder::letGo);
        lock.close();
    }

    /** Frees the lock itself: the server ends a closed session in its own time, and a start right after would find it held. */
    private static void letGo(Connection connection) {
        try (connection;
                Statement tell = connection.createStatement()) {
            tell.execute("select pg_advisory_unlock(" + SHOP_LOCK + ")");
        } catch (SQLException e) {
            // The server frees the lock when the session ends.
            return;
        }
    }
}
