package fayline.flow.result;

import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.piece.Divided;
import fayline.flow.project.piece.Division;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.result.expand.Expansion;
import fayline.flow.result.expand.SetLimits;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.shop.WorkMaker;
import fayline.flow.result.state.ShopState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sets of a project's pieces in its work, and the same work in all other sets. */
final class PieceSetsOf {
    private PieceSetsOf() {}

    /** Ids of what is made of which something has begun, or about whose steps the lead has decided: sets of it stay. */
    static Set<String> settled(Definition whole, ShopState state) {
        Stream<String> begun = state.steps().keySet().stream().map(s -> s.split("/", -1)[0]);
        String project = whole.facts().id() + "/";
        Stream<String> wished = whole.shop().wishes().stream()
                .map(LeadWish::step)
                .filter(s -> s.startsWith(project))
                .map(s -> s.split("/", -1)[1]);
        return Stream.concat(begun, wished).collect(Collectors.toSet());
    }

    /** Adds them to the work that was made of a project, within its limits by the leading part's id. */
    static Work withSets(Expanded project, LearnedRates rates, Map<String, SetLimits> known, Work work) {
        Definition whole = project.whole();
        if (!Divided.isWhole(whole)) {
            return work;
        }
        Map<String, List<Limit>> limits = new LinkedHashMap<>();
        Map<String, Integer> most = new HashMap<>();
        known.forEach((part, of) -> {
            limits.put(part, of.limits());
            most.put(part, of.most());
        });
        List<Work> others = new ArrayList<>();
        for (Division d : Division.all(whole, settled(whole, project.state()), most)) {
            Definition other = Divided.of(whole, d);
            if (!other.parts().equals(project.definition().parts())) {
                others.add(other(project, other, rates, limits));
            }
        }
        return work.withSets(new SetChoice(groups(project.definition(), whole, limits), others));
    }

    /** What limits the sets of each leading part, by its id. */
    static Map<String, SetLimits> limits(Expanded project) {
        Map<String, SetLimits> limits = new LinkedHashMap<>();
        Division.leading(project.whole())
                .forEach(p -> limits.put(p.id(), SetLimits.of(project.whole(), p, project.air(), project.clocks())));
        return limits;
    }

    private static Work other(
            Expanded project, Definition definition, LearnedRates rates, Map<String, List<Limit>> limits) {
        Expansion e = ProjectCalculator.expansion(definition, project);
        Expansion learned = new Expansion(
                rates.on(definition, e.steps()), e.holds(), e.clocks(), e.tree(), e.hands(), e.findings());
        return WorkMaker.make(definition, project.state(), learned)
                .withSets(new SetChoice(groups(definition, project.whole(), limits), List.of()));
    }

    private static List<PieceGroup> groups(Definition divided, Definition whole, Map<String, List<Limit>> limits) {
        List<PieceGroup> groups = new ArrayList<>();
        for (Part part : whole.parts()) {
            if (part.sets().isEmpty()) {
                continue;
            }
            String leader = Division.leader(part);
            PieceSets asks = whole.parts().get(leader).sets().orElseThrow();
            List<PieceSet> sets = divided.parts().stream()
                    .flatMap(p -> p
                            .pieces()
                            .filter(x -> x.of().id().equals(part.id()))
                            .map(x -> new PieceSet(p.id(), x.from(), x.to()))
                            .stream())
                    .toList();
            groups.add(new PieceGroup(
                    whole.facts().id() + "/" + part.id(),
                    part.name(),
                    asks.pieces(),
                    asks.least(),
                    asks.most(),
                    asks.why(),
                    sets,
                    limits.getOrDefault(leader, List.of())));
        }
        return groups;
    }
}
