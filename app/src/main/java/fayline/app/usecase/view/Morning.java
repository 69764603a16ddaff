package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.PlanSolver;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.PublishedPlan;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plan against which today's changes are shown: the one published last today, else the one that followed this morning
 * from what the record held when the day began. A folder read in during the day begins the day anew.
 */
final class Morning {
    private static final Duration NOTICED = Duration.ofMinutes(15);

    private final PlanSolver planner;
    private Optional<Base> known = Optional.empty();

    Morning(PlanSolver planner) {
        this.planner = planner;
    }

    private record Base(long seq, Instant at, Map<String, Times> times) {}

    private record Times(Instant start, Instant end) {}

    /**
     * What moved.
     *
     * @param told when the crew was told the plan against which that is; empty where it is this morning's
     * @param steps the moves, the soonest first
     */
    record Moves(Optional<Instant> told, List<Moved> steps) {}

    Moves moved(ShopRecord shop, Picture now) {
        Start start = start(shop, now);
        Optional<PublishedPlan> told =
                now.record().published().filter(p -> p.seq() > start.seq() && !p.at().isBefore(start.day()));
        Map<String, Times> before = told.map(Morning::times).orElseGet(() -> before(shop, now, start));
        Map<String, WorkStep> steps = new HashMap<>();
        now.work().steps().forEach(s -> steps.put(s.id(), s));
        List<Moved> moved = new ArrayList<>();
        for (Plan.PlannedStep p : now.plan().steps()) {
            WorkStep step = steps.get(p.step());
            Times was = before.get(p.step());
            if (step == null || was == null || step.state() == WorkStep.State.DONE) {
                continue;
            }
            boolean running = step.state() == WorkStep.State.RUNNING;
            Instant then = running ? was.end() : was.start();
            Instant is = running ? p.end() : p.start();
            if (Duration.between(then, is).abs().compareTo(NOTICED) >= 0) {
                moved.add(new Moved(step.id(), step.title(), madeName(now, step), running, then, is));
            }
        }
        moved.sort(Comparator.comparing(Moved::is).thenComparing(Moved::step));
        return new Moves(told.map(PublishedPlan::at), List.copyOf(moved));
    }

    private static Map<String, Times> times(PublishedPlan told) {
        Map<String, Times> times = new HashMap<>();
        told.steps().forEach(s -> times.put(s.step(), new Times(s.start(), s.end())));
        return times;
    }

    private static Map<String, Times> times(Picture picture) {
        Map<String, Times> times = new HashMap<>();
        picture.plan().steps().forEach(s -> times.put(s.step(), new Times(s.start(), s.end())));
        return Map.copyOf(times);
    }

    private static String madeName(Picture now, WorkStep step) {
        return now.project(step.project())
                .map(Picture.Seen::definition)
                .map(d -> d.parts()
                        .find(step.made())
                        .map(p -> p.name())
                        .or(() -> d.joints().find(step.made()).map(j -> j.name()))
                        .orElse(step.made()))
                .orElse(step.made());
    }

    /** Where the day begins: after which entry, at which moment, on which day. */
    private record Start(long seq, Instant at, Instant day) {}

    private static Start start(ShopRecord shop, Picture now) {
        ZoneId zone = now.work().zone();
        Instant day = now.now().atZone(zone).truncatedTo(ChronoUnit.DAYS).toInstant();
        long seq = 0;
        Instant at = day;
        for (Entry e : shop.entries(1)) {
            boolean imported = e.kind().equals(EntryKind.FOLDER_IMPORTED.key());
            if (imported || e.taken().isBefore(day)) {
                seq = e.seq();
                at = e.taken().isBefore(day) ? day : e.taken().truncatedTo(ChronoUnit.MINUTES);
            }
        }
        return new Start(seq, at, day);
    }

    private Map<String, Times> before(ShopRecord shop, Picture now, Start start) {
        long seq = start.seq();
        Instant at = start.at();
        if (known.isEmpty() || known.get().seq() != seq || !known.get().at().equals(at)) {
            Optional<Picture> base = seq == now.record().head().seq() && at.equals(now.now())
                    ? Optional.of(now)
                    : Picture.unaudited(
                            new ShopRecord(new MemoryLog(shop.entries(1).subList(0, (int) seq)), shop.clock()),
                            at,
                            planner);
            known = Optional.of(new Base(seq, at, base.map(Morning::times).orElse(Map.of())));
        }
        return known.get().times();
    }
}
