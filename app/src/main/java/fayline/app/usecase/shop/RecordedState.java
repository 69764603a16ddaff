package fayline.app.usecase.shop;

import fayline.basis.units.Entered;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.Temperature;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Climate;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Tells the calculator what the record holds of one project up to a moment. Nothing after it has any effect. */
public final class RecordedState {
    private final RecordState record;
    private final String project;
    private final Instant now;

    private RecordedState(RecordState record, String project, Instant now) {
        this.record = record;
        this.project = project;
        this.now = now;
    }

    /**
     * The state of a project.
     *
     * @param record what the entries amount to
     * @param project the project
     * @param now the moment
     */
    public static ShopState of(RecordState record, String project, Instant now) {
        RecordedState told = new RecordedState(record, project, now);
        return new ShopState(
                        now, told.steps(), told.air(), told.weighed(), Map.of(), told.notes(), told.used(), Set.of())
                .withStores(record.made(), record.stock())
                .withTroubles(
                        Stream.concat(
                                        Troubles.waiting(record, project, now).stream(),
                                        Changes.waiting(record, project, now).stream())
                                .toList(),
                        Troubles.rework(record, project, now));
    }

    private String within(String step) {
        return step.substring(project.length() + 1);
    }

    private Stream<StepRecord> stepRecords() {
        return record.steps(project).values().stream();
    }

    private Map<String, StepFacts> steps() {
        Map<String, StepFacts> facts = new HashMap<>();
        stepRecords().forEach(s -> facts(s).ifPresent(f -> facts.put(within(s.step()), f)));
        return facts;
    }

    private Optional<StepFacts> facts(StepRecord s) {
        Optional<Instant> finished = s.finished().filter(t -> !t.isAfter(now));
        // A finish without a start is counted as a moment's work: nothing else is known of it.
        Optional<Instant> started = s.started().or(() -> finished).filter(t -> !t.isAfter(now));
        return started.map(t -> new StepFacts(
                t, finished.map(f -> f.isBefore(t) ? t : f), Optional.empty(), s.people(), s.places(), 0));
    }

    private Stream<TakenReading> readings(String kind) {
        return record.readings(project).stream()
                .filter(r -> r.kind().equals(kind) && !r.at().isAfter(now))
                .sorted(Comparator.comparing(TakenReading::at));
    }

    private List<Climate.Reading> air() {
        List<Climate.Reading> air = new ArrayList<>();
        readings("climate")
                .forEach(r -> typed(r, "air", QuantityKind.TEMPERATURE).ifPresent(t -> {
                    Optional<Fraction> humidity =
                            typed(r, "humidity", QuantityKind.FRACTION).map(Entered::value);
                    Optional<Temperature> surface =
                            typed(r, "surface", QuantityKind.TEMPERATURE).map(Entered::value);
                    air.add(new Climate.Reading(
                            r.at(), r.values().getOrDefault("probe", r.of()), t.value(), humidity, surface));
                }));
        return air;
    }

    private Map<String, Entered<Mass>> weighed() {
        Map<String, Entered<Mass>> weighed = new HashMap<>();
        readings("mass")
                .filter(r -> !r.of().contains("/"))
                .forEach(r -> typed(r, "value", QuantityKind.MASS).ifPresent(m -> weighed.put(r.of(), m)));
        return weighed;
    }

    private List<ShopState.Note> notes() {
        return stepRecords()
                .flatMap(s -> s.notes().stream()
                        .filter(n -> !n.at().isAfter(now))
                        .map(n -> new ShopState.Note(within(s.step()), n.at(), n.by(), n.text())))
                .sorted(Comparator.comparing(ShopState.Note::at))
                .toList();
    }

    private List<ShopState.LotUse> used() {
        List<ShopState.LotUse> used = new ArrayList<>();
        readings("mix").forEach(r -> {
            String lot = r.values().getOrDefault("lot", "");
            if (!lot.isEmpty() && r.of().split("/", -1).length == 3) {
                typed(r, "value", QuantityKind.MASS).ifPresent(m -> used.add(new ShopState.LotUse(r.of(), lot, m)));
            }
        });
        return used;
    }

    /** A value as typed; readings were checked when taken, so one that cannot be read comes from elsewhere and is left out. */
    private static <Q extends Quantity> Optional<Entered<Q>> typed(TakenReading r, String name, QuantityKind<Q> kind) {
        String typed = r.values().getOrDefault(name, "");
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(QuantityParser.parse(typed, kind));
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }
}
