package fayline.store.sql;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Function;
import org.jooq.DSLContext;

/** One state of a data folder's database, whether a program has the folder open or not. Nothing is written. */
final class ReadOnly {
    private ReadOnly() {}

    static boolean isIn(Path folder) {
        return Files.isRegularFile(folder.resolve(DataFolder.DATABASE))
                || Files.exists(folder.resolve(DataFolder.ELSEWHERE));
    }

    /**
     * Asks a folder.
     *
     * @throws StoreException if there is no record or it cannot be reached
     */
    static <T> T ask(Path folder, Function<DSLContext, T> question) {
        Optional<Properties> elsewhere = DataFolder.elsewhere(folder);
        if (!isIn(folder)) {
            throw new StoreException("The folder " + folder + " holds no record: expected a file " + DataFolder.DATABASE
                    + " or " + DataFolder.ELSEWHERE + " in it.");
        }
        Engine engine = elsewhere.isPresent() ? Engine.POSTGRESQL : Engine.SQLITE;
        try (Connection connection = DataFolder.source(folder, elsewhere, true).getConnection()) {
            connection.setAutoCommit(false);
            if (engine == Engine.POSTGRESQL) {
                connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            }
            T answer = question.apply(engine.over(connection));
            connection.rollback();
            return answer;
        } catch (SQLException e) {
            throw new StoreException("The record in " + folder + " cannot be reached: " + e.getMessage(), e);
        }
    }
}
