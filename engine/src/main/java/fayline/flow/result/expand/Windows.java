package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Alone;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.quantity.Shape;
import fayline.flow.result.step.StepWindow;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Windows and unattended times as spans. What must have cured runs on the clock of the coldest stand at which the earlier step
 * may happen, what shuts on that of the warmest. Where a data sheet lacks a state, the longest of its times is waited for and
 * the shortest shuts, and a finding says so.
 */
final class Windows {
    private final Definition definition;
    private final QuantityFormat format;
    private final Places places;
    private final HandsOn handsOn;
    private final ClockBook clocks;

    Windows(Definition definition, Places places, HandsOn handsOn, ClockBook clocks) {
        this.definition = definition;
        this.format = new QuantityFormat(definition.facts().units());
        this.places = places;
        this.handsOn = handsOn;
        this.clocks = clocks;
    }

    /** The time without people after a step. */
    Span alone(MakeNode node, RecipeStep step, List<Finding> findings) {
        return step.alone()
                .map(a -> span(node, a, false, places.coldestK(node, step), findings))
                .orElse(Span.NONE);
    }

    /** What a step waits for within its recipe. */
    List<StepWindow> inner(MakeNode node, RecipeStep step, Shape shape, String project, List<Finding> findings) {
        List<StepWindow> windows = new ArrayList<>();
        for (After after : node.after(step)) {
            Optional<RecipeStep> earlier = node.nearest(after.step()).filter(e -> !e.equals(step));
            if (earlier.isEmpty()) {
                continue;
            }
            String id = project + "/" + node.local(earlier.get().id());
            boolean named = earlier.get().id().equals(after.step());
            windows.add(
                    named
                            ? window(node, step, earlier.get(), id, after, shape, findings)
                            : plain(id, node.with().words(earlier.get().title(), new Names(definition))));
        }
        return windows;
    }

    /** A link without a window: the later step waits for the end of the earlier one. */
    static StepWindow plain(String id, String title) {
        return new StepWindow(new Link(id, "end", Span.NONE, Optional.empty(), Optional.empty()), title, "", "", "");
    }

    private StepWindow window(
            MakeNode node,
            RecipeStep step,
            RecipeStep earlier,
            String id,
            After after,
            Shape shape,
            List<Finding> findings) {
        Span opens = after.opens()
                .map(a -> span(node, a, false, places.coldestK(node, earlier), findings))
                .orElse(Span.NONE);
        Optional<Span> shuts = after.shuts().map(a -> span(node, a, true, places.warmestK(node, earlier), findings));
        Optional<Miss> miss = after.miss()
                .map(m -> new Miss(
                        node.with().words(m.does(), new Names(definition)),
                        handsOn.personMinutes(m.hands(), node, shape, node.stage(step), findings)));
        String from = switch (after.from()) {
            case START -> "start";
            case HANDS_END -> "hands-end";
            case END -> "end";
        };
        List<String> why = new ArrayList<>();
        String opensText = after.opens().map(a -> words(node, a, why)).orElse("");
        String shutsText = after.shuts().map(a -> words(node, a, why)).orElse("");
        return new StepWindow(
                new Link(id, from, opens, shuts, miss),
                node.with().words(earlier.title(), new Names(definition)),
                opensText,
                shutsText,
                String.join("; ", why));
    }

    private Span span(MakeNode node, Alone alone, boolean shuts, double warmerK, List<Finding> findings) {
        if (alone.span().isPresent()) {
            return new Span(alone.span().get().minutes(), "");
        }
        CureState state = alone.until().orElse(CureState.FULL_CURE);
        String id = node.with().value(alone.system());
        Optional<ResinSystem> system = definition.systems().find(id);
        if (system.isEmpty()) {
            findings.add(new Finding(
                    Severity.STOP,
                    node.made().id() + "/" + node.number(),
                    "There is no system " + id + " whose " + state.words() + " is waited for.",
                    "the definition"));
            return Span.NONE;
        }
        return clocks.span(system.get(), state, shuts, warmerK)
                .orElseGet(() -> instead(node, system.get(), state, shuts, warmerK, findings));
    }

    private Span instead(
            MakeNode node, ResinSystem system, CureState state, boolean shuts, double warmerK, List<Finding> findings) {
        Comparator<CureLaw> byTime = Comparator.comparing(CureLaw::time);
        Optional<CureLaw> other = List.of(CureState.values()).stream()
                .filter(s -> s != CureState.POT_LIFE)
                .flatMap(s -> clocks.law(system, s).stream())
                .reduce((a, b) -> (byTime.compare(a, b) < 0) == shuts ? a : b);
        findings.add(new Finding(
                Severity.CAUTION,
                node.made().id() + "/" + node.number(),
                "The data sheet of " + system.name() + " gives no time for " + state.words() + "; "
                        + other.map(o -> "its " + o.state().words() + " is taken instead, on the safe side.")
                                .orElse("nothing is waited for."),
                "the definition"));
        return other.flatMap(o -> clocks.span(system, o.state(), shuts, warmerK))
                .orElse(Span.NONE);
    }

    private String words(MakeNode node, Alone alone, List<String> why) {
        if (alone.span().isPresent()) {
            return format.span(alone.span().get());
        }
        CureState state = alone.until().orElse(CureState.FULL_CURE);
        String id = node.with().value(alone.system());
        Optional<ResinSystem> system = definition.systems().find(id);
        system.flatMap(s -> clocks.law(s, state))
                .ifPresent(l -> why.add(system.get().name() + ", " + state.words() + ": "
                        + format.span(new TimeSpan(l.time().seconds())) + " at "
                        + format.temperature(l.reference()) + ", " + l.rule().sentence()));
        return state.words() + " of " + system.map(ResinSystem::name).orElse(id);
    }
}
