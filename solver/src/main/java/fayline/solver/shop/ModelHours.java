package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.project.shop.PlanWeights;
import java.time.Duration;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;

/**
 * Idle people and late evenings as far as a model of crews by number can say them. A step whose hands are done within the coming
 * fortnight gives work to people who are in anyway: that counts by the person-hours that its best crew needs. Hands in the evening
 * count by the slots in which somebody is in, a stop over the night left out. Who it is, and a step of which a part lies within the
 * fortnight, are left to the score of the plan that is made of a solution.
 */
final class ModelHours {
    private static final Duration FORTNIGHT = Duration.ofDays(14);
    /** Evenings are told apart by so many slots: a quarter of an hour. */
    private static final int CLASS = 3;

    private final ShopCase shop;
    private final Standing standing;
    private final CpModel model;
    private final boolean hinted;
    private final double scale;
    private final int fortnight;
    private final int[] evening;

    /**
     * Of a case.
     *
     * @param scale parts of an hour's worth that are told apart
     */
    ModelHours(ShopCase shop, Standing standing, CpModel model, boolean hinted, double scale) {
        this.shop = shop;
        this.standing = standing;
        this.model = model;
        this.hinted = hinted;
        this.scale = scale;
        fortnight = Slots.down(shop.time.floor(shop.work.now().plus(FORTNIGHT)));
        evening = evening(shop);
    }

    /** How many slots of the evening with somebody in lie before each. */
    private static int[] evening(ShopCase shop) {
        LocalTime from = shop.goal.weights().eveningFrom();
        int[] before = new int[shop.slots.last + 2];
        for (int t = 0; t <= shop.slots.last; t++) {
            boolean late = shop.slots.heads(t) > 0
                    && !shop.time
                            .at(t * Slots.MIN)
                            .atZone(shop.work.zone())
                            .toLocalTime()
                            .isBefore(from);
            before[t + 1] = before[t] + (late ? 1 : 0);
        }
        return before;
    }

    void add(StepVars v, PlanWeights w, LinearExprBuilder sum) {
        if (v.item().hasHands() && w.idle() > 0 && shop.slots.last >= fortnight) {
            idle(v, w.idle(), sum);
        }
        for (int i = 0; i < v.modes().size() && w.evening() > 0; i++) {
            evening(v, i, w.evening(), sum);
        }
    }

    private void idle(StepVars v, double weight, LinearExprBuilder sum) {
        boolean always = v.handsEnds().length() - 1 <= fortnight;
        boolean never = v.handsEnds().nextSetBit(0) > fortnight;
        double hours = v.item().step.hands().stream()
                        .mapToInt((CrewTime h) -> h.people() * h.minutes())
                        .min()
                        .orElse(0)
                / 60.0;
        long worth = Math.round(scale * weight * hours);
        if (always || never || worth == 0) {
            return;
        }
        BoolVar within = model.newBoolVar(v.item().step.id() + " within the fortnight");
        if (hinted) {
            model.addHint(within, standing.handsEnd(v.item().index) <= fortnight);
        }
        model.addLessOrEqual(v.handsEnd(), fortnight).onlyEnforceIf(within);
        sum.addTerm(within, -worth);
    }

    private void evening(StepVars v, int mode, double weight, LinearExprBuilder sum) {
        Mode m = v.modes().get(mode);
        Map<Integer, BitSet> late = new TreeMap<>();
        m.starts().stream().forEach(t -> {
            int slots = lateSlots(t, t + m.slots());
            if (slots > 0) {
                late.computeIfAbsent((slots + CLASS - 1) / CLASS, c -> new BitSet())
                        .set(t);
            }
        });
        int now = standing.start(v.item().index);
        late.forEach((slots, starts) -> {
            BoolVar is = model.newBoolVar(v.item().step.id() + " evening " + slots);
            if (hinted) {
                model.addHint(is, starts.get(now));
            }
            BitSet others = (BitSet) v.starts().clone();
            others.andNot(starts);
            Literal use = v.uses().get(mode);
            if (others.isEmpty()) {
                model.addImplication(use, is);
            } else {
                model.addLinearExpressionInDomain(v.start(), ModelSteps.domain(others))
                        .onlyEnforceIf(new Literal[] {use, is.not()});
            }
            double hours = m.crew() * slots * CLASS * Slots.MIN / 60.0;
            sum.addTerm(is, Math.round(scale * weight * hours));
        });
    }

    private int lateSlots(int from, int to) {
        int last = evening.length - 1;
        return evening[Math.min(last, Math.max(0, to))] - evening[Math.min(last, Math.max(0, from))];
    }
}
