package fayline.flow.result.shop;

import fayline.flow.plan.Place;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Port;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.shop.Stand;
import fayline.flow.result.expand.Arrivals;
import fayline.flow.result.expand.Expansion;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Makes the work for the planner: the steps with the people, places, clocks and deliveries around them. Volunteers take part
 * only where the lead counts on them.
 */
public final class WorkMaker {
    /** How far ahead hours are known: sixteen weeks. */
    private static final Duration HORIZON = Duration.ofDays(16 * 7);

    private static final String VERSION = "0.1.0";

    private WorkMaker() {}

    /** The moment up to which hours of people and the air are looked at. */
    public static Instant horizon(Instant now) {
        return now.plus(HORIZON);
    }

    /**
     * Makes the work of one project.
     *
     * @param definition the definition
     * @param state what has happened
     * @param expansion its steps
     */
    public static Work make(Definition definition, ShopState state, Expansion expansion) {
        Shop shop = definition.shop();
        Instant horizon = horizon(state.now());
        Presence presence = new Presence(shop.zone(), state.now(), horizon);
        List<Worker> people = shop.people().stream()
                .filter(p -> !p.volunteer() || state.counted().contains(p.id()))
                .map(presence::worker)
                .toList();
        return new Work(
                VERSION,
                definition.hash(),
                definition.facts().revision(),
                state.now(),
                shop.zone(),
                horizon,
                (int) Math.round(shop.dustSettles().minutes()),
                people,
                places(shop),
                expansion.clocks().clocks(),
                awaited(definition, state, expansion),
                expansion.steps().stream().map(StepResult::work).toList(),
                expansion.holds(),
                wishes(
                        definition,
                        expansion.steps().stream().map(StepResult::work).toList()),
                expansion.hands(),
                SetChoice.NONE);
    }

    /** Deliveries, and what is open: of that nobody can say when it comes, so it lies beyond all hours that are known. */
    private static List<Work.Awaited> awaited(Definition definition, ShopState state, Expansion expansion) {
        List<Work.Awaited> all = new ArrayList<>(new Arrivals(definition, state.now(), expansion.tree()).awaited());
        Instant never = horizon(state.now()).plus(Duration.ofDays(1));
        state.waiting().forEach(w -> all.add(new Work.Awaited(w.id(), w.what(), never)));
        return all;
    }

    /** The wishes for steps of the project that have not begun; what has begun is as it is. */
    private static List<WorkWish> wishes(Definition definition, List<WorkStep> steps) {
        Set<String> open = steps.stream()
                .filter(s -> s.state() == WorkStep.State.TODO)
                .map(WorkStep::id)
                .collect(Collectors.toSet());
        return definition.shop().wishes().stream()
                .filter(w -> open.contains(w.step()))
                .map(w -> wish(w, definition.shop().zone()))
                .toList();
    }

    /**
     * A wish as the work holds it.
     *
     * @param w as it is written
     * @param zone the shop's zone
     */
    public static WorkWish wish(LeadWish w, ZoneId zone) {
        return new WorkWish(
                w.id(),
                w.step(),
                WorkWish.Kind.valueOf(w.kind().name()),
                w.on(),
                w.from().map(t -> t.atZone(zone).toInstant()),
                w.before().map(t -> t.atZone(zone).toInstant()),
                w.by(),
                w.why());
    }

    private static List<Place> places(Shop shop) {
        List<Place> places = new ArrayList<>();
        for (Mould m : shop.moulds()) {
            places.add(new Place(m.id(), m.name(), Place.Kind.MOULD, "", false, false));
        }
        for (Stand s : shop.stands()) {
            places.add(new Place(s.id(), s.name(), Place.Kind.STAND, s.room(), s.dust(), s.wet()));
        }
        for (Port p : shop.ports()) {
            places.add(new Place(p.id(), p.name(), Place.Kind.PORT, "", false, false));
        }
        return places;
    }
}
