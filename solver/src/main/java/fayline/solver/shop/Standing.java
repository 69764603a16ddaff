package fayline.solver.shop;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.solver.shop.ShopCase.Item;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A plan of a case by its items: where everything stands before a part of it is freed. Times are minutes, or slots rounded up. */
final class Standing {
    final Plan plan;
    private final ShopCase shop;
    private final PlannedStep[] planned;

    Standing(ShopCase shop, Plan plan) {
        this.shop = shop;
        this.plan = plan;
        Map<String, PlannedStep> byId = new HashMap<>();
        plan.steps().forEach(p -> byId.put(p.step(), p));
        planned = shop.items.stream().map(i -> byId.get(i.step.id())).toArray(PlannedStep[]::new);
    }

    PlannedStep of(Item item) {
        return planned[item.index];
    }

    PlannedStep of(int item) {
        return planned[item];
    }

    int startMin(int item) {
        return shop.time.floor(planned[item].start());
    }

    int handsEndMin(int item) {
        return shop.time.floor(planned[item].handsEnd());
    }

    int endMin(int item) {
        return shop.time.floor(planned[item].end());
    }

    int start(int item) {
        return Slots.up(startMin(item));
    }

    int handsEnd(int item) {
        return Slots.up(handsEndMin(item));
    }

    int end(int item) {
        return Slots.up(endMin(item));
    }

    /** The moment of an item from which spans of a link count, in minutes. */
    int momentMin(int item, String from) {
        return switch (from) {
            case "start" -> startMin(item);
            case "hands-end" -> handsEndMin(item);
            default -> endMin(item);
        };
    }

    List<String> people(int item) {
        return planned[item].people();
    }

    /** Whether somebody does other work while the step stops: finer than a model can say, so the step is left as it is. */
    boolean isInterleaved(int item) {
        PlannedStep p = planned[item];
        if (p.stretches().size() < 2) {
            return false;
        }
        return plan.steps().stream()
                .filter(q -> !q.step().equals(p.step()) && q.people().stream().anyMatch(p.people()::contains))
                .flatMap(q -> q.stretches().stream())
                .anyMatch(s -> s.from().isBefore(p.handsEnd()) && s.to().isAfter(p.start()));
    }

    /** Where a hold is, all of its planned steps being at the same places. */
    List<String> places(ShopCase.Stay stay) {
        if (stay.items().isEmpty()) {
            return List.of();
        }
        return planned[stay.items().get(0)].places().stream()
                .filter(stay.hold().candidates()::contains)
                .toList();
    }
}
