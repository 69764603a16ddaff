package fayline.app.bench;

import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Crew;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Place;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Work of an invented shop in which, beside all else, every second skin is the opposite hand of the one before, done by the same
 * people within some days or at a price, and eight pieces are made in sets of which an oven holds three.
 */
final class InventedSets {
    private static final int PIECES = 8;
    private static final int OVEN = 3;

    private final SplittableRandom random;
    private final List<Follow> follows = new ArrayList<>();

    private InventedSets(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Invents; equal seeds give equal work. */
    static Work of(long seed, int steps) {
        return new InventedSets(seed).make(InventedShop.of(seed, steps));
    }

    private Work make(Work shop) {
        List<WorkStep> steps = new ArrayList<>();
        for (WorkStep s : shop.steps()) {
            steps.add(second(s, shop.steps()));
        }
        List<Place> places = new ArrayList<>(shop.places());
        places.add(new Place("oven", "Oven", Place.Kind.STAND, "oven room", false, false));
        Work hands = shop.withPlaces(places, shop.holds()).withHands(new OppositeHands(follows, List.of()));
        int minutes = 10 + 5 * random.nextInt(4);
        int once = 20 * random.nextInt(4);
        List<Work> all = new ArrayList<>();
        for (List<Integer> sizes : List.of(List.of(3, 3, 2), List.of(2, 2, 2, 2), List.of(2, 3, 3))) {
            all.add(inSets(hands, steps, sizes, minutes, once));
        }
        return all.get(0).withSets(new SetChoice(all.get(0).sets().groups(), all.subList(1, 3)));
    }

    /** A step of an odd skin follows the same of the one before it. */
    private WorkStep second(WorkStep s, List<WorkStep> all) {
        if (!s.made().matches("skin-[0-9]*[13579]") || s.hands().isEmpty() || random.nextInt(3) == 0) {
            return s;
        }
        int n = Integer.parseInt(s.made().substring("skin-".length()));
        String first = s.id().replace(s.made() + "/", "skin-" + (n - 1) + "/");
        if (all.stream().noneMatch(x -> x.id().equals(first))) {
            return s;
        }
        boolean soon = random.nextBoolean();
        List<Link> after = new ArrayList<>(s.after());
        after.add(new Link(
                first,
                "hands-end",
                Span.NONE,
                soon ? Optional.of(new Span(3 * 1440, "")) : Optional.empty(),
                soon ? Optional.of(new Miss("Get into it again.", 25)) : Optional.empty()));
        follows.add(
                new Follow(s.id(), first, List.of(Crew.SAME, Crew.ONE, Crew.ANY).get(random.nextInt(3))));
        return with(s, after);
    }

    private static WorkStep with(WorkStep s, List<Link> after) {
        return new WorkStep(
                s.id(),
                s.project(),
                s.made(),
                s.title(),
                s.kind(),
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.alone(),
                after,
                s.notBefore(),
                s.awaits(),
                s.watchMin(),
                s.accompanied(),
                s.state(),
                s.actual());
    }

    /** The work with its pieces in sets of some sizes. */
    static Work inSets(Work shop, List<WorkStep> others, List<Integer> sizes, int minutes, int once) {
        List<WorkStep> steps = new ArrayList<>(others);
        List<Hold> holds = new ArrayList<>(shop.holds());
        List<PieceSet> sets = new ArrayList<>();
        List<Link> last = new ArrayList<>();
        int next = 1;
        for (int n : sizes) {
            String made = "plates-" + next + "-" + (next + n - 1);
            String id = "x/" + made + "/1/";
            steps.add(step(id, made, "coat", once + minutes * n, Span.NONE, List.of()));
            steps.add(step(id, made, "warm", 20, new Span(300, "slow"), after(id + "coat")));
            steps.add(step(id, made, "finish", minutes * n, Span.NONE, after(id + "warm")));
            holds.add(new Hold("h-" + made, Place.Kind.STAND, List.of("oven"), 1, List.of(id + "warm")));
            last.addAll(after(id + "finish"));
            sets.add(new PieceSet(made, next, next + n - 1));
            next += n;
        }
        steps.add(step("x/crate/1/", "crate", "pack", 45, Span.NONE, last));
        PieceGroup group =
                new PieceGroup("x/plates", "Plates", PIECES, 2, 4, "the oven", sets, List.of(new Limit("oven", OVEN)));
        return shop.withSteps(steps, holds).withSets(new SetChoice(List.of(group), List.of()));
    }

    private static List<Link> after(String step) {
        return List.of(new Link(step, "end", Span.NONE, Optional.empty(), Optional.empty()));
    }

    private static WorkStep step(String id, String made, String key, int minutes, Span alone, List<Link> after) {
        return new WorkStep(
                id + key,
                "x",
                made,
                key,
                key,
                List.of(new CrewTime(1, minutes), new CrewTime(2, Math.max(5, minutes * 2 / 3))),
                Map.of(),
                "quiet",
                true,
                alone,
                after,
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                State.TODO,
                Actual.NONE);
    }
}
