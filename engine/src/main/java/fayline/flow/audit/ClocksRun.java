package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.WorkStep.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Every clock has steps of at least a minute and rates above zero. */
final class ClocksRun implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (CureClock clock : audited.work().clocks()) {
            if (!runs(clock)) {
                found.add(new BrokenRule(
                        name(),
                        List.of(),
                        "the clock " + clock.id() + " has " + clock.rates().size() + " rates in steps of "
                                + clock.stepMin() + " min, the least of them "
                                + clock.rates().stream()
                                        .mapToDouble(r -> r)
                                        .min()
                                        .orElse(0)
                                + "; expected at least one, all above 0 and finite, in steps of at least 1 min"));
            }
        }
        return found;
    }

    static boolean runs(CureClock clock) {
        return clock.stepMin() >= 1
                && !clock.rates().isEmpty()
                && clock.rates().stream().allMatch(r -> r > 0 && Double.isFinite(r));
    }

    /** A span in words: minutes of time, or of the clock it is counted on. */
    static String tell(double minutes, Span span) {
        String number = String.format(Locale.ROOT, "%.1f", minutes).replace(".0", "");
        return span.clock().isEmpty() ? number + " min" : number + " equivalent min on " + span.clock();
    }
}
