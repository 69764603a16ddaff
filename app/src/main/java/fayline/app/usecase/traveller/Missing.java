package fayline.app.usecase.traveller;

import fayline.flow.project.Definition;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a step should have in the record before its hands leave, and has not: every ply, the lots, a weighed cup of every system, and the
 * readings and photos that its recipe has written down.
 */
public final class Missing {
    /** The air is that of a reading so long ago at most. Common practice, no source. */
    private static final Duration FRESH_AIR = Duration.ofHours(4);

    private final Definition definition;
    private final StepResult step;
    private final StepAsks asks;
    private final StepMade made;
    private final RecordState state;
    private final Map<String, String> found = new LinkedHashMap<>();

    private Missing(Definition definition, StepResult step, RecordState state) {
        this.definition = definition;
        this.step = step;
        this.asks = StepAsks.of(definition, step);
        this.made = state.made().step(step.id()).current();
        this.state = state;
    }

    /**
     * One thing.
     *
     * @param key its word in a form
     * @param what what it is
     */
    public record One(String key, String what) {}

    /** What is missing of a step at a moment, in the order of the work. */
    public static List<One> of(Definition definition, StepResult step, RecordState state, Instant now) {
        Missing missing = new Missing(definition, step, state);
        missing.plies();
        missing.mixes();
        missing.readings(now);
        List<One> all = new ArrayList<>();
        missing.found.forEach((k, w) -> all.add(new One(k, w)));
        return List.copyOf(all);
    }

    private void plies() {
        for (StepAsks.Ply ply : asks.plies()) {
            Optional<Laid> laid = made.ply(String.valueOf(ply.number()));
            if (laid.isEmpty()) {
                found.put("ply-" + ply.number(), "ply " + ply.number() + ", " + ply.name());
            } else if (!laid.get().skipped() && laid.get().lot().isEmpty()) {
                found.put("lot-" + ply.material(), "the lot of " + StepAsks.materialName(definition, ply.material()));
            }
        }
    }

    private void mixes() {
        for (String system : asks.systems()) {
            String name = StepAsks.materialName(definition, system);
            List<Mix> cups =
                    made.mixes().stream().filter(m -> m.system().equals(system)).toList();
            if (cups.isEmpty()) {
                found.put("mix-" + system, "the cups of " + name);
            }
            if (cups.stream()
                    .anyMatch(m -> m.resinLot().isEmpty() || m.hardenerLot().isEmpty())) {
                found.put("mix-lots-" + system, "both lots of each cup of " + name);
            }
            lastOfBatch(cups).forEach((batch, mix) -> ratio(batch, mix, name));
        }
    }

    /** A cup that was mended is told again under its number: the last one counts. */
    private static Map<String, Mix> lastOfBatch(List<Mix> cups) {
        Map<String, Mix> last = new LinkedHashMap<>();
        cups.forEach(m -> last.put(m.batch().isEmpty() ? String.valueOf(m.seq()) : m.batch(), m));
        return last;
    }

    private void ratio(String batch, Mix mix, String name) {
        String key = "mix-" + mix.system() + "-" + batch;
        if (!mix.weighed() && mix.why().isEmpty()) {
            found.put(key, "the scale's readings of cup " + batch + " of " + name);
        }
        definition
                .systems()
                .find(mix.system())
                .flatMap(s -> MixVerdict.of(s, mix.resin(), mix.hardener()))
                .filter(v -> !v.inTolerance() && mix.why().isEmpty())
                .ifPresent(v -> found.put(key, "a ratio in tolerance of cup " + batch + " of " + name));
    }

    private void readings(Instant now) {
        String asked = String.join(" ", step.record()).toLowerCase(Locale.ROOT);
        StepRecord kept = state.step(step.id());
        if (step.kind() == StepKind.BAG && asked.contains("vacuum")) {
            String local = step.local();
            List<TakenReading> mine = state.readings(kept.project()).stream()
                    .filter(r -> r.kind().equals("vacuum") && (r.of().equals(local) || r.of().equals(step.id())))
                    .toList();
            if (mine.isEmpty()) {
                found.put("vacuum", "a vacuum reading");
            } else if (asked.contains("leak") && LeakDowns.of(step, mine).isEmpty()) {
                found.put("leak-down", "the leak-down: vacuum at its start and some minutes later");
            }
        }
        if (asked.contains("mass of the")) {
            Instant from = kept.started().orElse(now);
            boolean weighed = state.readings(kept.project()).stream()
                    .anyMatch(r -> r.kind().equals("mass")
                            && r.of().split("/", -1)[0].equals(step.made())
                            && !r.at().isBefore(from));
            if (!weighed) {
                found.put("mass", "the mass of the part");
            }
        }
        if (step.work().air().equals("wet") && !step.mixes().isEmpty() && airOld(now)) {
            found.put("air", "air and humidity, read in the last " + FRESH_AIR.toHours() + " h");
        }
        if (asked.contains("photo")
                && kept.notes().stream().allMatch(n -> n.photos().isEmpty())) {
            found.put("photo", "a photo");
        }
    }

    private boolean airOld(Instant now) {
        return Climates.newest(state, now)
                .filter(r -> Duration.between(r.at(), now).compareTo(FRESH_AIR) <= 0)
                .isEmpty();
    }
}
