package fayline.app.usecase.folder;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.FinishStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.project.piece.Division;
import fayline.flow.project.shop.Skill;
import fayline.flow.record.StepRecord;
import fayline.store.file.HistoryEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Does what a history tells, through the same use cases as the bench, at the events' own times. */
final class HistoryReplay {
    private final ShopRecord shop;
    private final Definition definition;
    private final FolderPhotos photos;
    private final List<InputProblem> problems = new ArrayList<>();
    private int recorded;

    HistoryReplay(ShopRecord shop, Definition definition) {
        this.shop = shop;
        this.photos = new FolderPhotos(shop.files());
        this.definition = definition;
    }

    /** Replays events in their order; what was recorded before stays as it is. */
    void replay(List<HistoryEvent> events) {
        List<String> ids = EventIds.of(project(), events);
        for (int i = 0; i < events.size(); i++) {
            HistoryEvent event = events.get(i);
            Outcome outcome = one(new Sent(ids.get(i), event.by(), false), event);
            if (outcome.kind() == Outcome.Kind.RECORDED) {
                recorded++;
                caution(event, outcome);
            } else if (outcome.kind() != Outcome.Kind.ALREADY) {
                tell(event, outcome);
            }
        }
    }

    /** What was refused, with file and line. */
    List<InputProblem> problems() {
        return Stream.concat(photos.problems().stream(), problems.stream()).toList();
    }

    /** How many events were new. */
    int recorded() {
        return recorded;
    }

    private String project() {
        return definition.facts().id();
    }

    private Outcome one(Sent sent, HistoryEvent e) {
        String step = project() + "/" + e.step();
        return switch (e.act()) {
            case START ->
                new StartStep(shop)
                        .start(
                                sent,
                                step,
                                new StartStep.Beginning(people(e), e.places(), e.whichWay(), e.said("despite")),
                                Optional.of(e.at()));
            case FINISH ->
                new FinishStep(shop)
                        .finish(
                                sent,
                                step,
                                new FinishStep.Finish(
                                        e.people().isEmpty() ? e.with() : e.people(), signed(e), e.slip(), missing(e)),
                                Optional.of(e.at()));
            case NOTE -> new NoteStep(shop).told(sent, step, e.text(), photos.of(e), Optional.of(e.at()));
            case READING ->
                new TakeReading(shop)
                        .take(
                                sent,
                                project(),
                                new Measured(
                                        e.kind(), e.of(), e.station(), e.state(), e.values(), Optional.of(e.at())));
            case CORRECT -> correct(sent, e);
            case DRAW, MIX, PLY -> new MadeReplay(shop).replay(sent, step, e);
            case VISIT, FINDING, PUT_RIGHT, SIGN_OFF -> new InspectReplay(shop, project(), photos).replay(sent, e);
            case DEVIATION, SETTLE -> new TroubleReplay(shop, project(), photos).replay(sent, e);
            case CHANGE, CHANGE_DECISION, CHANGE_LINE, CHANGE_CLOSE ->
                new ChangeReplay(shop, project()).replay(sent, e);
            case RECEIVE, MOVE, COUNT, ORDER, ARRIVAL -> new StoresReplay(shop, project()).replay(sent, e);
        };
    }

    private static List<String> people(HistoryEvent e) {
        if (!e.people().isEmpty()) {
            return e.people();
        }
        List<String> people = new ArrayList<>(List.of(e.by()));
        e.with().stream().filter(p -> !people.contains(p)).forEach(people::add);
        return people;
    }

    private static List<StepRecord.Lack> missing(HistoryEvent e) {
        return e.rows().stream()
                .map(r -> new StepRecord.Lack(r.getOrDefault("what", ""), r.getOrDefault("why", "")))
                .toList();
    }

    /** Who finishes a hold point and may sign it has signed it, where the history does not say otherwise. */
    private String signed(HistoryEvent e) {
        if (!e.signed().isEmpty() || !isHold(e.step())) {
            return e.signed();
        }
        return definition
                        .shop()
                        .people()
                        .find(e.by())
                        .filter(p -> p.skills().contains(Skill.SIGN))
                        .isPresent()
                ? e.by()
                : "";
    }

    private boolean isHold(String step) {
        String[] bits = step.split("/", -1);
        Optional<Made> part = definition
                .parts()
                .find(bits[0])
                .or(() -> Division.partOf(definition, bits[0]))
                .map(p -> p);
        Optional<Made> made =
                part.isPresent() ? part : definition.joints().find(bits[0]).map(j -> j);
        return bits.length == 3
                && made
                        .map(m -> m.make().get(Integer.parseInt(bits[1]) - 1))
                        .flatMap(m -> definition.recipes().find(m.recipe()))
                        .stream()
                        .flatMap(r -> r.steps().stream())
                        .anyMatch(s -> s.id().equals(bits[2]) && s.hold());
    }

    private Outcome correct(Sent sent, HistoryEvent e) {
        Optional<Long> named = e.corrects().flatMap(c -> shop.seqOf(EventIds.named(project(), c)));
        if (named.isEmpty()) {
            return Outcome.refused("it corrects \"" + e.corrects().orElse("") + "\", which is not recorded before it");
        }
        if (e.withdrawn()) {
            return new CorrectStep(shop).withdraw(sent, named.get(), e.text());
        }
        Mended mended = new Mended(
                e.to(),
                e.people().isEmpty() ? e.with() : e.people(),
                e.places(),
                e.whichWay(),
                e.signed(),
                e.instead(),
                e.of(),
                e.station(),
                e.state(),
                e.values());
        return new CorrectStep(shop).correct(sent, named.get(), mended, e.text());
    }

    /** Tells of what stands beside something else without effect; what a history leaves out is not told. */
    private void caution(HistoryEvent e, Outcome outcome) {
        outcome.cautions().stream()
                .filter(f -> f.source().equals("the record"))
                .forEach(f -> problems.add(new InputProblem(
                        Severity.CAUTION,
                        e.file(),
                        e.line(),
                        "history",
                        f.sentence(),
                        "one start and one finish",
                        "")));
    }

    private void tell(HistoryEvent e, Outcome outcome) {
        if (outcome.problems().isEmpty()) {
            problems.add(new InputProblem(
                    Severity.STOP,
                    e.file(),
                    e.line(),
                    "history",
                    outcome.sentence(),
                    "an event that can be recorded",
                    ""));
        }
        for (InputProblem p : outcome.problems()) {
            problems.add(new InputProblem(
                    p.severity(), e.file(), e.line(), "history." + p.key(), p.found(), p.expected(), p.suggestion()));
        }
    }
}
