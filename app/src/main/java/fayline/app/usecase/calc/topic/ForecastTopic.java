package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.forecast.PaceForecast;
import fayline.method.forecast.PaceForecast.Finished;
import fayline.method.forecast.PaceForecastCalculator;
import fayline.method.forecast.PaceForecastResult;
import fayline.method.forecast.PaceForecastResult.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What a shop's own history says about the end. */
final class ForecastTopic {
    private static final double S_PER_H = 3600;
    private static final long SEED = 1;
    private static final String INPUTS = "estimate finished months planned [changes]";

    private ForecastTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "forecast",
                "When the work will be done by the shop's own history: booked hours against estimates, and the pace of the months.",
                List.of(
                        number("estimate", "h", "estimated hours of all work, finished work included"),
                        Term.rows("finished", "h,h", "finished work: hours estimated and hours booked"),
                        Term.list("months", "h", "hours really worked in each whole month so far"),
                        number("planned", "h", "hours a month as planned"),
                        Term.list(
                                "changes",
                                "-",
                                "what the pace of coming months is multiplied by, the next month first; the last goes on"),
                        number("rateFactor", "-", "booked over estimated hours of finished work"),
                        number("rateError", "-", "standard error of the rate factor"),
                        number("pace", "h", "hours a month, mean of the months so far"),
                        number("paceDeviation", "h", "standard deviation of one month"),
                        number("total", "h", "hours in all at the rate factor"),
                        number("remaining", "h", "hours to go at the rate factor"),
                        number("duration", "-", "months in all at factor and pace as they stand"),
                        number("durationPlanned", "-", "months in all as planned"),
                        number("durationByPace", "-", "months in all with right estimates at the real pace"),
                        number("durationByRate", "-", "months in all at the rate factor with the planned pace"),
                        Term.list("spread", "-", "months in all not exceeded with 10, 50, 80 and 90 %")),
                relations());
    }

    private static List<Relation> relations() {
        List<Relation> all = new ArrayList<>();
        all.add(figure("rateFactor", PaceForecastResult::rateFactor));
        all.add(maybe("rateError", r -> r.rateDeviation()));
        all.add(figure("pace", r -> r.paceH() * S_PER_H));
        all.add(maybe("paceDeviation", r -> r.paceDeviationH().map(h -> h * S_PER_H)));
        all.add(figure("total", r -> r.totalH() * S_PER_H));
        all.add(figure("remaining", r -> r.remainingH() * S_PER_H));
        all.add(figure("duration", PaceForecastResult::months));
        all.add(figure("durationPlanned", PaceForecastResult::monthsPlanned));
        all.add(figure("durationByPace", PaceForecastResult::monthsIfEstimatesHeld));
        all.add(figure("durationByRate", PaceForecastResult::monthsIfPaceHeld));
        all.add(giving("spread", INPUTS, k -> {
            PaceForecastResult r = result(k);
            Spread s = r.spread().orElseThrow(() -> missing(r));
            return List.of(s.p10(), s.p50(), s.p80(), s.p90());
        }));
        return all;
    }

    private static Relation figure(String name, ToDoubleFunction<PaceForecastResult> of) {
        return giving(name, INPUTS, k -> of.applyAsDouble(result(k)));
    }

    private static Relation maybe(String name, Function<PaceForecastResult, Optional<Double>> of) {
        return giving(name, INPUTS, k -> {
            PaceForecastResult r = result(k);
            return of.apply(r).orElseThrow(() -> missing(r));
        });
    }

    private static NotCoveredException missing(PaceForecastResult r) {
        return new NotCoveredException("it takes " + String.join(" and ", r.missing()));
    }

    private static PaceForecastResult result(Known k) {
        k.by(
                "R = sum booked / sum estimated; months = those so far + R x estimate left / mean pace; spread by 20 000 draws, seed 1",
                "cochran1977");
        k.caution("A forecast is a spread, not a promise; what nobody wrote down is not in it.");
        try {
            List<Finished> finished = k.rows("finished").stream()
                    .map(r -> new Finished(r.get(0) / S_PER_H, r.get(1) / S_PER_H))
                    .toList();
            return PaceForecastCalculator.calculate(new PaceForecast(
                    k.si("estimate") / S_PER_H,
                    finished,
                    k.list("months").stream().map(s -> s / S_PER_H).toList(),
                    k.si("planned") / S_PER_H,
                    k.has("changes") ? k.list("changes") : List.of(),
                    SEED));
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of(
                    "finished", String.valueOf(e.getMessage()), "positive hours and at least one finished work");
        }
    }
}
