package fayline.store.sql;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Function;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;

/** One question or one change in a transaction of its own; after an error of the database the connection is dropped. */
final class Transaction {
    private Transaction() {}

    static <T> T read(HikariDataSource pool, Engine engine, Function<DSLContext, T> question) {
        return run(pool, engine, question, false);
    }

    static <T> T write(HikariDataSource pool, Engine engine, Function<DSLContext, T> change) {
        return run(pool, engine, change, true);
    }

    private static <T> T run(HikariDataSource pool, Engine engine, Function<DSLContext, T> work, boolean keep) {
        try (Connection connection = pool.getConnection()) {
            try {
                connection.setAutoCommit(false);
                T answer = work.apply(engine.over(connection));
                if (keep) {
                    connection.commit();
                } else {
                    connection.rollback();
                }
                return answer;
            } catch (SQLException | DataAccessException e) {
                pool.evictConnection(connection);
                throw new StoreException("The record cannot be " + (keep ? "written: " : "read: ") + e.getMessage(), e);
            }
        } catch (SQLException e) {
            throw new StoreException("The record cannot be reached: " + e.getMessage(), e);
        }
    }
}
