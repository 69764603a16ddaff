package fayline.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fayline bench}, called by {@code ./bench}: measures and compares. */
@Command(
        name = "bench",
        hidden = true,
        mixinStandardHelpOptions = true,
        description = "Measures the program, or compares it with case files.")
final class BenchCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "TOPIC", description = "the bench; a wrong name lists them")
    @SuppressWarnings("NullAway.Init")
    private String topic;

    @Parameters(index = "1", arity = "0..1", paramLabel = "FOLDER", description = "the folder it works on")
    private @Nullable Path folder;

    @Option(names = "--only", split = ",", paramLabel = "NAME", description = "files or folders of cases to keep to")
    private List<String> only = List.of();

    @Option(names = "--seconds", defaultValue = "20", paramLabel = "N", description = "how long it may take")
    private int seconds;

    @Option(names = "--phones", defaultValue = "50", paramLabel = "N", description = "how many phones, for serve")
    private int phones;

    @Option(names = "--json", description = "JSON lines instead of a table")
    private boolean json;

    BenchCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        return surroundings
                .bench()
                .run(
                        new BenchOptions(topic, Optional.ofNullable(folder), only, seconds, phones, json),
                        surroundings.out(),
                        surroundings.err());
    }
}
