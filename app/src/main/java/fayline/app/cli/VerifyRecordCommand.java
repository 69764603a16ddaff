package fayline.app.cli;

import fayline.app.usecase.open.VerifyRecord;
import fayline.flow.record.Head;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code fayline verify-record}: checks that no entry was altered, left out or put in. */
@Command(
        name = "verify-record",
        mixinStandardHelpOptions = true,
        description = {
            "Checks the chain of a shop's record and prints its head, which can be written down and kept elsewhere.",
            "Exit code 1 when an entry is not as it was written."
        })
final class VerifyRecordCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(
            names = "--head",
            paramLabel = "HEAD",
            description = "a head that was kept elsewhere; the record must hold it")
    private @Nullable String head;

    VerifyRecordCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        NeededFolder.isThere(data.folder());
        VerifyRecord.Report report = VerifyRecord.verify(data.folder(), outside());
        if (report.fault().isPresent()) {
            surroundings.out().println(report.fault().get());
            surroundings.out().println("sound up to " + report.head());
            return ExitCode.SAYS_NO;
        }
        surroundings.out().println(report.entries() + " entries, all sound; head " + report.head());
        return ExitCode.DONE;
    }

    private Optional<Head> outside() {
        if (head == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Head.parse(head));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("--head: " + e.getMessage());
        }
    }
}
