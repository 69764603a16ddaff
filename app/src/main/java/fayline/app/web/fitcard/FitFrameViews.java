package fayline.app.web.fitcard;

import fayline.app.pdf.fitcard.WidthWords;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.web.fit.FitSetup;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Sight;
import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.reading.WidthReading;
import fayline.flow.result.fit.frame.WidthAnswer;
import fayline.method.fitup.frame.spring.ClampLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Makes what the page of a sprung frame shows. */
final class FitFrameViews {
    private static final String WHOLE = "[1-9][0-9]{0,3}";

    private FitFrameViews() {}

    /**
     * The page.
     *
     * @param sight the shop as it is seen
     * @param fit the fit
     * @param frame what follows from its widths
     * @param asked which width, trial and state were asked for by name
     * @param typed what was refused, by field
     * @param refused why, a sentence each
     */
    static FitFrameView of(
            Sight sight,
            Fit fit,
            FrameSight frame,
            UnaryOperator<String> asked,
            Map<String, String> typed,
            List<String> refused) {
        WidthWords words = new WidthWords(sight.format(), sight::personName);
        return new FitFrameView(
                fit.id(),
                fit.name(),
                frame.widths().widths().stream()
                        .map(w -> new FitFrameView.Width(words.sheet(w), readings(sight, w)))
                        .toList(),
                entry(sight, fit, frame.widths().widths(), asked),
                typed,
                refused,
                frame.opposite().map(o -> o.fit().id()).orElse(""),
                frame.taught().stream().map(words::lesson).toList(),
                cautions(sight, fit));
    }

    private static List<FitFrameView.Reading> readings(Sight sight, WidthAnswer w) {
        List<FitFrameView.Reading> all = new ArrayList<>();
        w.trials()
                .forEach(t -> t.readings()
                        .forEach(r -> all.add(new FitFrameView.Reading(
                                r.seq(),
                                "Trial " + r.trial() + ", " + r.state().words(),
                                r.typed(),
                                sight.personName(r.by()) + (r.instrument().isEmpty() ? "" : ", " + r.instrument())))));
        return all;
    }

    private static Optional<FitFrameView.Entry> entry(
            Sight sight, Fit fit, List<WidthAnswer> widths, UnaryOperator<String> asked) {
        Optional<WidthAnswer> chosen = widths.stream()
                .filter(w -> w.width().id().equals(asked.apply("width")))
                .findFirst()
                .or(() -> widths.stream()
                        .filter(w -> w.stage() == WidthAnswer.Stage.WAIT)
                        .findFirst())
                .or(() -> widths.stream().findFirst());
        return chosen.map(w -> entry(sight, fit, w, asked));
    }

    private static FitFrameView.Entry entry(Sight sight, Fit fit, WidthAnswer w, UnaryOperator<String> asked) {
        WidthReading.State state =
                WidthReading.State.named(asked.apply("state")).orElse(w.next().state());
        int trial = asked.apply("trial").matches(WHOLE)
                ? Integer.parseInt(asked.apply("trial"))
                : w.next().trial();
        FrameWidth width = w.width();
        return new FitFrameView.Entry(
                width.id(),
                width.where(),
                trial,
                state.word(),
                state.words(),
                FitSetup.unit(sight.format().system()),
                "width-" + width.id() + "-" + trial + "-" + state.word(),
                fit.frame().widths().stream()
                        .map(x -> new Frame.Choice(x.id(), x.id() + ", " + x.where(), x.id().equals(width.id())))
                        .toList(),
                Stream.of(WidthReading.State.values())
                        .map(s -> new Frame.Choice(s.word(), s.words(), s == state))
                        .toList());
    }

    private static List<String> cautions(Sight sight, Fit fit) {
        boolean acrylic =
                fit.heat().map(FitHeat::sheet).filter(s -> s.isAcrylic()).isPresent();
        return List.of(
                sight.say(Phrase.of(
                        "Hand tight. A clamp that needs more than %s pulls the part in: do not pull it in, correct the part."
                                + " Common practice, no source.",
                        Amount.newtons(ClampLimits.USUAL.handN(), 0))),
                (acrylic ? "This sheet is acrylic, and acrylic creeps" : "Acrylic creeps")
                        + ": a sheet held bent gives way with time, and the frame drifts back towards its bare width. Set it so"
                        + " that both ends of that drift are inside.",
                "Measure at the same two marks every time, at the same temperature, latches and struts off.");
    }
}
