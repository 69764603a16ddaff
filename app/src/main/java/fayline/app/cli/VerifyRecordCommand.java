package fayline.app.cli;

import fayline.app.usecase.archive.VerifyRecord;
import fayline.flow.record.KeptHead;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** {@code fayline verify-record}: checks that no entry was altered, left out or put in. */
@Command(
        name = "verify-record",
        mixinStandardHelpOptions = true,
        description = {
            "Checks the chain of a shop's record, or of a backup or archive of one, and prints its head, which can be written",
            "down and kept elsewhere.",
            "Exit code 1 when an entry is not as it was written."
        })
final class VerifyRecordCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "PLACE",
            description = "a data folder or an archive; the shop's data folder where it is not given")
    private @Nullable Path place;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(
            names = "--head",
            paramLabel = "HEAD",
            description =
                    "a head that was kept elsewhere: as this command or a printed sheet shows it, or the text of the"
                            + " sheet's QR code; the record must hold it")
    private @Nullable String head;

    VerifyRecordCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        Path checked = place == null ? data.folder() : place;
        NeededFolder.holdsRecord(checked);
        VerifyRecord.Report report = VerifyRecord.verify(checked, outside());
        if (report.fault().isPresent()) {
            surroundings.out().println(report.fault().get());
            surroundings.out().println("sound up to " + report.head());
            return ExitCode.SAYS_NO;
        }
        surroundings
                .out()
                .println(report.entries() + " entries" + files(report.files()) + ", all sound; head " + report.head());
        surroundings.out().println("the same in short: " + report.paper());
        if (report.strays() > 0) {
            surroundings
                    .out()
                    .println(report.strays()
                            + (report.strays() == 1 ? " file lies" : " files lie")
                            + " there that no entry names, as a power cut can leave it: harmless");
        }
        return ExitCode.DONE;
    }

    private static String files(int named) {
        return named == 0 ? "" : named == 1 ? " and 1 file that they name" : " and " + named + " files that they name";
    }

    private Optional<KeptHead> outside() {
        if (head == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(KeptHead.parse(head));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("--head: " + e.getMessage());
        }
    }
}
