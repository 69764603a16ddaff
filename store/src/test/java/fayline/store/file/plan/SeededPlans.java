package fayline.store.file.plan;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Crew;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;

/** Seeded works and plans with every field in every state; they make no sense but as values. */
final class SeededPlans {
    private static final List<String> ZONES = List.of("Etc/UTC", "Europe/Vienna", "America/St_Johns", "Asia/Kathmandu");
    private static final List<String> TEXTS =
            List.of("", "a", "Schäfte kürzen", "=1+1", "line\nbreak", "\"quoted\", then; more", "-5", "日本", "\u0001");

    private final Random random;

    SeededPlans(long seed) {
        random = new Random(seed);
    }

    Work work() {
        return new Work(
                text(),
                text(),
                text(),
                time(),
                ZoneId.of(ZONES.get(random.nextInt(ZONES.size()))),
                time(),
                random.nextInt(300),
                list(() -> new Worker(text(), text(), Set.copyOf(list(this::text)), stretches(), stretches())),
                list(() -> new Place(text(), text(), kind(), text(), random.nextBoolean(), random.nextBoolean())),
                list(() -> new CureClock(text(), time(), random.nextInt(90), list(random::nextDouble))),
                list(() -> new Work.Awaited(text(), text(), time())),
                list(this::step),
                list(() -> new Hold(text(), kind(), list(this::text), random.nextInt(3), list(this::text))),
                list(() -> new WorkWish(
                        text(),
                        text(),
                        List.of(WorkWish.Kind.values()).get(random.nextInt(WorkWish.Kind.values().length)),
                        text(),
                        random.nextBoolean() ? Optional.of(time()) : Optional.empty(),
                        random.nextBoolean() ? Optional.of(time()) : Optional.empty(),
                        text(),
                        text())),
                new OppositeHands(
                        list(() -> new Follow(
                                text(), text(), List.of(Crew.values()).get(random.nextInt(3)))),
                        list(() -> new Taught(text(), text(), text()))),
                new SetChoice(list(this::group), List.of()));
    }

    private PieceGroup group() {
        return new PieceGroup(
                text(),
                text(),
                random.nextInt(20),
                random.nextInt(5),
                random.nextInt(9),
                text(),
                list(() -> new PieceSet(text(), random.nextInt(9), random.nextInt(9))),
                list(() -> new Limit(text(), random.nextInt(9))));
    }

    Plan plan() {
        return new Plan(
                list(() -> new PlannedStep(
                        text(),
                        time(),
                        time(),
                        time(),
                        list(this::text),
                        list(this::text),
                        stretches(),
                        list(this::text))),
                list(() -> new Plan.Unplanned(text(), text())),
                maybe(this::time));
    }

    private WorkStep step() {
        return new WorkStep(
                text(),
                text(),
                text(),
                text(),
                text(),
                list(() -> new CrewTime(random.nextInt(5), random.nextInt(600))),
                Map.of("laminate", random.nextInt(3)),
                List.of("wet", "dust", "quiet").get(random.nextInt(3)),
                random.nextBoolean(),
                span(),
                list(() -> new Link(
                        text(),
                        List.of("start", "hands-end", "end").get(random.nextInt(3)),
                        span(),
                        maybe(this::span),
                        maybe(() -> new Miss(text(), random.nextInt(90))))),
                maybe(this::time),
                list(this::text),
                list(() -> random.nextInt(90)),
                random.nextBoolean(),
                List.of(WorkStep.State.values()).get(random.nextInt(3)),
                new WorkStep.Actual(
                        maybe(this::time), maybe(this::time), maybe(this::time), list(this::text), list(this::text)));
    }

    private Span span() {
        return new Span(random.nextDouble() * 1000, random.nextBoolean() ? "" : "clock");
    }

    private Place.Kind kind() {
        return List.of(Place.Kind.values()).get(random.nextInt(3));
    }

    private List<Stretch> stretches() {
        return list(() -> new Stretch(time(), time()));
    }

    private Instant time() {
        return Instant.ofEpochSecond(1_700_000_000L / 60 * 60 + 60L * random.nextInt(3_000_000));
    }

    private String text() {
        return TEXTS.get(random.nextInt(TEXTS.size()));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private <T> List<T> list(Supplier<T> item) {
        List<T> items = new ArrayList<>();
        for (int n = random.nextInt(3); n > 0; n--) {
            items.add(item.get());
        }
        return items;
    }
}
