package fayline.app.bench;

import fayline.app.usecase.net.NetShelf;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Chooses the bench that is asked for. */
public final class BenchRun {
    /** Done. */
    static final int DONE = 0;

    /** Something differs or is broken. */
    static final int DIFFERS = 1;

    /** What was asked for cannot be read. */
    static final int BAD_INPUT = 2;

    /** Our fault, or the machine's. */
    static final int FAULT = 3;

    private static final String TOPICS =
            "checks FOLDER [--only NAME,...], fit, laminate, plan FOLDER or STEPS, record, serve [--phones N], start";

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
     * @param phones how many phones, where it is about phones
     * @param json whether to write JSON lines
     * @return 0 done, 1 something differs or is broken, 2 bad input, 3 a fault
     */
    public int run(String topic, Optional<Path> folder, List<String> only, int seconds, int phones, boolean json) {
        if ("start".equals(topic)) {
            return new StartBench(out, err).run(seconds, json);
        }
        if ("serve".equals(topic)) {
            return new ServeBench(out, err).run(phones, seconds, json);
        }
        if ("record".equals(topic)) {
            return new RecordBench(out, err).run(seconds, json);
        }
        if ("fit".equals(topic)) {
            return new FitBench(out).run(seconds, json);
        }
        if ("laminate".equals(topic)) {
            return new LaminateBench(out).run(seconds, json);
        }
        boolean checks = "checks".equals(topic);
        if (checks || "plan".equals(topic)) {
            if (folder.isEmpty()) {
                err.println("bench " + topic + ": expected a folder"
                        + (checks
                                ? " of case files"
                                : ": a project's definition, or sets of nets with their best known"));
                return BAD_INPUT;
            }
            return checks ? new ChecksBench(out, err).run(folder.get(), only, json) : plan(folder.get(), seconds, json);
        }
        err.println("bench: found the topic \"" + topic + "\", expected one of: " + TOPICS);
        return BAD_INPUT;
    }

    private int plan(Path folder, int seconds, boolean json) {
        return NetShelf.isAt(folder)
                ? new NetBench(out, err).run(folder, seconds, json)
                : new PlanBench(out, err).run(folder, seconds, json);
    }
}
