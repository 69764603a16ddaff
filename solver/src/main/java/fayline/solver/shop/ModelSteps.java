package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import fayline.flow.plan.WorkStep.Span;
import fayline.solver.shop.Lags.Lag;
import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Tie;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Starts, ways and ends of the free steps, and what ties them to each other and to the fixed ones. */
final class ModelSteps {
    private final ShopCase shop;
    private final Standing standing;
    private final Range range;
    private final CpModel model;
    private final boolean hinted;
    private final StepVars[] vars;

    ModelSteps(ShopCase shop, Standing standing, Range range, CpModel model, boolean hinted) {
        this.shop = shop;
        this.standing = standing;
        this.range = range;
        this.model = model;
        this.hinted = hinted;
        vars = new StepVars[shop.items.size()];
    }

    StepVars[] build() {
        for (Item item : shop.items) {
            if (range.isFree(item.index)) {
                vars[item.index] = step(item);
            }
        }
        for (Item item : shop.items) {
            for (Tie tie : item.ties) {
                tie(item, tie);
            }
        }
        return vars;
    }

    static Domain domain(BitSet slots) {
        return Domain.fromIntervals(Slots.intervals(slots));
    }

    private StepVars step(Item item) {
        List<Mode> modes = modes(item);
        BitSet starts = new BitSet();
        BitSet handsEnds = new BitSet();
        for (Mode m : modes) {
            starts.or(m.starts());
            m.starts().stream().forEach(t -> handsEnds.set(t + m.slots()));
        }
        String name = item.step.id();
        IntVar start = model.newIntVarFromDomain(domain(starts), name);
        hint(start, standing.start(item.index));
        List<Literal> uses = new ArrayList<>();
        LinearArgument handsEnd;
        if (modes.size() == 1) {
            handsEnd = LinearExpr.affine(start, 1, modes.get(0).slots());
            uses.add(model.trueLiteral());
        } else {
            handsEnd = model.newIntVarFromDomain(domain(handsEnds), name + " hands end");
            hint((IntVar) handsEnd, standing.handsEnd(item.index));
            choose(item, modes, starts, start, handsEnd, uses);
        }
        Ended end = end(item, handsEnd, handsEnds);
        return new StepVars(item, start, handsEnd, end.at, starts, handsEnds, end.moments, modes, uses);
    }

    private void choose(
            Item item, List<Mode> modes, BitSet all, IntVar start, LinearArgument handsEnd, List<Literal> uses) {
        LinearExprBuilder sum = LinearExpr.newBuilder().add(start);
        int now = standingMode(item, modes);
        for (int i = 0; i < modes.size(); i++) {
            Mode m = modes.get(i);
            BoolVar use = model.newBoolVar(item.step.id() + " way " + i);
            if (hinted) {
                model.addHint(use, i == now);
            }
            if (!m.starts().equals(all)) {
                model.addLinearExpressionInDomain(start, domain(m.starts())).onlyEnforceIf(use);
            }
            sum.addTerm(use, m.slots());
            uses.add(use);
        }
        model.addExactlyOne(uses.toArray(Literal[]::new));
        model.addEquality(handsEnd, sum.build());
    }

    /** The ways that are left within the range, and the one in which the step stands now. */
    private List<Mode> modes(Item item) {
        List<Mode> modes = new ArrayList<>();
        for (Mode m : item.modes) {
            BitSet starts = m.starts().get(0, range.last(item.index) + 1);
            starts.clear(0, Math.max(0, range.first(item.index)));
            if (!starts.isEmpty()) {
                modes.add(new Mode(m.crew(), m.slots(), m.missed(), starts, m.stops()));
            }
        }
        int i = item.index;
        int start = standing.start(i);
        int slots = standing.handsEnd(i) - start;
        Set<String> missed = new HashSet<>(standing.of(i).missed());
        int crew = standing.people(i).size();
        if (modes.stream().noneMatch(m -> m.is(crew, slots, missed, start))) {
            BitSet one = new BitSet();
            one.set(start);
            boolean stops = item.step.interruptible() && slots >= Modes.NIGHT;
            modes.add(new Mode(
                    crew,
                    slots,
                    missed,
                    one,
                    stops && standing.of(i).stretches().size() > 1));
        }
        return modes;
    }

    private int standingMode(Item item, List<Mode> modes) {
        int i = item.index;
        Set<String> missed = new HashSet<>(standing.of(i).missed());
        int slots = standing.handsEnd(i) - standing.start(i);
        for (int m = 0; m < modes.size(); m++) {
            if (modes.get(m).is(standing.people(i).size(), slots, missed, standing.start(i))) {
                return m;
            }
        }
        return -1;
    }

    private record Ended(LinearArgument at, BitSet moments) {}

    private Ended end(Item item, LinearArgument handsEnd, BitSet handsEnds) {
        Span alone = item.step.alone();
        if (alone.minutes() <= 0) {
            return new Ended(handsEnd, handsEnds);
        }
        int exact = standing.end(item.index) - standing.handsEnd(item.index);
        List<Lag> classes = Lags.over(shop.time, alone, handsEnds);
        if (!alone.clock().isEmpty()) {
            classes = Lags.withExact(classes, standing.handsEnd(item.index), exact);
        }
        BitSet ends = new BitSet();
        classes.forEach(lag -> lag.moments().stream().forEach(t -> ends.set(t + lag.slots())));
        if (classes.size() == 1) {
            return new Ended(plus(handsEnd, classes.get(0).slots()), ends);
        }
        IntVar end = model.newIntVar(ends.nextSetBit(0), ends.length() - 1L, item.step.id() + " end");
        hint(end, standing.end(item.index));
        LinearArgument lag = lag(classes, handsEnd, standing.handsEnd(item.index), item.step.id());
        model.addEquality(end, LinearExpr.newBuilder().add(handsEnd).add(lag).build());
        return new Ended(end, ends);
    }

    /** The length of a span as an expression that follows the class of its beginning. */
    private LinearArgument lag(List<Lag> classes, LinearArgument moment, int now, String name) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        List<Literal> all = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            Lag lag = classes.get(i);
            BoolVar in = model.newBoolVar(name + " class " + i);
            if (hinted) {
                model.addHint(in, lag.moments().get(now));
            }
            model.addLinearExpressionInDomain(moment, domain(lag.moments())).onlyEnforceIf(in);
            sum.addTerm(in, lag.slots());
            all.add(in);
        }
        model.addExactlyOne(all);
        return sum.build();
    }

    static LinearArgument plus(LinearArgument of, long slots) {
        return slots == 0 ? of : LinearExpr.newBuilder().add(of).add(slots).build();
    }

    private void hint(IntVar of, int value) {
        if (hinted) {
            model.addHint(of, value);
        }
    }

    private void tie(Item later, Tie tie) {
        StepVars v = vars[later.index];
        StepVars u = tie.item().map(i -> vars[i]).orElse(null);
        if (v != null && u == null) {
            afterFixed(v, tie);
        } else if (v != null && u != null) {
            afterFree(v, u, tie);
        } else if (u != null) {
            beforeFixed(u, later, tie);
        }
    }

    private int fixedMoment(Tie tie) {
        return tie.item()
                .map(i -> standing.momentMin(i, tie.link().from()))
                .orElseGet(() -> shop.moment(tie.link(), tie.happened().orElseThrow()));
    }

    private void afterFixed(StepVars v, Tie tie) {
        int m = fixedMoment(tie);
        int opens = Math.max(m, shop.time.over(m, tie.link().opens()));
        model.addGreaterOrEqual(v.start(), Math.min(Slots.up(opens), standing.start(v.item().index)));
        tie.link().shuts().ifPresent(shut -> {
            int last = v.item().hasHands() ? Slots.down(shop.time.last(m, shut)) : Slots.up(shop.time.last(m, shut));
            model.addLessOrEqual(v.start(), last).onlyEnforceIf(kept(v, tie));
        });
    }

    /** True while none of the ways that miss the window is chosen. */
    private Literal[] kept(StepVars v, Tie tie) {
        List<Literal> not = new ArrayList<>();
        for (int i = 0; i < v.modes().size(); i++) {
            if (v.modes().get(i).missed().contains(tie.link().step())) {
                not.add(v.uses().get(i).not());
            }
        }
        return not.toArray(Literal[]::new);
    }

    private void afterFree(StepVars v, StepVars u, Tie tie) {
        String from = tie.link().from();
        LinearArgument moment = u.moment(from);
        int exactMin = standing.momentMin(u.item().index, from);
        int now = Slots.up(exactMin);
        Span opens = tie.link().opens();
        List<Lag> open = Lags.over(shop.time, opens, u.moments(from));
        if (!opens.clock().isEmpty()) {
            open = Lags.withExact(open, now, Slots.up(shop.time.over(exactMin, opens)) - now);
        }
        String name = u.item().step.id() + " to " + v.item().step.id();
        model.addGreaterOrEqual(v.start(), after(open, moment, now, name + " opens"));
        if (tie.link().shuts().isPresent()) {
            Span shut = tie.link().shuts().get();
            List<Lag> classes = Lags.shut(shop.time, shut, u.moments(from));
            if (!shut.clock().isEmpty()) {
                classes = Lags.withExact(classes, now, Slots.down(shop.time.last(exactMin, shut)) - now);
            }
            model.addLessOrEqual(v.start(), after(classes, moment, now, name + " shuts"))
                    .onlyEnforceIf(kept(v, tie));
        }
    }

    private LinearArgument after(List<Lag> classes, LinearArgument moment, int now, String name) {
        if (classes.size() == 1) {
            return plus(moment, classes.get(0).slots());
        }
        return LinearExpr.newBuilder()
                .add(moment)
                .add(lag(classes, moment, now, name))
                .build();
    }

    /** A fixed step waits: the free one before it must leave it where it stands. */
    private void beforeFixed(StepVars u, Item later, Tie tie) {
        String from = tie.link().from();
        int start = standing.startMin(later.index);
        boolean keeps = tie.link().shuts().isPresent()
                && !standing.of(later).missed().contains(tie.link().step());
        BitSet allowed = new BitSet();
        BitSet moments = u.moments(from);
        for (int t = moments.nextSetBit(0); t >= 0; t = moments.nextSetBit(t + 1)) {
            int m = t * Slots.MIN;
            boolean open = m <= start && shop.time.over(m, tie.link().opens()) <= start;
            boolean shut = keeps && shop.time.last(m, tie.link().shuts().orElseThrow()) < start;
            allowed.set(t, open && !shut);
        }
        allowed.set(Slots.up(standing.momentMin(u.item().index, from)));
        model.addLinearExpressionInDomain(u.moment(from), domain(allowed));
    }
}
