package fayline.app.web.wish;

import fayline.app.usecase.view.StandingWishes;
import fayline.app.usecase.view.StandingWishes.Standing;
import fayline.app.usecase.view.StandingWishes.State;
import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhatIf.Outcome;
import fayline.app.usecase.view.WhyNot;
import fayline.app.web.frame.Sight;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.whatif.Change;
import fayline.flow.whatif.WithoutWishes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Lists what was wished, act by act, with what has become of it and what it costs. */
final class WishRows {
    /** Costs worked out for one page: each is a plan of its own. */
    private static final int MOST_COSTS = 12;

    private static final double NOTHING_H = 0.05;

    private final Sight sight;
    private final Map<String, List<Standing>> acts = new LinkedHashMap<>();
    /** Wishes that stand in the way of a step, by what is known of conflicts. */
    private final Set<String> blocking = new HashSet<>();
    /** Steps of which that is known: it is worked out only where the trouble begins. */
    private final Set<String> explained = new HashSet<>();

    WishRows(Sight sight, WhyNot whyNot) {
        this.sight = sight;
        whyNot.of(sight.view()).forEach(c -> {
            blocking.addAll(c.wishes());
            explained.add(c.step());
        });
        for (Standing s : StandingWishes.of(sight.view())) {
            acts.computeIfAbsent(s.wish().act(), a -> new ArrayList<>()).add(s);
        }
    }

    /**
     * The rows of some acts.
     *
     * @param which of the wishes; an act with one of them is listed whole
     * @param whatIf plans without them, to tell what they cost; empty not to tell
     */
    List<WishRow> of(Predicate<LeadWish> which, Optional<WhatIf> whatIf) {
        Map<String, List<Standing>> chosen = new LinkedHashMap<>();
        acts.forEach((act, all) -> {
            if (all.stream().map(Standing::wish).anyMatch(which)) {
                chosen.put(act, all);
            }
        });
        Map<String, String> costs = whatIf.map(w -> costs(w, chosen)).orElse(Map.of());
        return chosen.entrySet().stream()
                .map(e -> row(e.getValue(), costs.getOrDefault(e.getKey(), "")))
                .toList();
    }

    private WishRow row(List<Standing> act, String cost) {
        LeadWish first = act.get(0).wish();
        String by = first.by().isEmpty() ? "" : sight.personName(first.by());
        String said = first.said()
                .map(t -> sight.time().at(t.atZone(sight.time().zone()).toInstant()))
                .orElse("");
        boolean open = act.stream().anyMatch(s -> s.state() == State.NOT_PLANNED);
        boolean blocks = act.stream()
                .anyMatch(s -> s.counts() && blocking.contains(s.wish().id()));
        boolean past = act.stream().noneMatch(Standing::counts);
        return new WishRow(
                first.id(),
                lines(act),
                by.isEmpty() || said.isEmpty() ? by + said : by + ", " + said,
                first.why(),
                blocks ? WishRow.State.BLOCKS : past ? WishRow.State.PAST : WishRow.State.KEPT,
                blocks || open
                        ? blocked(blocks, act)
                        : act.stream()
                                .filter(s -> !s.counts())
                                .map(s -> "Binds nobody: " + s.passedOver() + ".")
                                .distinct()
                                .collect(Collectors.joining(" ")),
                cost);
    }

    private String blocked(boolean blocks, List<Standing> act) {
        boolean known = act.stream()
                .filter(s -> s.state() == State.NOT_PLANNED)
                .allMatch(s -> explained.contains(s.wish().step()));
        String says = blocks
                ? "Stands in the way of a step that has no place in the plan."
                : known
                        ? "The step has no place in the plan, but not for this wish."
                        : "The step has no place in the plan.";
        return says + " Weeks says what stands against what.";
    }

    private List<WishRow.Line> lines(List<Standing> act) {
        Map<String, List<Standing>> bySteps = new LinkedHashMap<>();
        act.forEach(s ->
                bySteps.computeIfAbsent(s.wish().step(), x -> new ArrayList<>()).add(s));
        return bySteps.entrySet().stream()
                .map(e -> new WishRow.Line(
                        e.getValue().stream().map(Standing::words).collect(Collectors.joining("; ")),
                        sight.stepName(e.getKey()),
                        e.getValue().get(0).counts() ? Sight.wishLink(e.getKey()) : ""))
                .toList();
    }

    /** By act: how the plan would be without it, both made by the same planner. */
    private Map<String, String> costs(WhatIf whatIf, Map<String, List<Standing>> chosen) {
        List<String> asked = chosen.entrySet().stream()
                .filter(e -> e.getValue().stream().anyMatch(Standing::counts))
                .map(Map.Entry::getKey)
                .limit(MOST_COSTS)
                .toList();
        List<List<Change>> questions = new ArrayList<>(List.of(List.of()));
        for (String act : asked) {
            questions.add(List.of(new WithoutWishes(Objects.requireNonNull(chosen.get(act)).stream()
                    .map(s -> s.wish().id())
                    .collect(Collectors.toSet()))));
        }
        List<Outcome> outcomes = whatIf.ask(questions);
        Map<String, String> costs = new HashMap<>();
        for (int i = 0; i + 1 < outcomes.size(); i++) {
            costs.put(asked.get(i), cost(outcomes.get(0), outcomes.get(i + 1)));
        }
        return costs;
    }

    private String cost(Outcome with, Outcome without) {
        long more = without.starts().keySet().stream()
                .filter(s -> !with.starts().containsKey(s))
                .count();
        if (more > 0) {
            return "Without it " + more + (more == 1 ? " more step has" : " more steps have") + " a place in the plan.";
        }
        long moved = without.moved(with);
        String others = moved == 0
                ? "no step begins at another time"
                : moved == 1 ? "1 step begins at another time" : moved + " steps begin at another time";
        return "Without it " + end(with.finish(), without.finish()) + "; " + others + "."
                + worth(with.score().total() - without.score().total());
    }

    /** What it costs by the shop's own weights, told in hours by which all might end later instead. */
    private static String worth(double hours) {
        if (Math.abs(hours) < NOTHING_H) {
            return " By the shop's weights it costs nothing.";
        }
        String h = String.format(Locale.ROOT, "%.1f h", Math.abs(hours));
        return hours > 0
                ? " By the shop's weights it costs " + h + "."
                : " By the shop's weights the plan is " + h + " better with it.";
    }

    private String end(Optional<Instant> with, Optional<Instant> without) {
        if (with.isEmpty() || without.isEmpty() || with.equals(without)) {
            return "all work ends at the same time";
        }
        Duration by = Duration.between(without.get(), with.get());
        return "all work ends " + sight.time().span(by) + (by.isNegative() ? " later" : " sooner") + ", "
                + sight.time().at(without.get());
    }
}
