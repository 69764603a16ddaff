package fayline.app.usecase.archive;

import fayline.flow.record.Entry;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import fayline.store.file.archive.DamagedArchiveException;
import fayline.store.sql.PeopleTables.KnownDevice;
import fayline.store.sql.PeopleTables.KnownPerson;
import fayline.store.sql.RecordSnapshot;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Who may enter, as the canonical JSON of a backup. Nobody stays signed in over a restore. */
final class PeopleText {
    private PeopleText() {}

    static String of(RecordSnapshot kept) {
        List<Value> people = new ArrayList<>();
        for (KnownPerson p : kept.people()) {
            people.add(Value.Fields.NONE
                    .with("person", p.person())
                    .with("name", p.name())
                    .with("role", p.role())
                    .with("password_hash", p.passwordHash())
                    .with("pin_hash", p.pinHash()));
        }
        List<Value> devices = new ArrayList<>();
        for (KnownDevice d : kept.devices()) {
            devices.add(Value.Fields.NONE
                    .with("id", d.id())
                    .with("label", d.label())
                    .with("sort", d.sort())
                    .with("person", d.person())
                    .with("token_hash", d.tokenHash())
                    .with("paired", d.paired().toString()));
        }
        return Value.Fields.NONE
                .with("people", new Value.Many(people))
                .with("devices", new Value.Many(devices))
                .canonical();
    }

    /** What a backup holds, with people where it has them. */
    static RecordSnapshot read(String text, List<Entry> entries) {
        if (text.isEmpty()) {
            return new RecordSnapshot(entries, List.of(), List.of());
        }
        try {
            Value.Fields all = Value.parse(text) instanceof Value.Fields f ? f : Value.Fields.NONE;
            return new RecordSnapshot(
                    entries,
                    each(
                            all.items("people"),
                            f -> new KnownPerson(
                                    f.text("person"),
                                    f.text("name"),
                                    f.text("role"),
                                    f.text("password_hash"),
                                    f.text("pin_hash"))),
                    each(
                            all.items("devices"),
                            f -> new KnownDevice(
                                    f.text("id"),
                                    f.text("label"),
                                    f.text("sort"),
                                    f.text("person"),
                                    f.text("token_hash"),
                                    Instant.parse(f.text("paired")))));
        } catch (NotCanonicalException | DateTimeException e) {
            throw new DamagedArchiveException("people.json in the archive: " + e.getMessage() + ".", e);
        }
    }

    private static <T> List<T> each(List<Value> items, Function<Value.Fields, T> read) {
        return items.stream()
                .map(v -> v instanceof Value.Fields f ? f : Value.Fields.NONE)
                .map(read)
                .toList();
    }
}
