package fayline.app.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.time.Clock;

/**
 * What the command line touches outside itself.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 * @param clock the machine's clock, for commands that are given no {@code --now} and find no {@code clock:}
 * @param bench runs a bench
 * @param serve serves pages
 */
public record Surroundings(InputStream in, PrintStream out, PrintStream err, Clock clock, Bench bench, Serve serve) {
    /** Serves pages; the command line does not see them. */
    @FunctionalInterface
    public interface Serve {
        /** Starts it and gives the exit code; a server that stays runs on. */
        int run(ServeOptions options, Surroundings surroundings);
    }

    /** Runs a bench; the benches see the command line as little as it sees them. */
    @FunctionalInterface
    public interface Bench {
        /** Runs it and gives the exit code. */
        int run(BenchOptions options, PrintStream out, PrintStream err);
    }
}
