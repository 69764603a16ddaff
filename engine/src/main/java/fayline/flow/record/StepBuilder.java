package fayline.flow.record;

import fayline.flow.record.erasure.Erasure;
import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Photo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** Puts the happenings of one step together in their order. */
final class StepBuilder {
    private final String step;
    private final long from;
    private final LongFunction<Optional<Erasure>> erased;
    private Optional<Happened> start = Optional.empty();
    private Optional<Happened> finish = Optional.empty();
    private final List<StepRecord.Note> notes = new ArrayList<>();
    private final List<Conflict> conflicts = new ArrayList<>();

    /**
     * Of a step.
     *
     * @param from the entry from which on it is made anew; what was begun and finished before has no effect any more
     * @param erased how an entry was erased
     */
    StepBuilder(String step, long from, LongFunction<Optional<Erasure>> erased) {
        this.step = step;
        this.from = from;
        this.erased = erased;
    }

    void add(Happened h) {
        if (h.kind().equals(EntryKind.STEP_NOTED.key())) {
            notes.add(new StepRecord.Note(
                    h.seq(), h.at(), h.by(), h.fields().text("text"), Photo.allOf(h.fields()), erased.apply(h.seq())));
        } else if (h.seq() < from) {
            return;
        } else if (h.kind().equals(EntryKind.STEP_STARTED.key())) {
            start = first(start, h, "started");
        } else {
            finish = first(finish, h, "finished");
        }
    }

    private Optional<Happened> first(Optional<Happened> before, Happened h, String word) {
        if (before.isEmpty()) {
            return Optional.of(h);
        }
        conflicts.add(new Conflict(
                h.seq(),
                before.get().seq(),
                step,
                "The step was " + word + " twice: entry " + before.get().seq() + " holds, entry " + h.seq()
                        + " stands beside it without effect."));
        return before;
    }

    List<Conflict> conflicts() {
        return List.copyOf(conflicts);
    }

    StepRecord build() {
        List<String> people =
                new ArrayList<>(start.map(h -> h.fields().texts("people")).orElse(List.of()));
        for (String late : finish.map(h -> h.fields().texts("people")).orElse(List.of())) {
            if (!people.contains(late)) {
                people.add(late);
            }
        }
        return new StepRecord(
                step,
                start.map(Happened::at),
                finish.map(Happened::at),
                people,
                start.map(h -> h.fields().texts("places")).orElse(List.of()),
                start.map(h -> h.fields().text("which-way")).orElse(""),
                finish.map(h -> h.fields().text("signed")).orElse(""),
                finish.flatMap(h -> Slip.of(h.fields().text("slip"))),
                finish.map(h -> StepRecord.Lack.allOf(h.fields())).orElse(List.of()),
                notes,
                start.map(Happened::seq).orElse(0L),
                finish.map(Happened::seq).orElse(0L));
    }
}
