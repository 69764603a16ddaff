package fayline.app.usecase.archive;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import fayline.store.sql.DataFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A small invented record in a data folder, and what an owner of the machine may do to copies of it. */
final class KeptRecord {
    static final int ENTRIES = 40;
    private static final Instant MORNING = Instant.parse("2026-03-02T07:10:00Z");
    private static final List<String> RULES =
            List.of("entry_is_never_changed", "entry_is_never_removed", "entry_follows_the_last");

    private KeptRecord() {}

    /** Fills a folder with notes and readings and gives its entries. */
    static List<Entry> in(Path folder) {
        try (DataFolder shop = DataFolder.open(folder)) {
            for (int i = 1; i <= ENTRIES; i++) {
                shop.log().append(fresh(i));
            }
            return shop.log().read(1);
        }
    }

    private static NewEntry fresh(int i) {
        Instant at = MORNING.plusSeconds(600L * i);
        Value.Fields what = i % 3 == 0
                ? Value.Fields.NONE
                        .with("kind", "mass")
                        .with("of", "ousel-1/hull/1")
                        .with("at", at.toString())
                        .with("values", Value.Fields.NONE.with("value", "3/32 in é \u20ac \uD83D\uDE00"))
                : Value.Fields.NONE
                        .with("step", "ousel-1/hull/1/bag")
                        .with("at", at.toString())
                        .with("text", "tab\t \"quote\" line " + i + "\nend");
        EntryKind kind = i % 3 == 0 ? EntryKind.READING_TAKEN : EntryKind.STEP_NOTED;
        return new NewEntry(
                "client-" + (1000 + i),
                i % 2 == 0 ? "ada" : "bo",
                at.toString(),
                at,
                "ousel-1",
                kind.key(),
                what,
                List.of());
    }

    /** A copy of a folder's database in a folder of its own, with the rules taken off and statements run on it. */
    static Path altered(Path folder, Path copy, List<String> statements) throws IOException, SQLException {
        Files.createDirectories(copy);
        Path db = copy.resolve("shop.db");
        Files.copy(folder.resolve("shop.db"), db);
        List<String> all = new ArrayList<>();
        RULES.forEach(r -> all.add("drop trigger " + r));
        all.addAll(statements);
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + db);
                Statement s = c.createStatement()) {
            for (String one : all) {
                s.execute(one);
            }
        }
        return copy;
    }
}
