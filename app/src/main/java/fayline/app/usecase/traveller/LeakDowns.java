package fayline.app.usecase.traveller;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnreadableQuantityException;
import fayline.basis.units.Vacuum;
import fayline.flow.record.TakenReading;
import fayline.flow.result.step.StepResult;
import fayline.method.vacuum.LeakDown;
import fayline.method.vacuum.LeakDownCalculator;
import fayline.method.vacuum.LeakDownResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Leak-down tests of a bag from its readings: one at the start with the source shut off, one some minutes later. Over a wet part
 * not more than 1 inHg in a minute and at least 20 inHg [tm1-1500-204-23]; of a dry test at least 22 inHg [ac43-13-1b] par. 3-4.
 */
public final class LeakDowns {
    /** The state of the first reading. */
    public static final String START = "start";

    private static final Pattern LATER = Pattern.compile("after-(\\d{1,3})-min");
    private static final double DRY_LEAST_INHG = 22;
    private static final double WET_LEAST_INHG = 20;

    private LeakDowns() {}

    /**
     * One test.
     *
     * @param start the first reading
     * @param end the second
     * @param minutes the time between them
     * @param tight whether it passed
     * @param sentence the figures and the rule
     */
    public record Test(TakenReading start, TakenReading end, int minutes, boolean tight, String sentence) {}

    /** The state of a reading some minutes after the start. */
    public static String later(int minutes) {
        return "after-" + minutes + "-min";
    }

    /** The tests that a step's readings make, in order; a start without its second reading makes none. */
    public static List<Test> of(StepResult step, List<TakenReading> readings) {
        List<Test> tests = new ArrayList<>();
        Optional<TakenReading> start = Optional.empty();
        for (TakenReading r : readings) {
            Matcher later = LATER.matcher(r.state());
            if (r.state().equals(START)) {
                start = Optional.of(r);
            } else if (later.matches() && start.isPresent()) {
                test(step, start.get(), r, Integer.parseInt(later.group(1))).ifPresent(tests::add);
                start = Optional.empty();
            }
        }
        return List.copyOf(tests);
    }

    private static Optional<Test> test(StepResult step, TakenReading start, TakenReading end, int minutes) {
        Optional<Vacuum> from = vacuum(start.value());
        Optional<Vacuum> to = vacuum(end.value());
        if (from.isEmpty() || to.isEmpty() || minutes < 1) {
            return Optional.empty();
        }
        double least = step.bag().isPresent() ? WET_LEAST_INHG : DRY_LEAST_INHG;
        LeakDownResult result = LeakDownCalculator.calculate(new LeakDown(
                from.get(),
                to.get(),
                TimeSpan.ofMinutes(minutes),
                Optional.of(Vacuum.ofInchesOfMercury(1)),
                Optional.empty(),
                Optional.of(Vacuum.ofInchesOfMercury(least)),
                Optional.empty()));
        boolean tight = result.ok().orElse(false);
        String rule = String.format(
                Locale.ROOT,
                "%s to %s in %d min, %.2f inHg a minute; allowed 1 inHg a minute and at least %.0f inHg (%s)",
                start.value(),
                end.value(),
                minutes,
                result.perMinute().map(Vacuum::inchesOfMercury).orElse(0.0),
                least,
                step.bag().isPresent() ? "US Army field repair manual" : "AC 43.13-1B par 3-4");
        return Optional.of(new Test(start, end, minutes, tight, rule));
    }

    private static Optional<Vacuum> vacuum(String typed) {
        try {
            return Optional.of(QuantityParser.parse(typed, QuantityKind.VACUUM).value());
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }
}
