package fayline.app.cli;

import fayline.app.usecase.open.UsualPlace;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The data folder that several commands take. */
final class DataPlace {
    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "the shop's data folder; where it is not given, the user's own for this program")
    private @Nullable Path data;

    /** The folder, or beside the user's own the one of the demonstration. */
    Path orDemo() {
        return data != null ? data : folder().resolveSibling("demo");
    }

    Path folder() {
        return data != null
                ? data
                : UsualPlace.data(
                        System.getProperty("os.name", ""), System.getProperty("user.home", ""), System.getenv());
    }
}
