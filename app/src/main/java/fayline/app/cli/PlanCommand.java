package fayline.app.cli;

import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.WritePlan;
import fayline.flow.audit.BrokenRule;
import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline plan}: a feasible plan for the coming weeks. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Plans the work of a definition folder and prints the coming weeks by day.",
            "Exit code 1 when a step cannot be planned or the auditor finds a broken rule; each is told on standard error."
        })
final class PlanCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @ArgGroup
    private @Nullable As as;

    /** One form at most. */
    static final class As {
        @Option(names = "--json", description = "work and plan in the plan format, for calc plan.audit")
        private boolean json;

        @Option(names = "--csv", description = "a table, a line for each step")
        private boolean csv;

        @Option(names = "--ics", description = "a calendar, an event for each step")
        private boolean ics;
    }

    PlanCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        ShopView view = place.look(surroundings);
        PrintStream out = surroundings.out();
        if (as == null) {
            new PlanByDay(view).lines().forEach(out::println);
        } else {
            WritePlan.Form form =
                    as.json ? WritePlan.Form.JSON : as.csv ? WritePlan.Form.TABLE : WritePlan.Form.CALENDAR;
            out.print(WritePlan.of(view, form));
        }
        view.plan()
                .unplanned()
                .forEach(u -> surroundings.err().println("not planned: " + u.step() + ": " + u.reason()));
        view.audit().stream()
                .filter(b -> !b.admitted())
                .forEach(b -> surroundings.err().println(sentence(b)));
        return view.audit().isEmpty() ? ExitCode.DONE : ExitCode.SAYS_NO;
    }

    private static String sentence(BrokenRule b) {
        return "broken rule " + b.rule() + ": " + b.sentence();
    }
}
