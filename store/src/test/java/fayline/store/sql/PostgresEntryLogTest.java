package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** The contract on PostgreSQL, on a private server of this test; skipped by name where its programs are not installed. */
class PostgresEntryLogTest extends EntryLogContract
        implements PeopleTablesContract, EntryFilesContract, EntryRulesContract, ErasureContract {
    private static @Nullable PrivatePostgres server;
    private static int databases;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        Optional<Path> programs = PrivatePostgres.programs();
        assumeTrue(programs.isPresent(), "PostgreSQL is not installed: its storage contract was not run");
        server = PrivatePostgres.start(programs.orElseThrow());
    }

    @AfterAll
    static void stop() throws IOException, InterruptedException {
        if (server != null) {
            server.close();
        }
    }

    @Override
    void prepare(Path fresh) throws IOException, SQLException {
        PrivatePostgres running = java.util.Objects.requireNonNull(server);
        String database = "shop_" + ++databases;
        try (Connection c = DriverManager.getConnection(running.url("postgres"), "fayline", running.password());
                Statement s = c.createStatement()) {
            s.execute("create database " + database);
        }
        Files.writeString(
                fresh.resolve(DataFolder.ELSEWHERE),
                "url=" + running.url(database) + "\nuser=fayline\npassword=" + running.password() + "\n",
                StandardCharsets.UTF_8);
    }

    /** A row that was put and whose transaction was cut off before it was through. */
    @Override
    public void leaveHalfAFile(byte[] content) throws SQLException {
        try (Connection c = DataFolder.source(folder(), DataFolder.elsewhere(folder()), false)
                        .getConnection();
                PreparedStatement put = c.prepareStatement("insert into entry_file (sha256, content) values (?, ?)");
                Statement s = c.createStatement()) {
            c.setAutoCommit(false);
            put.setString(1, DefinitionFolder.hash(content));
            put.setBytes(2, content);
            assertThat(put.executeUpdate()).isEqualTo(1);
            // The session is ended from outside, as when the server is killed.
            assertThatThrownBy(() -> s.execute("select pg_terminate_backend(pg_backend_pid())"))
                    .isInstanceOf(SQLException.class);
        }
    }

    @Override
    public List<String> statementsThatDropTheRules() {
        return List.of("alter table entry disable trigger user");
    }
}
