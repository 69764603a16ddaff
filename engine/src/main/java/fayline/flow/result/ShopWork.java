package fayline.flow.result;

import fayline.flow.plan.ChangedStep;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.Place;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.project.piece.Division;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Puts the work of several projects of one shop together, so that one plan sees all. */
public final class ShopWork {
    private ShopWork() {}

    /**
     * Combines works.
     *
     * @param results projects of one shop at one moment, in the order in which they shall come first; at least one
     * @return the work of all; where two projects have clocks of one name that run unlike, the later one's is renamed
     * @throws IllegalArgumentException if there is none, or they differ in the moment or the zone
     */
    public static Work combine(List<ProjectResult> results) {
        if (results.isEmpty()) {
            throw new IllegalArgumentException("no project to combine");
        }
        List<String> projects = results.stream().map(ProjectResult::project).toList();
        List<List<Work>> ways = List.of(List.of());
        for (ProjectResult result : results) {
            List<List<Work>> more = new ArrayList<>();
            for (Work own : result.work().divisions()) {
                for (List<Work> way : ways) {
                    List<Work> longer = new ArrayList<>(way);
                    longer.add(own);
                    more.add(longer);
                }
            }
            ways = more.stream().limit(Division.MOST).toList();
        }
        List<Work> all = ways.stream().map(way -> combine(projects, way)).toList();
        return all.get(0).withSets(new SetChoice(all.get(0).sets().groups(), all.subList(1, all.size())));
    }

    private static Work combine(List<String> projects, List<Work> works) {
        Work first = works.get(0);
        Map<String, Worker> people = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        Map<String, CureClock> clocks = new LinkedHashMap<>();
        Map<String, Work.Awaited> awaited = new LinkedHashMap<>();
        List<WorkStep> steps = new ArrayList<>();
        List<Hold> holds = new ArrayList<>();
        List<WorkWish> wishes = new ArrayList<>();
        List<PieceGroup> groups = new ArrayList<>();
        OppositeHands hands = OppositeHands.NONE;
        for (int i = 0; i < works.size(); i++) {
            Work work = works.get(i);
            if (!work.now().equals(first.now()) || !work.zone().equals(first.zone())) {
                throw new IllegalArgumentException("projects at different moments or in different zones: "
                        + projects.get(0) + " and " + projects.get(i));
            }
            Map<String, String> renamed = rename(work, projects.get(i), clocks);
            work.people().forEach(p -> people.putIfAbsent(p.id(), p));
            work.places().forEach(p -> places.putIfAbsent(p.id(), p));
            work.deliveries().forEach(d -> awaited.putIfAbsent(d.id(), d));
            work.steps().forEach(s -> steps.add(renamed.isEmpty() ? s : onClocks(s, renamed)));
            holds.addAll(work.holds());
            wishes.addAll(work.wishes());
            groups.addAll(work.sets().groups());
            hands = hands.and(work.hands());
        }
        return new Work(
                first.version(),
                works.stream().map(Work::definition).collect(Collectors.joining("+")),
                works.stream().map(Work::revision).collect(Collectors.joining("+")),
                first.now(),
                first.zone(),
                first.horizon(),
                first.dustSettlesMin(),
                List.copyOf(people.values()),
                List.copyOf(places.values()),
                List.copyOf(clocks.values()),
                List.copyOf(awaited.values()),
                steps,
                holds,
                wishes,
                hands,
                new SetChoice(groups, List.of()));
    }

    /** Takes a work's clocks in; returns the new names of those that had to be renamed. */
    private static Map<String, String> rename(Work work, String project, Map<String, CureClock> clocks) {
        Map<String, String> renamed = new LinkedHashMap<>();
        for (CureClock c : work.clocks()) {
            CureClock known = clocks.get(c.id());
            if (known == null) {
                clocks.put(c.id(), c);
            } else if (!known.equals(c)) {
                String id = project + ":" + c.id();
                clocks.put(id, new CureClock(id, c.from(), c.stepMin(), c.rates()));
                renamed.put(c.id(), id);
            }
        }
        return renamed;
    }

    private static WorkStep onClocks(WorkStep s, Map<String, String> names) {
        List<WorkStep.Link> after = s.after().stream()
                .map(l -> new WorkStep.Link(
                        l.step(), l.from(), on(l.opens(), names), l.shuts().map(x -> on(x, names)), l.miss()))
                .toList();
        return new ChangedStep(s).alone(on(s.alone(), names)).after(after).step();
    }

    private static WorkStep.Span on(WorkStep.Span span, Map<String, String> names) {
        return new WorkStep.Span(span.minutes(), names.getOrDefault(span.clock(), span.clock()));
    }
}
