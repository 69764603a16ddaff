package fayline.basis.breach;

import fayline.flow.plan.Plan;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Instant;
import picocli.CommandLine;

/** Breaks the rules on purpose, so that the structure test can show that they bite. */
final class LooksForward {
    static int count;

    private LooksForward() {}

    static Object everythingForbidden(Plan plan, Path file, Connection connection, CommandLine line) {
        count++;
        return plan.toString() + file + connection + line + Instant.now();
    }
}
