package fayline.app.pdf.book;

import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.MemoryLog;
import fayline.store.file.DefinitionFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** The demonstration's record in memory, at its own moment. */
public final class SampleBooks {
    /** Its project. */
    public static final String PROJECT = "ousel-1";

    private static final Path DEMO = Path.of("../demo/ousel");

    private SampleBooks() {}

    /** An empty record. */
    public static ShopRecord none() {
        return new ShopRecord(new MemoryLog(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC));
    }

    /** The demonstration. */
    public static ShopRecord demo() throws Exception {
        ShopRecord shop =
                new ShopRecord(new MemoryLog(), Clock.fixed(Instant.parse("2026-03-03T06:05:00Z"), ZoneOffset.UTC));
        Imported imported = new ImportFolder(shop).of(DefinitionFolder.from(DEMO), ImportFolder.photosOf(DEMO), false);
        if (!imported.taken()) {
            throw new IllegalStateException(imported.problems().toString());
        }
        return shop;
    }
}
