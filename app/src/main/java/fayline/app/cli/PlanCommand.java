package fayline.app.cli;

import fayline.app.usecase.better.BetterFolder;
import fayline.app.usecase.better.BetterFolder.Bettered;
import fayline.app.usecase.open.UsualPlace;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.SaidByName;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.WhyNot;
import fayline.app.usecase.view.WritePlan;
import fayline.flow.audit.BrokenRule;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.PlanImprover.Limits;
import java.io.IOException;
import java.io.PrintStream;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
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
    private static final int MOST_EFFORT = 3600;

    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @ArgGroup
    private @Nullable As as;

    @ArgGroup(exclusive = false)
    private @Nullable Search search;

    /** A search for a better plan. */
    static final class Search {
        @Option(
                names = "--better",
                required = true,
                paramLabel = "EFFORT",
                description = "search for a better plan; the effort is the solver's deterministic seconds, 1 to 3600:"
                        + " the same effort and seed give the same plan")
        private int effort;

        @Option(names = "--seed", paramLabel = "N", description = "what is chosen by chance; 1 if not said")
        private int seed = 1;

        @Option(
                names = "--stop-after",
                paramLabel = "SECONDS",
                description = "stop the search by the clock; the best is kept, and the same again need not give it")
        private @Nullable Integer stopAfter;
    }

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
        ShopView view = search == null ? place.look(surroundings) : better(search);
        PrintStream out = surroundings.out();
        if (as == null) {
            new PlanByDay(view).lines().forEach(out::println);
        } else {
            WritePlan.Form form =
                    as.json ? WritePlan.Form.JSON : as.csv ? WritePlan.Form.TABLE : WritePlan.Form.CALENDAR;
            out.print(WritePlan.of(view, form));
        }
        SaidByName names = new SaidByName(view);
        view.plan()
                .unplanned()
                .forEach(u -> surroundings.err().println("not planned: " + u.step() + ": " + names.named(u.reason())));
        new WhyNot()
                .of(view)
                .forEach(c -> surroundings.err().println("conflict: " + c.step() + ": " + names.named(c.sentence())));
        view.audit().stream()
                .filter(b -> !b.admitted())
                .forEach(b -> surroundings.err().println(sentence(b)));
        return view.audit().isEmpty() ? ExitCode.DONE : ExitCode.SAYS_NO;
    }

    private ShopView better(Search asked) throws IOException {
        if (asked.effort < 1 || asked.effort > MOST_EFFORT) {
            throw new BadInputException(
                    "plan: found --better " + asked.effort + ", expected an effort from 1 to " + MOST_EFFORT);
        }
        Optional<Integer> stopAfter = Optional.ofNullable(asked.stopAfter);
        if (stopAfter.filter(s -> s < 1).isPresent()) {
            throw new BadInputException("plan: found --stop-after " + stopAfter.get() + ", expected seconds from 1 on");
        }
        LookAtShop looking = place.open(surroundings);
        PlanImprover improver =
                new LeastFinish(UsualPlace.libraries()).improver().orElseThrow();
        Optional<Duration> time = stopAfter.map(Duration::ofSeconds);
        Bettered b = BetterFolder.search(looking, improver, new Limits(asked.effort, asked.seed), time);
        surroundings
                .err()
                .printf(
                        Locale.ROOT,
                        "%s Score %.1f h, was %.1f h.%n",
                        b.origin().words(),
                        b.after().total(),
                        b.before().total());
        return b.view();
    }

    private static String sentence(BrokenRule b) {
        return "broken rule " + b.rule() + ": " + b.sentence();
    }
}
