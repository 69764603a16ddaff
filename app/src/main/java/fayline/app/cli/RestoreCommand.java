package fayline.app.cli;

import fayline.app.usecase.archive.RestoreRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code fayline restore}: makes a shop of a backup. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = {
            "Makes a shop's data folder of a backup, once all of it was checked. The folder must hold no record: a new one, an",
            "empty one, or one that names another database. Everybody signs in anew afterwards. Exit code 1 when the record in",
            "the backup is not sound; nothing is restored then."
        })
final class RestoreCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "the backup")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    RestoreCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new BadInputException("found no file " + file + ", expected a backup");
        }
        long entries = RestoreRecord.into(file, data.folder());
        surroundings.out().println(entries + " entries restored to " + data.folder() + ".");
        return ExitCode.DONE;
    }
}
