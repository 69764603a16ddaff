package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.CheckFolder;
import fayline.app.bench.cases.Verdict;
import fayline.app.bench.cases.Verdict.Outcome;
import fayline.app.usecase.calc.Json;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Prints what came of each case of a folder, and how many of each. */
final class ChecksBench {
    private final PrintStream out;
    private final PrintStream err;

    ChecksBench(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    int run(Path folder, List<String> only, boolean json) {
        CheckFolder.Report report = CheckFolder.run(folder, only);
        report.verdicts().forEach(v -> out.println(json ? jsonLine(v) : line(v)));
        report.unreadable().forEach((file, why) -> err.println(file + ": unreadable: " + why));
        report.missing().forEach(n -> err.println("no file or folder is named " + n));
        out.println(json ? jsonCounts(report) : counts(report));
        boolean nothing = !only.isEmpty() && report.missing().size() == only.size();
        if (!report.unreadable().isEmpty() || nothing) {
            return BenchRun.BAD_INPUT;
        }
        return report.count(Outcome.DIFFERS) > 0 ? BenchRun.DIFFERS : BenchRun.DONE;
    }

    private static String line(Verdict v) {
        StringBuilder s = new StringBuilder(
                String.format(Locale.ROOT, "%-11s  %s  %s", v.outcome().words(), v.file(), v.id()));
        for (Verdict.Difference d : v.differences()) {
            s.append(String.format(
                    Locale.ROOT, "; %s: expected %s, found %s %s", d.name(), d.expected(), d.found(), unit(d.unit())));
        }
        if (!v.why().isEmpty()) {
            s.append(": ").append(v.why());
        }
        return s.toString().stripTrailing();
    }

    private static String unit(String unit) {
        return "-".equals(unit) ? "" : unit;
    }

    private static String jsonLine(Verdict v) {
        ObjectNode n = Json.object();
        n.put("file", v.file()).put("case", v.id()).put("outcome", v.outcome().words());
        for (Verdict.Difference d : v.differences()) {
            n.withArray("differences")
                    .addObject()
                    .put("name", d.name())
                    .put("expected", d.expected())
                    .put("found", d.found())
                    .put("unit", d.unit());
        }
        if (!v.why().isEmpty()) {
            n.put("why", v.why());
        }
        return Json.line(n);
    }

    private static String counts(CheckFolder.Report r) {
        return String.format(
                Locale.ROOT,
                "%d holds, %d differs, %d not covered",
                r.count(Outcome.HOLDS),
                r.count(Outcome.DIFFERS),
                r.count(Outcome.NOT_COVERED));
    }

    private static String jsonCounts(CheckFolder.Report r) {
        ObjectNode n = Json.object();
        n.put("holds", r.count(Outcome.HOLDS));
        n.put("differs", r.count(Outcome.DIFFERS));
        n.put("notCovered", r.count(Outcome.NOT_COVERED));
        n.put("unreadable", r.unreadable().size());
        return Json.line(n);
    }
}
