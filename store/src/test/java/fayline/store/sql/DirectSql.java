package fayline.store.sql;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** Statements given to a folder's database past the program, as an owner of the machine could. */
final class DirectSql {
    private DirectSql() {}

    static void run(Path folder, String... statements) throws SQLException {
        try (Connection c = DataFolder.source(folder, DataFolder.elsewhere(folder), false)
                        .getConnection();
                Statement s = c.createStatement()) {
            for (String statement : statements) {
                s.execute(statement);
            }
        }
    }
}
