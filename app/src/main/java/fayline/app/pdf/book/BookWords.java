package fayline.app.pdf.book;

import fayline.app.usecase.book.Book;
import fayline.app.usecase.view.SaidByName;
import fayline.basis.units.QuantityFormat;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Material;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Names, times and amounts of a book in words. Times carry their year: a book is read decades later. */
final class BookWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter ZONE = DateTimeFormatter.ofPattern("VV", Locale.ENGLISH);

    private final Definition definition;
    private final SaidByName names;
    private final QuantityFormat format;
    private final ZoneId zone;

    BookWords(Book book) {
        this.definition = book.definition();
        this.names = new SaidByName(definition, book.work());
        this.format = new QuantityFormat(definition.facts().units());
        this.zone = definition.shop().zone();
    }

    Definition definition() {
        return definition;
    }

    QuantityFormat format() {
        return format;
    }

    /** The project as people call it. */
    String project() {
        return (definition.facts().name() + " " + definition.facts().serial()).strip();
    }

    String at(Instant at) {
        ZonedDateTime t = at.atZone(zone);
        return day(at) + " " + CLOCK.format(t);
    }

    /** A day that no line end parts. */
    String day(Instant at) {
        return DAY.format(at.atZone(zone)).replace(' ', '\u00a0');
    }

    String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }

    /** What is read of a note: what was typed, or that it was erased. */
    String note(StepRecord.Note note) {
        return note.shown(zone);
    }

    String zone() {
        return ZONE.format(Instant.EPOCH.atZone(zone));
    }

    /** From and to, as far as they are recorded. */
    String when(StepRecord r) {
        if (r.started().isEmpty()) {
            return r.finished()
                    .map(f -> "ended " + at(f) + ", no start recorded")
                    .orElse("");
        }
        Instant from = r.started().get();
        return at(from)
                + r.finished()
                        .map(f -> " to " + (day(f).equals(day(from)) ? clock(f) : at(f)))
                        .orElse(", under way");
    }

    String person(String id) {
        return id.isEmpty()
                ? "the program"
                : definition.shop().people().find(id).map(p -> p.name()).orElse(id);
    }

    String people(List<String> ids) {
        return ids.stream().map(this::person).collect(Collectors.joining(", "));
    }

    String places(List<String> ids) {
        return ids.stream().map(this::place).collect(Collectors.joining(", "));
    }

    private String place(String id) {
        return definition
                .shop()
                .moulds()
                .find(id)
                .map(m -> m.name())
                .or(() -> definition.shop().stands().find(id).map(s -> s.name()))
                .or(() -> definition.shop().ports().find(id).map(p -> p.name()))
                .orElse(id);
    }

    Optional<Material> material(String id) {
        return definition.materials().find(id);
    }

    String stuff(String id) {
        return definition
                .materials()
                .find(id)
                .map(m -> m.name())
                .or(() -> definition.systems().find(id).map(s -> s.name()))
                .or(() -> definition.parts().find(id).map(p -> p.name()))
                .orElse(id);
    }

    /** What a lot is of, and which part of a system. */
    String lotOf(String lot, String component) {
        String of = definition.lots().find(lot).map(l -> stuff(l.of())).orElse("");
        return of + (component.isEmpty() || of.isEmpty() ? component : ", " + component);
    }

    /** A step by its id within the record, as {@code project/made/1/key}. */
    String step(String id) {
        return names.stepName(id);
    }

    /** A sentence of the engine with ids replaced by names. */
    String named(String sentence) {
        return names.named(sentence);
    }

    /** The step of a part that a reading names as {@code made/1/key}; the part itself where it names none. */
    String about(TakenReading r) {
        String[] bits = r.of().split("/", -1);
        return bits.length == 3
                ? step(definition.facts().id() + "/" + r.of()).replaceFirst(", [^,]*$", "")
                : "the part";
    }

    /** The shop's air as read: what was typed, where and when. */
    String air(TakenReading r) {
        StringBuilder s = new StringBuilder(r.values().getOrDefault("air", ""));
        String humidity = r.values().getOrDefault("humidity", "");
        s.append(humidity.isEmpty() ? "" : ", " + humidity);
        String surface = r.values().getOrDefault("surface", "");
        s.append(surface.isEmpty() ? "" : ", coldest surface " + surface);
        return s.append(" (").append(at(r.at())).append(')').toString();
    }

    /** An angle as a shop says it. */
    static String angle(double degrees) {
        String number = degrees == Math.rint(degrees)
                ? String.format(Locale.ROOT, "%.0f", degrees)
                : String.format(Locale.ROOT, "%.1f", degrees);
        return (degrees > 0 ? "+" : "") + (number.equals("-0") ? "0" : number) + " deg";
    }
}
