package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.frame.trial.Trial;
import fayline.method.fitup.frame.trial.TrialFit;
import fayline.method.fitup.frame.trial.TrialFitCalculator;
import fayline.method.fitup.frame.trial.TrialFitResult;
import java.util.Map;

/** The bare width to aim for from widths with the sheet trial-clamped. */
final class TrialTopic {
    private TrialTopic() {}

    static CalcTopic topic() {
        Form trial = Form.empty()
                .needs("bare", Kind.positive(), "width of the bare frame, mm")
                .needs("clamped", Kind.positive(), "width with the sheet trial-clamped, mm");
        return new FitTopic(
                "trial",
                "To which bare width a frame is set so that it has the wanted width with its sheet on.",
                Form.empty()
                        .needs("trials", Kind.list(trial.asKind(), 1), "in the order in which they were made")
                        .needs("wanted", Kind.positive(), "width wanted with the sheet bonded, mm")
                        .needs("tolerance", Kind.positive(), "how far off it may be, mm")
                        .needs("uReading", Kind.notNegative(), "standard uncertainty of one width, mm")
                        .takes(
                                "follow",
                                Kind.positive(),
                                "by how much the clamped width follows the bare one, at most 1, where it is known"),
                g -> FitAnswers.refusing(() -> answer(g)));
    }

    private static CalcAnswer answer(Given g) {
        TrialFitResult r = TrialFitCalculator.calculate(new TrialFit(
                g.objects("trials").stream()
                        .map(t -> new Trial(t.number("bare"), t.number("clamped")))
                        .toList(),
                g.number("wanted"),
                g.number("tolerance"),
                g.number("uReading"),
                g.maybe("follow")));
        ObjectNode out = Json.object()
                .put("verdict", r.verdict().name())
                .put("bareWidth", r.bareMm())
                .put("stdBareWidth", r.stdMm())
                .put("farthestBareWidth", r.farthestBareMm())
                .put("follow", r.follow())
                .put("followFrom", r.followFrom().name())
                .put("sprung", r.sprungMm())
                .put("off", r.offMm())
                .put("stdExpectedWidth", r.expectedStdMm());
        r.followStd().ifPresent(v -> out.put("stdFollow", v));
        return FitAnswers.of(
                out,
                Map.of(
                        "bareWidth", "mm",
                        "stdBareWidth", "mm",
                        "farthestBareWidth", "mm",
                        "sprung", "mm",
                        "off", "mm",
                        "stdExpectedWidth", "mm"),
                r.figures(),
                r.findings());
    }
}
