package fayline.app.usecase;

import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryLog;
import fayline.flow.record.MemoryLog;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Random;
import java.util.UUID;

/** The small project of the store's tests, in a shop at a clock that the test moves. */
final class Teasel {
    static final String PROJECT = "teasel-1";
    static final Instant START = Instant.parse("2026-03-03T07:30:00Z");

    final Moving clock = new Moving();
    final EntryLog log;
    final ShopRecord shop;

    private Teasel(EntryLog log) {
        this.log = log;
        this.shop = new ShopRecord(log, clock);
    }

    /** A shop with the project read in. */
    static Teasel readIn() {
        Teasel t = empty(new MemoryLog());
        Imported imported = new ImportFolder(t.shop).of(folder(), false);
        if (!imported.taken()) {
            throw new IllegalStateException(imported.problems().toString());
        }
        return t;
    }

    /** A shop without a project. */
    static Teasel empty(EntryLog log) {
        return new Teasel(log);
    }

    static DefinitionFolder folder() {
        try {
            return DefinitionFolder.from(path());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path path() {
        return root().resolve("store/src/test/resources/definition/teasel");
    }

    static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("store/src")) || !Files.isDirectory(at.resolve("demo"))) {
            Path above = at.getParent();
            if (above == null) {
                throw new IllegalStateException("the tests are not run within the source tree");
            }
            at = above;
        }
        return at;
    }

    static Sent by(String person) {
        return Sent.once(person);
    }

    static Sent by(String person, Random random) {
        return Sent.live(new UUID(random.nextLong(), random.nextLong()).toString(), person);
    }

    static String step(String within) {
        return PROJECT + "/" + within;
    }

    /** A clock that stands until it is moved. */
    static final class Moving extends Clock {
        private Instant now = START;

        void to(String time) {
            now = Instant.parse(time);
        }

        void plusMinutes(long minutes) {
            now = now.plusSeconds(60 * minutes);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
