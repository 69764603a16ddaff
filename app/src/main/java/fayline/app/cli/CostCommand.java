package fayline.app.cli;

import fayline.app.usecase.view.CostsByPlan;
import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import fayline.flow.result.cost.Cost;
import fayline.flow.result.cost.CostReport;
import fayline.flow.result.cost.CostRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline cost}: what the work costs, and what a change of the definition costs. */
@Command(
        name = "cost",
        mixinStandardHelpOptions = true,
        description = {
            "Says what the work of a definition folder costs: to date, to go, at completion, against budgets.",
            "With --before another folder: what the change from that one to this one costs. Exit code 1 where a budget",
            "is overrun."
        })
final class CostCommand implements Callable<Integer> {
    private static final double SHOWN = 0.005;
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @Option(names = "--before", paramLabel = "DIR", description = "the definition folder before a change")
    private @Nullable Path before;

    CostCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        ShopView view = place.look(surroundings);
        CostReport report = CostsByPlan.of(view);
        String currency = view.definition().facts().currency();
        Path earlier = before;
        if (earlier != null) {
            ShopView old = ReadFolder.read(earlier, place.now(), surroundings.clock());
            difference(CostsByPlan.of(old), report, currency);
            return ExitCode.DONE;
        }
        say("%-34s %11s %11s %11s %11s", currency, "to date", "to go", "in all", "budget");
        row(report.whole());
        report.assemblies().forEach(this::row);
        report.made().stream().filter(m -> m.atCompletion().all() > 0).forEach(this::row);
        if (report.rework().atCompletion().all() > 0) {
            row(report.rework());
        }
        if (!report.unpriced().isEmpty()) {
            say("without a price, not counted: %s", String.join(", ", report.unpriced()));
        }
        if (!report.orders().isEmpty()) {
            say("orders without a price, not counted: %s", String.join(", ", report.orders()));
        }
        return over(report.whole())
                        || report.assemblies().stream().anyMatch(CostCommand::over)
                        || report.made().stream().anyMatch(CostCommand::over)
                ? ExitCode.SAYS_NO
                : ExitCode.DONE;
    }

    private static boolean over(CostRow r) {
        return r.left().isPresent() && r.left().getAsDouble() < 0;
    }

    private void row(CostRow r) {
        say(
                "%-34s %11.2f %11.2f %11.2f %11s",
                r.id(),
                r.toDate().all(),
                r.toGo().all(),
                r.atCompletion().all(),
                r.budget().isPresent()
                        ? String.format(Locale.ROOT, "%.2f", r.budget().getAsDouble())
                        : "");
    }

    private void difference(CostReport old, CostReport fresh, String currency) {
        say("%-34s %11s %11s %11s %11s", currency + " more", "material", "hours", "outside", "in all");
        Map<String, Cost> rows = new LinkedHashMap<>();
        fresh.made().forEach(m -> rows.put(m.id(), m.atCompletion()));
        old.made().forEach(m -> rows.merge(m.id(), Cost.NONE.minus(m.atCompletion()), Cost::plus));
        rows.forEach((id, c) -> {
            if (Math.abs(c.material()) + Math.abs(c.hands()) + Math.abs(c.orders()) > SHOWN) {
                line(id, c);
            }
        });
        line("in all", fresh.whole().atCompletion().minus(old.whole().atCompletion()));
    }

    private void line(String name, Cost c) {
        say("%-34s %+11.2f %+11.2f %+11.2f %+11.2f", name, c.material(), c.hands(), c.orders(), c.all());
    }

    private void say(String pattern, Object... parts) {
        surroundings.out().println(String.format(Locale.ROOT, pattern, parts).stripTrailing());
    }
}
