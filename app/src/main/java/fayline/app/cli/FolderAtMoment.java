package fayline.app.cli;

import fayline.app.usecase.ReadDefinition;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The definition folder and the moment that several commands take. */
final class FolderAtMoment {
    @Parameters(index = "0", paramLabel = "DIR", description = "the definition folder")
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            converter = Moment.Reader.class,
            description =
                    "the moment, as 2026-03-02T07:30 in the shop's zone; else the project's clock, else the machine's")
    private @Nullable Moment now;

    Path folder() {
        return folder;
    }

    /** The moment asked for, in the shop's zone. */
    Optional<Instant> now() throws IOException {
        return now(folder, now);
    }

    /** A moment asked for, in the zone of the shop that a folder defines. */
    static Optional<Instant> now(Path folder, @Nullable Moment now) throws IOException {
        if (now == null) {
            return Optional.empty();
        }
        ZoneId zone = ReadDefinition.from(folder)
                .definition()
                .map(d -> d.shop().zone())
                .orElse(ZoneOffset.UTC);
        return Optional.of(now.in(zone));
    }

    LookAtShop open(Surroundings s) throws IOException {
        return ReadFolder.open(folder, now(), s.clock());
    }

    ShopView look(Surroundings s) throws IOException {
        return ReadFolder.read(folder, now(), s.clock());
    }
}
