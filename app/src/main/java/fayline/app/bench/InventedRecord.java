package fayline.app.bench;

import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Entries of an invented shop from a seed, to measure a long record on. Of a hundred: 38 readings of the shop's air, 14
 * plies, 12 lots drawn, 9 mixes, 8 readings at steps, 8 notes, 6 sign-ins, 3 lots carried in or out of the cold, 2 corrections of notes.
 */
final class InventedRecord {
    private static final List<String> KINDS = List.of("vacuum", "temperature", "mass", "mix");
    private static final Duration SPAN = Duration.ofDays(900);
    private final SplittableRandom random;
    private final String project;
    private final List<String> steps;
    private final List<String> lots;
    private final List<String> people;
    private final Instant end;
    private long made;
    private long note;

    /**
     * Entries of a project.
     *
     * @param seed equal seeds give equal entries
     * @param project the project
     * @param steps its steps
     * @param lots lots that the stores hold
     * @param people who works there
     * @param end all of it happened in the 900 days before
     */
    InventedRecord(long seed, String project, List<String> steps, List<String> lots, List<String> people, Instant end) {
        this.random = new SplittableRandom(seed);
        this.project = project;
        this.steps = List.copyOf(steps);
        this.lots = List.copyOf(lots);
        this.people = List.copyOf(people);
        this.end = end;
    }

    /**
     * The next entry.
     *
     * @param seq the place that it will have
     */
    NewEntry next(long seq) {
        made++;
        int one = random.nextInt(100);
        if (one < 38) {
            return entry(
                    "",
                    EntryKind.READING_TAKEN,
                    reading("climate", "shop")
                            .with(
                                    "values",
                                    values("air", tenths(150, 280) + " °C").with("humidity", tenths(300, 700) + " %")));
        }
        if (one < 75) {
            return ofStep(one);
        }
        if (one < 83) {
            String kind = pick(KINDS);
            return entry(
                    project,
                    EntryKind.READING_TAKEN,
                    reading(kind, pick(steps).substring(project.length() + 1)).with("values", measured(kind)));
        }
        if (one < 89) {
            note = seq;
            return entry(
                    project,
                    EntryKind.STEP_NOTED,
                    step().with("text", "Looked at it again, all as it should be: " + made));
        }
        return beside(one);
    }

    private NewEntry ofStep(int one) {
        if (one < 52) {
            return entry(
                    project,
                    EntryKind.PLY_LAID,
                    step().with("ply", String.valueOf(1 + random.nextInt(8))).with("lot", pick(lots)));
        }
        if (one < 64) {
            return entry(
                    project, EntryKind.LOT_DRAWN, step().with("lot", pick(lots)).with("amount", tenths(5, 90) + " m2"));
        }
        return one < 73
                ? entry(
                        project,
                        EntryKind.MIX_MADE,
                        step().with("batch", String.valueOf(1 + random.nextInt(6)))
                                .with("system", "resin")
                                .with("weighed", "yes")
                                .with("resin-lot", pick(lots))
                                .with("hardener-lot", pick(lots))
                                .with("resin", tenths(500, 3000) + " g")
                                .with("hardener", tenths(150, 900) + " g"))
                : entry(
                        project,
                        EntryKind.STEP_NOTED,
                        step().with("text", "Edges dressed before the next ply: " + made));
    }

    private NewEntry beside(int one) {
        if (one < 95) {
            return entry(
                    "",
                    EntryKind.SIGNED_IN,
                    Value.Fields.NONE.with("person", pick(people)).with("way", "device"));
        }
        if (one < 98 || note == 0) {
            return entry(
                    "",
                    EntryKind.LOT_MOVED,
                    Value.Fields.NONE
                            .with("lot", pick(lots))
                            .with("at", at())
                            .with("to", random.nextBoolean() ? "cold" : "room"));
        }
        return entry(
                project,
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", note)
                        .with("why", "said better")
                        .with("with", Value.Fields.NONE.with("text", "Looked at it again by daylight: " + made)));
    }

    private NewEntry entry(String of, EntryKind kind, Value.Fields payload) {
        return NewEntry.of("invented-" + made, pick(people), end, of, kind, payload);
    }

    private Value.Fields step() {
        return Value.Fields.NONE.with("step", pick(steps)).with("at", at());
    }

    private Value.Fields reading(String kind, String of) {
        return Value.Fields.NONE.with("kind", kind).with("of", of).with("at", at());
    }

    private Value.Fields measured(String kind) {
        return switch (kind) {
            case "vacuum" -> values("value", tenths(200, 280) + " inHg");
            case "temperature" -> values("value", tenths(180, 600) + " °C");
            case "mix" -> values("value", tenths(500, 3000) + " g").with("lot", pick(lots));
            default -> values("value", tenths(5, 60) + " kg");
        };
    }

    private static Value.Fields values(String name, String typed) {
        return Value.Fields.NONE.with(name, typed);
    }

    private String tenths(int from, int to) {
        int n = from + random.nextInt(to - from);
        return n / 10 + "." + n % 10;
    }

    private String at() {
        return end.minus(Duration.ofMinutes(1 + random.nextLong(SPAN.toMinutes())))
                .toString();
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
