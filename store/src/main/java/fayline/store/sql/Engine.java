package fayline.store.sql;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.conf.RenderQuotedNames;
import org.jooq.conf.Settings;
import org.jooq.impl.DSL;
import org.postgresql.ds.PGSimpleDataSource;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The two database engines and what differs between them: how to reach them, how many connections, and where their own
 * scripts lie.
 */
enum Engine {
    SQLITE(SQLDialect.SQLITE, "sqlite", 1),
    /** Flyway needs two connections there; a pool of one hangs. */
    POSTGRESQL(SQLDialect.POSTGRES, "postgresql", 4);

    private static final String SCRIPTS = "classpath:fayline/store/sql/";

    static {
        System.setProperty("org.jooq.no-logo", "true");
        System.setProperty("org.jooq.no-tips", "true");
    }

    private final SQLDialect dialect;
    private final String scripts;
    private final int connections;

    Engine(SQLDialect dialect, String scripts, int connections) {
        this.dialect = dialect;
        this.scripts = scripts;
        this.connections = connections;
    }

    DSLContext over(Connection connection) {
        return DSL.using(
                connection, dialect, new Settings().withRenderQuotedNames(RenderQuotedNames.EXPLICIT_DEFAULT_UNQUOTED));
    }

    HikariDataSource pool(DataSource source) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("record");
        config.setDataSource(source);
        config.setMaximumPoolSize(connections);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(15_000);
        config.setAutoCommit(true);
        return new HikariDataSource(config);
    }

    /**
     * Lets nothing of what was taken out stay behind in the database's own files: they are written anew. What the database server
     * has in its log for its own recovery goes in its own time.
     *
     * @param connection one without an open transaction
     */
    void forget(Connection connection) throws SQLException {
        connection.setAutoCommit(true);
        try (Statement tell = connection.createStatement()) {
            if (this == SQLITE) {
                tell.execute("vacuum");
                tell.execute("pragma wal_checkpoint(truncate)");
            } else {
                tell.execute("vacuum (full) entry, step_note, entry_file");
            }
        }
    }

    /** Brings the tables to this version's form. */
    void migrate(DataSource pool) {
        try {
            Flyway.configure(Engine.class.getClassLoader())
                    .dataSource(pool)
                    .locations(SCRIPTS + "both", SCRIPTS + scripts)
                    .validateMigrationNaming(true)
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new StoreException(
                    "The tables of the record could not be brought to this version's form: " + e.getMessage(), e);
        }
    }

    /**
     * SQLite in a file. Every commit is on the disk before it is acknowledged (write-ahead log, full sync); a transaction takes
     * the write lock when it begins.
     */
    static DataSource sqlite(Path file, boolean readOnly) {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(5000);
        config.enforceForeignKeys(true);
        if (readOnly) {
            config.setReadOnly(true);
        } else {
            config.setJournalMode(SQLiteConfig.JournalMode.WAL);
            config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
            config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        }
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return source;
    }

    /** PostgreSQL as a folder's {@code database.properties} names it: {@code url}, {@code user}, {@code password}. */
    static DataSource postgresql(Properties named) {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl(named.getProperty("url", ""));
        source.setUser(named.getProperty("user", ""));
        source.setPassword(named.getProperty("password", ""));
        source.setApplicationName("fayline");
        return source;
    }
}
