package fayline.app.web.fitcard;

import fayline.app.usecase.fit.TryFrame;
import fayline.app.usecase.fit.TryFrame.Widths;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnitSystem;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.method.fitup.frame.trial.TrialFitResult;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The trial of a sprung frame at the bench: widths bare and with the sheet clamped on, the width wanted, hence the bare width to
 * set before any adhesive. What was typed stands in the address, so the page can be kept and sent.
 */
public final class FitFramePage implements Page {
    private static final int TRIALS = 3;
    private final Sights sights;

    /** Makes the page. */
    public FitFramePage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fit/{id}/frame", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Fit fit = sight.definition()
                        .fits()
                        .find(visit.inPath("id"))
                        .orElseThrow(() -> Refusal.absent("fit of that name"));
                FitFrameView view = view(visit, sight, fit);
                if (!view.refused().isEmpty()) {
                    visit.status(422);
                }
                sights.show(
                        visit, "fitcard/frame.jte", sights.frame(visit, sight, "Frame: " + fit.name(), "/fits"), view);
            });
        });
    }

    private static FitFrameView view(Visit visit, Sight sight, Fit fit) {
        List<FitFrameView.Field> fields = fields(visit);
        boolean asked = fields.stream().anyMatch(f -> !f.typed().isEmpty());
        List<String> refused = new ArrayList<>();
        Optional<TrialFitResult> answer = asked ? answer(fields, refused) : Optional.empty();
        return new FitFrameView(
                fit.id(),
                fit.name(),
                fields,
                asked,
                refused,
                answer.map(r -> verdict(r.verdict())).orElse(""),
                answer.filter(r -> r.verdict() == TrialFitResult.Verdict.READY).isPresent(),
                answer.map(r -> facts(sight, r)).orElse(List.of()),
                answer.map(r -> r.findings().stream().map(Finding::sentence).toList())
                        .orElse(List.of()),
                answer.map(FitFramePage::why).orElse(List.of()),
                cautions(fit));
    }

    private static List<FitFrameView.Field> fields(Visit visit) {
        List<FitFrameView.Field> all = new ArrayList<>();
        all.add(field(visit, "wanted", "Width wanted, sheet bonded", true));
        all.add(field(visit, "tolerance", "May be off by", true));
        all.add(field(visit, "sure", "One width is sure to (standard uncertainty)", true));
        for (int i = 1; i <= TRIALS; i++) {
            all.add(field(visit, "bare" + i, "Trial " + i + ": bare", i == 1));
            all.add(field(visit, "clamped" + i, "Trial " + i + ": sheet clamped on", i == 1));
        }
        return all;
    }

    private static FitFrameView.Field field(Visit visit, String key, String label, boolean needed) {
        return new FitFrameView.Field(key, label, visit.query(key).strip(), needed);
    }

    private static Optional<TrialFitResult> answer(List<FitFrameView.Field> fields, List<String> refused) {
        List<Widths> trials = new ArrayList<>();
        List<Length> read = new ArrayList<>();
        for (int i = 0; i < TRIALS; i++) {
            FitFrameView.Field bare = fields.get(TRIALS + 2 * i);
            FitFrameView.Field clamped = fields.get(TRIALS + 2 * i + 1);
            if (bare.needed() || !bare.typed().isEmpty() || !clamped.typed().isEmpty()) {
                trials.add(new Widths(length(bare, refused), length(clamped, refused)));
            }
        }
        fields.subList(0, TRIALS).forEach(f -> read.add(length(f, refused)));
        return refused.isEmpty()
                ? Optional.of(TryFrame.ask(trials, read.get(0), read.get(1), read.get(2)))
                : Optional.empty();
    }

    /** A length above nothing; what is none is refused, and a millimetre stands in its place. */
    private static Length length(FitFrameView.Field field, List<String> refused) {
        try {
            Length length =
                    QuantityParser.parse(field.typed(), QuantityKind.LENGTH).value();
            if (length.metres() > 0) {
                return length;
            }
            refused.add(field.label() + ": found \"" + field.typed() + "\", expected more than nought.");
        } catch (UnreadableQuantityException e) {
            refused.add(
                    field.typed().isEmpty()
                            ? field.label() + " is empty. Fill it in."
                            : field.label() + ": " + e.getMessage() + ".");
        }
        return Length.ofMillimetres(1);
    }

    private static String verdict(TrialFitResult.Verdict verdict) {
        return switch (verdict) {
            case TRY_AGAIN -> "No adhesive yet: one more trial";
            case READY -> "Bond at this bare width";
            case READ_AGAIN -> "No adhesive yet: read the widths again";
        };
    }

    private static List<FitFrameView.Fact> facts(Sight sight, TrialFitResult r) {
        List<FitFrameView.Fact> all = new ArrayList<>();
        if (r.verdict() == TrialFitResult.Verdict.READ_AGAIN) {
            return all;
        }
        all.add(new FitFrameView.Fact("Set the bare frame to", width(sight, r.bareMm())));
        all.add(new FitFrameView.Fact(
                "Standard uncertainty of that",
                width(sight, r.stdMm())
                        + (r.followFrom() == TrialFitResult.From.ASSUMED
                                ? ", from the readings and from not knowing how the frame gives"
                                : ", from the readings")));
        if (r.followFrom() == TrialFitResult.From.ASSUMED) {
            all.add(new FitFrameView.Fact(
                    "At the farthest", width(sight, r.farthestBareMm()) + ", were the frame as soft as its sheet"));
        }
        all.add(new FitFrameView.Fact(
                "The sheet springs it", width(sight, Math.abs(r.sprungMm())) + (r.sprungMm() < 0 ? " in" : " out")));
        all.add(new FitFrameView.Fact(
                "Last trial", width(sight, Math.abs(r.offMm())) + (r.offMm() < 0 ? " too narrow" : " too wide")));
        all.add(new FitFrameView.Fact(
                "Clamped width follows the bare one",
                String.format(Locale.ROOT, "%.2f for 1", r.follow())
                        + (r.followFrom() == TrialFitResult.From.ASSUMED ? ", assumed" : ", by the trials")));
        return all;
    }

    /** A width to a tenth of a millimetre or a thou however large: a frame is set to less than its size is told to. */
    private static String width(Sight sight, double mm) {
        return sight.format().system() == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.1f mm", mm)
                : String.format(Locale.ROOT, "%.3f in", Length.ofMillimetres(mm).inches());
    }

    private static List<String> why(TrialFitResult r) {
        List<String> all = new ArrayList<>();
        for (Figure f : r.figures()) {
            all.add(f.name() + ": " + f.value() + " by " + f.formula());
            f.inputs()
                    .forEach(i -> all.add(i.name() + ": " + i.value() + ", "
                            + i.origin().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
            all.addAll(f.cautions());
            all.add("Source: " + f.source());
        }
        return all;
    }

    private static List<String> cautions(Fit fit) {
        boolean acrylic =
                fit.heat().map(FitHeat::sheet).filter(s -> s.isAcrylic()).isPresent();
        return List.of(
                "Hand tight. A clamp that needs more than 150 N pulls the part in: do not pull it in, correct the part."
                        + " Common practice, no source.",
                (acrylic ? "This sheet is acrylic, and acrylic creeps" : "Acrylic creeps")
                        + ": a sheet held bent gives way with time, and the frame drifts back towards its bare width. Set it so"
                        + " that both ends of that drift are inside.",
                "Measure at the same two marks every time, at the same temperature, latches and struts off.");
    }
}
