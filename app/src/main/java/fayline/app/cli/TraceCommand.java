package fayline.app.cli;

import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.StoresByPlan;
import fayline.flow.result.trace.LotTrace;
import fayline.flow.result.trace.TracedUse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fayline trace}: a lot into its parts, or a part back to its lots. */
@Command(
        name = "trace",
        mixinStandardHelpOptions = true,
        description = "Follows a lot into the parts it went into, or a part or joint back to the lots it holds.")
final class TraceCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @Parameters(index = "1", paramLabel = "LOT|PART", description = "a lot's number, or the id of a part or joint")
    @SuppressWarnings("NullAway.Init")
    private String which;

    TraceCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        ShopView view = place.look(surroundings);
        LotTrace trace = new LotTrace(view.record());
        boolean made = view.definition().parts().find(which).isPresent()
                || view.definition().joints().find(which).isPresent();
        List<TracedUse> uses = made ? trace.backward(view.project() + "/" + which) : trace.forward(which);
        boolean known = made
                || !uses.isEmpty()
                || StoresByPlan.of(view).lots().stream()
                        .anyMatch(l -> l.lot().id().equals(which));
        if (!known) {
            throw new BadInputException("found \"" + which
                    + "\", expected a lot that the stores hold or a part or joint of the definition");
        }
        if (uses.isEmpty()) {
            surroundings.out().println(made ? "No lot is named for it." : "Nobody named it at a step.");
        }
        uses.forEach(u -> surroundings.out().println(line(view, u)));
        return ExitCode.DONE;
    }

    private static String line(ShopView view, TracedUse u) {
        return String.format(
                        Locale.ROOT,
                        "%s  lot %-10s %s%s%s, %s, %s%s, entry %d",
                        u.at().atZone(view.zone()).toLocalDateTime(),
                        u.lot(),
                        u.sort().words(),
                        u.what().isEmpty() ? "" : " " + u.what(),
                        u.component().isEmpty() ? "" : " (" + u.component() + ")",
                        u.step(),
                        u.amount().isEmpty() ? "no reading" : u.amount(),
                        u.with().isEmpty() ? "" : ", with lot " + u.with(),
                        u.seq())
                .stripTrailing();
    }
}
