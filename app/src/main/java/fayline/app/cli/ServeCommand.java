package fayline.app.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline serve}: the pages of a shop, on this machine or on the shop's network. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Serves the pages of a shop on this machine alone and prints their address; Ctrl-C stops it.",
            "With --lan it serves the shop's network, over TLS, and whoever comes must sign in.",
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

    @Option(names = "--lan", description = "serves the shop's network; whoever comes must sign in")
    private boolean lan;

    @Option(
            names = "--cert",
            paramLabel = "FILE",
            description = "with --lan: a certificate of your own (PEM) in place of one by the shop's own authority")
    private @Nullable Path certificate;

    @Option(names = "--key", paramLabel = "FILE", description = "the key of that certificate (PEM, no passphrase)")
    private @Nullable Path key;

    @Option(names = "--set-up", description = "with --lan: prints a code with which a lead sets a new password")
    private boolean setUp;

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
                                network(),
                                train),
                        surroundings);
    }

    private Optional<LanOptions> network() {
        if (!lan) {
            String alone = certificate != null ? "--cert" : key != null ? "--key" : setUp ? "--set-up" : "";
            if (!alone.isEmpty()) {
                throw new BadInputException(alone + ": found without --lan, expected beside it");
            }
            return Optional.empty();
        }
        Path pem = certificate;
        Path secret = key;
        if ((pem == null) != (secret == null)) {
            throw new BadInputException((pem == null ? "--key" : "--cert") + ": found without "
                    + (pem == null ? "--cert" : "--key") + ", expected both or neither");
        }
        return Optional.of(new LanOptions(
                pem == null || secret == null ? Optional.empty() : Optional.of(new LanOptions.Supplied(pem, secret)),
                setUp));
    }
}
