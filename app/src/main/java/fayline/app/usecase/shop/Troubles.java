package fayline.app.usecase.shop;

import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Disposition;
import fayline.flow.record.trouble.Rework;
import fayline.flow.record.trouble.Settlement;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What follows from deviations for the work: what must wait, and what is to be done. */
public final class Troubles {
    private static final int LONGEST = 60;

    private Troubles() {}

    /** What is open in a project at a moment. */
    public static List<ShopState.Waiting> waiting(RecordState record, String project, Instant now) {
        return record.trouble().ofProject(project).stream()
                .filter(d -> d.isOpen() && !d.at().isAfter(now))
                .map(d -> new ShopState.Waiting(
                        "deviation-" + d.seq(),
                        (d.isWaitingForSecond()
                                        ? "the second person's word on deviation "
                                        : "a decision about deviation ")
                                + name(d),
                        d.about().substring(project.length() + 1)))
                .toList();
    }

    /** A deviation by its number and the first words of what is wrong. */
    public static String name(Deviation d) {
        String text = d.text().strip().replaceAll("\\s+", " ");
        return d.seq()
                + (text.isEmpty()
                        ? ""
                        : " (" + (text.length() > LONGEST ? text.substring(0, LONGEST) + " \u2026" : text) + ")");
    }

    /** The work that puts deviations of a project right, as decided up to a moment. */
    public static List<ReworkSteps.Piece> rework(RecordState record, String project, Instant now) {
        List<ReworkSteps.Piece> pieces = new ArrayList<>();
        Map<String, Integer> numbers = new HashMap<>();
        record.trouble().ofProject(project).stream()
                .filter(d -> !d.isOpen())
                .filter(d -> d.settled()
                        .filter(s -> s.disposition() == Disposition.REWORK && !s.at().isAfter(now))
                        .isPresent())
                .sorted(Comparator.comparingLong(d -> d.settled().orElseThrow().seq()))
                .forEach(d -> pieces(record, d, numbers, pieces));
        return List.copyOf(pieces);
    }

    private static void pieces(
            RecordState record, Deviation d, Map<String, Integer> numbers, List<ReworkSteps.Piece> pieces) {
        Settlement s = d.settled().orElseThrow();
        Optional<String> at = d.isOfStep() ? Optional.of(d.about()) : lastBegun(record, d, s.seq());
        if (at.isEmpty()) {
            return;
        }
        String[] bits = at.get().split("/", -1);
        String after = bits[3];
        for (Rework r : s.rework()) {
            int number = numbers.merge(bits[1] + "/" + bits[2], 1, Integer::sum);
            ReworkSteps.Piece piece = new ReworkSteps.Piece(
                    bits[1],
                    Integer.parseInt(bits[2]),
                    after,
                    number,
                    r.what(),
                    r.minutes().orElse(60.0),
                    kind(r.kind()));
            pieces.add(piece);
            after = ReworkSteps.KEY + number;
        }
    }

    private static StepKind kind(String key) {
        return Arrays.stream(StepKind.values())
                .filter(k -> k.key().equals(key))
                .findFirst()
                .orElse(StepKind.PREPARE);
    }

    /** The step of a part that was begun last before a decision about it. */
    private static Optional<String> lastBegun(RecordState record, Deviation d, long before) {
        return record.steps().tailMap(d.made() + "/").values().stream()
                .takeWhile(s -> s.step().startsWith(d.made() + "/"))
                .filter(s -> s.startedBy() > 0 && s.startedBy() < before)
                .max(Comparator.comparingLong(StepRecord::startedBy))
                .map(StepRecord::step);
    }
}
