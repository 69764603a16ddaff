package fayline.app.cli;

import fayline.app.usecase.archive.BackUpRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fayline backup}: writes the whole record into one file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a shop's whole record into one file, while the program runs or not: a ZIP of plain texts that can be read",
            "without this program and restored on either kind of database. What is there under this name is replaced once the",
            "new file is whole. Exit code 1 when the record is not sound; nothing is written then."
        })
final class BackupCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "the file to write, as shop-2026-03-02.zip")
    @SuppressWarnings("NullAway.Init")
    private Path file;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(
            names = "--without-sign-ins",
            description =
                    "leaves out who may enter, with the hashes of their passwords: for handing the record to others")
    private boolean withoutSignIns;

    BackupCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        NeededFolder.isThere(data.folder());
        NeededFolder.holdsRecord(data.folder());
        Path beside = file.toAbsolutePath().getParent();
        if (beside == null || !Files.isDirectory(beside) || Files.isDirectory(file)) {
            throw new BadInputException("found " + file + ", expected a file name in a folder that is there");
        }
        BackUpRecord.Report report = BackUpRecord.write(
                data.folder(), file, !withoutSignIns, surroundings.clock().instant(), RootCommand.version());
        surroundings.out().println(report.entries() + " entries written to " + file + "; head " + report.head());
        surroundings.out().println("the same in short: " + report.paper());
        return ExitCode.DONE;
    }
}
