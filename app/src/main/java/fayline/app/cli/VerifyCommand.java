package fayline.app.cli;

import fayline.app.usecase.VerifyDefinition;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code fayline verify}: every problem of a definition folder at once. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = {
            "Tells everything that is wrong with a definition folder, by file and line.",
            "Exit code 2 on any problem, 0 with cautions alone."
        })
final class VerifyCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    VerifyCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        VerifyDefinition.Report report = VerifyDefinition.verify(
                place.folder(), place.now(), surroundings.clock().instant());
        report.problems().forEach(p -> surroundings.out().println(p.sentence()));
        surroundings.out().println(count(report.stops(), "problem") + ", " + count(report.cautions(), "caution"));
        return report.stops() > 0 ? ExitCode.BAD_INPUT : ExitCode.DONE;
    }

    private static String count(long n, String what) {
        return (n == 0 ? "no" : String.valueOf(n)) + " " + what + (n == 1 ? "" : "s");
    }
}
