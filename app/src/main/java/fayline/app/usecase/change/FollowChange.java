package fayline.app.usecase.change;

import fayline.app.usecase.shop.RecordedState;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.Troubles;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Part;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Disposition;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.change.ChangeResult;
import fayline.flow.result.change.ReachCalculator;
import fayline.flow.result.change.Reached;
import fayline.flow.result.change.Touch;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Works out how far a change is: what it touches now and touched when it was decided, and what is still to be done. */
public final class FollowChange {
    private FollowChange() {}

    /** A change as it is now, everything computed anew. */
    public static Followed now(ShopRecord shop, Definition d, Change change) {
        ShopState state = RecordedState.of(shop.state(), d.facts().id(), shop.now());
        return of(shop.state(), d, ProjectCalculator.calculate(d, state).steps(), state, change);
    }

    /**
     * A change against what is known of the project.
     *
     * @param record what is recorded
     * @param d the definition
     * @param steps the project's steps
     * @param state what has happened to them
     * @param change the change
     */
    public static Followed of(
            RecordState record, Definition d, List<StepResult> steps, ShopState state, Change change) {
        ChangeResult result = ReachCalculator.calculate(d, Touch.allOf(change.touches()), steps, state);
        List<Followed.Line> lines = new ArrayList<>();
        result.reached().stream()
                .filter(r -> r.group().isSettled())
                .forEach(r -> lines.add(new Followed.Line(r, change.settled(r.item()))));
        List<String> known = result.items();
        change.verdict().stream()
                .flatMap(v -> v.items().stream())
                .filter(i -> !known.contains(i))
                .flatMap(i -> gone(i).stream())
                .forEach(r -> lines.add(new Followed.Line(r, change.settled(r.item()))));
        return new Followed(change, result, lines, disposals(record, d, state.now(), change, result));
    }

    /** Something that it touched when it was decided, and that hangs on it no longer by the definition now. */
    private static Optional<Reached> gone(String item) {
        int at = item.indexOf('/');
        for (Reached.Group g : Reached.Group.values()) {
            if (at > 0 && g.key().equals(item.substring(0, at))) {
                String id = item.substring(at + 1);
                return Optional.of(new Reached(
                        g,
                        id,
                        id,
                        List.of("touched when it was decided, no longer by the definition now"),
                        Reached.Standing.NONE,
                        ""));
            }
        }
        return Optional.empty();
    }

    private static List<Followed.Disposal> disposals(
            RecordState record, Definition d, Instant now, Change change, ChangeResult result) {
        Optional<Verdict> verdict = change.verdict().filter(Verdict::accepted);
        if (verdict.isEmpty()) {
            return List.of();
        }
        Set<String> otherwise = new LinkedHashSet<>();
        verdict.get().withdraws().forEach(w -> otherwise.add(w.made()));
        otherwise.addAll(result.made());
        List<Followed.Disposal> all = new ArrayList<>();
        for (String made : otherwise) {
            Optional<Deviation> raised = record.trouble().ofMade(change.project() + "/" + made).stream()
                    .filter(x -> x.change() == change.seq())
                    .findFirst();
            if (raised.isPresent() || wasBegun(record, change, made)) {
                all.add(new Followed.Disposal(made, name(d, made), raised, open(record, now, made, raised)));
            }
        }
        return all;
    }

    private static String name(Definition d, String made) {
        return d.parts()
                .find(made)
                .map(Part::name)
                .or(() -> d.joints().find(made).map(Joint::name))
                .orElse(made);
    }

    /** Whether something was begun before the decision, or since then while its new revision was not yet in. */
    private static boolean wasBegun(RecordState record, Change change, String made) {
        Instant until =
                change.settled(Change.itemOf(made)).map(Change.Settled::at).orElse(Instant.MAX);
        String prefix = change.project() + "/" + made + "/";
        return record.steps(change.project()).values().stream()
                .filter(s -> s.step().startsWith(prefix))
                .map(StepRecord::started)
                .flatMap(Optional::stream)
                .anyMatch(t -> t.isBefore(until));
    }

    private static String open(RecordState record, Instant now, String made, Optional<Deviation> raised) {
        if (raised.isEmpty()) {
            return "begun, and nobody has said what becomes of it";
        }
        Deviation deviation = raised.get();
        if (deviation.isOpen()) {
            return deviation.isWaitingForSecond()
                    ? "its disposition waits for a second person"
                    : "its disposition is to be decided, deviation " + deviation.seq();
        }
        boolean rework = deviation
                .settled()
                .filter(s -> s.disposition() == Disposition.REWORK)
                .isPresent();
        if (!rework) {
            return "";
        }
        List<String> asked = deviation.settled().orElseThrow().rework().stream()
                .map(r -> r.what())
                .toList();
        boolean undone = Troubles.rework(record, deviation.project(), now).stream()
                .filter(p -> p.made().equals(made) && asked.contains(p.what()))
                .map(ReworkSteps.Piece::local)
                .anyMatch(l ->
                        record.step(deviation.project() + "/" + l).finished().isEmpty());
        return undone ? "its rework is not finished" : "";
    }
}
