package fayline.app.bench;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Chooses the bench that is asked for. */
public final class BenchRun {
    private static final int BAD_INPUT = 2;
    private static final String TOPICS = "checks FOLDER [--only NAME,...]";

    private final PrintStream out;
    private final PrintStream err;

    /** Benches that print their figures on {@code out} and what is wrong on {@code err}. */
    public BenchRun(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Runs one bench.
     *
     * @param topic which
     * @param folder the folder it works on, where it needs one
     * @param only names to keep to; empty means all
     * @param seconds how long it may take
     * @param json whether to write JSON lines
     * @return 0 done, 1 something differs or is too slow to finish, 2 bad input
     */
    public int run(String topic, Optional<Path> folder, List<String> only, int seconds, boolean json) {
        if ("checks".equals(topic)) {
            if (folder.isEmpty()) {
                err.println("bench checks: expected a folder of case files");
                return BAD_INPUT;
            }
            return new ChecksBench(out, err).run(folder.get(), only, json);
        }
        err.println("bench: found the topic \"" + topic + "\", expected one of: " + TOPICS);
        return BAD_INPUT;
    }
}
