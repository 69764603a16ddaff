package fayline.app.cli;

import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.open.OpenShop;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline import}: reads a definition folder into a shop's data. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = {
            "Reads a definition folder with its history into a shop's data: a new project, or a new state of one.",
            "All of it or nothing; exit code 2 with every problem when the folder cannot be taken."
        })
final class ImportCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(
            names = "--take-shop",
            description = "takes files of the shop (people, stands, stock) from the folder where they differ")
    private boolean takeShop;

    ImportCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        NeededFolder.isThere(place.folder());
        try (OpenShop shop = OpenShop.open(data.folder(), surroundings.clock(), place.now())) {
            Imported imported = shop.read(place.folder(), takeShop);
            imported.problems()
                    .forEach(p -> (imported.taken() ? surroundings.out() : surroundings.err()).println(p.sentence()));
            (imported.taken() ? surroundings.out() : surroundings.err()).println(imported.sentence());
            return imported.taken() ? ExitCode.DONE : ExitCode.BAD_INPUT;
        }
    }
}
