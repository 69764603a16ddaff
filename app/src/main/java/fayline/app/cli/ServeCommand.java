package fayline.app.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline serve}: the pages of a shop, on this machine. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Serves the pages of a shop on this machine alone and prints their address; Ctrl-C stops it.",
            "Without a command at all, fayline serves the demonstration on a data folder of its own."
        })
final class ServeCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(names = "--port", paramLabel = "N", description = "the port; 0 for any free one")
    private @Nullable Integer port;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            converter = Moment.Reader.class,
            description = "the moment at which the shop's clock begins, as 2026-03-02T07:30 in the shop's zone")
    private @Nullable Moment now;

    @Option(names = "--demo", description = "reads the demonstration in where the folder holds no project yet")
    private boolean demo;

    @Option(names = "--no-browser", description = "opens no browser")
    private boolean noBrowser;

    @Option(names = "--train", hidden = true, description = "serves itself a few pages and ends")
    private boolean train;

    ServeCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        if (port != null && (port < 0 || port > 65535)) {
            throw new BadInputException("--port: found " + port + ", expected 0 to 65535");
        }
        Moment asked = now;
        return surroundings
                .serve()
                .run(
                        new ServeOptions(
                                demo ? data.orDemo() : data.folder(),
                                demo,
                                Optional.ofNullable(port),
                                asked == null ? Optional.empty() : Optional.of(asked::in),
                                !noBrowser && !train,
                                train),
                        surroundings);
    }
}
