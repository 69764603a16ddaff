package fayline.app.cli;

import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.open.OpenShop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fayline export}: writes a project out as a definition folder. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a project out as a definition folder, files byte for byte as they stand and what has happened as history.",
            "The folder must be new or empty."
        })
final class ExportCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "DIR", description = "the new folder")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(names = "--project", paramLabel = "ID", description = "which project; needed where there are several")
    private @Nullable String project;

    ExportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        NeededFolder.isThere(data.folder());
        NeededFolder.isNewOrEmpty(folder);
        try (OpenShop shop = OpenShop.open(data.folder(), surroundings.clock(), Optional.empty())) {
            String chosen = ChosenProject.of(shop.shop(), project);
            int files = new ExportFolder(shop.shop()).to(chosen, folder);
            surroundings.out().println("Project " + chosen + ": " + files + " files written to " + folder + ".");
            return ExitCode.DONE;
        }
    }
}
