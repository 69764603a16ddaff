package fayline.app.cli;

import fayline.app.usecase.forecast.ForecastLines;
import fayline.app.usecase.forecast.Trials;
import fayline.app.usecase.view.ShopView;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline forecast}: when the work will be done, as a spread. */
@Command(
        name = "forecast",
        mixinStandardHelpOptions = true,
        description =
                "Says when the work of a definition folder will be done: by trial plans and by what its history tells.")
final class ForecastCommand implements Callable<Integer> {
    private static final int MOST = 10_000;
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @Option(names = "--trials", paramLabel = "N", description = "how many trial plans; ${DEFAULT-VALUE} where not said")
    private int trials = Trials.ENOUGH;

    ForecastCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        if (trials < 1 || trials > MOST) {
            throw new BadInputException("--trials: found " + trials + ", expected 1 to " + MOST);
        }
        ShopView view = place.look(surroundings);
        ForecastLines.of(view, Trials.all(view, trials)).forEach(surroundings.out()::println);
        return ExitCode.DONE;
    }
}
