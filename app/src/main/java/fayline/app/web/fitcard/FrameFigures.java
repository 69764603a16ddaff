package fayline.app.web.fitcard;

import fayline.app.pdf.fitcard.SprungSheet;
import fayline.app.pdf.fitcard.SprungWords;
import fayline.app.usecase.fit.FitLines;
import fayline.app.web.fit.FitWhys;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.why.WhyView;
import fayline.basis.units.Amount;
import fayline.basis.units.Measure;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.project.fit.frame.FrameSection.Laid;
import fayline.flow.result.fit.frame.Pull;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.SprungShape;
import fayline.flow.result.fit.frame.SprungShape.BondPull;
import fayline.flow.result.fit.frame.UsedSection;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The figures of one frame with what they rest on. */
final class FrameFigures {
    private static final String METHOD = "[liu-hu1997], beams [przemieniecki1968]";
    private static final List<String> LIMITS =
            List.of("Straight beams, small motions, no contact, no shear deflection, no buckling.");

    private final Sight sight;
    private final SprungResult result;
    private final FitLines lines;
    private final SprungWords words;
    private final SprungSheet sheet;

    FrameFigures(Sight sight, Side side, SprungResult result, FitLines lines) {
        this.sight = sight;
        this.result = result;
        this.lines = lines;
        this.words = new SprungWords(sight.format().system(), side);
        this.sheet = words.sheet(result);
    }

    /** The force of each clamp. */
    List<WhyView.Shown> clamps() {
        List<WhyView.Shown> all = new ArrayList<>();
        for (SprungSheet.Clamp c : sheet.clamps()) {
            all.add(shown(
                    "Force of clamp " + c.mark() + " at " + c.place(),
                    c.force(),
                    "-C^-1 (stands off - closes to), C the shifts at all clamps under one newton at each, the part in its rests",
                    ground(),
                    METHOD,
                    LIMITS));
        }
        return all;
    }

    /** How widths change when the clamps come off. */
    List<WhyView.Shown> release() {
        List<WhyView.Shown> all = new ArrayList<>();
        for (SprungSheet.Width w : sheet.widths()) {
            List<WhyView.Input> inputs = new ArrayList<>(ground());
            inputs.add(written("Measured between", "its two places", "widths", w.mark(), "between"));
            all.add(shown(
                    "Change of width " + w.mark(),
                    w.change(),
                    "difference of the shifts of its two places along the line between; shifts = K_assembly^-1 K_part u0, u0 the"
                            + " shape of least energy through what stands off",
                    inputs,
                    METHOD,
                    LIMITS));
        }
        return all;
    }

    /** Where latch pins and hinge points go. */
    List<WhyView.Shown> pins() {
        List<WhyView.Shown> all = new ArrayList<>();
        for (SprungShape.Fitted f : result.shape().map(SprungShape::fittings).orElse(List.of())) {
            String id = f.fitting().id();
            List<WhyView.Input> inputs = new ArrayList<>();
            inputs.add(written(
                    "Clearance",
                    Amount.mm(f.fitting().clearanceMm(), 2).in(sight.format().system()),
                    "frame",
                    "fittings",
                    id,
                    "clearance"));
            inputs.add(written("Its arm", "from " + f.fitting().at(), "frame", "fittings", id, "arm"));
            inputs.addAll(ground());
            all.add(shown(
                    "Clearance left at " + f.fitting().name(),
                    Amount.mm(f.leftMm(), 2).in(sight.format().system()),
                    "clearance - shift across its axis; shift = u + turn x arm of its place, less that of its hole;"
                            + " relief: the change at one clamp that leaves least of it, -d.g / g.g",
                    inputs,
                    METHOD,
                    LIMITS));
        }
        return all;
    }

    /** What the bond carries. */
    List<WhyView.Shown> bond() {
        List<WhyView.Shown> all = new ArrayList<>();
        List<BondPull> bonds = result.shape().map(SprungShape::bonds).orElse(List.of());
        for (BondPull b : bonds) {
            List<WhyView.Input> inputs = new ArrayList<>();
            inputs.add(new WhyView.Input(
                    "Run of bond line",
                    Amount.placeMm(b.runMm(), 0).in(sight.format().system()),
                    b.place().runMm().isPresent() ? "entered" : "computed: half the carrier's beams there",
                    false,
                    ""));
            inputs.addAll(adhesive());
            inputs.addAll(ground());
            all.add(
                    shown(
                            "Bond at " + b.place().id(),
                            "peel " + words.line(b.peelNPerMm()) + ", shear " + words.line(b.shearNPerMm()),
                            "force in the bond's springs after release over its run; springs G A/t along, E' A/t across the film;"
                                    + " against strength: load over width, strength / load - 1",
                            inputs,
                            METHOD,
                            List.of(
                                    "Even over run and width: the peaks at the ends of a bond line are not covered.",
                                    "A margin does not replace tests, approved data, local rules and a licensed person's judgement.")));
        }
        return all;
    }

    /** How stiff each section is taken to be. */
    List<WhyView.Shown> stiffness() {
        List<WhyView.Shown> all = new ArrayList<>();
        for (UsedSection s : result.sections()) {
            boolean laid = s.section().form() instanceof Laid;
            all.add(shown(
                    "Section " + s.section().id(),
                    "stretch " + rough(Measure.FORCE, s.stretchN()) + "; bending in the plane "
                            + rough(Measure.BENDING, s.bendInPlaneNMm2()) + ", out of it "
                            + rough(Measure.BENDING, s.bendOutNMm2()) + "; twist "
                            + rough(Measure.BENDING, s.twistNMm2()),
                    laid
                            ? "sum over the plies of E t and E I about the section's own axis, E = Q11 - (A12/A22) Q12 along the"
                                    + " beam"
                            : "modulus times area and second moments of its shape, or as entered",
                    List.of(section(s)),
                    laid ? "[jones1999], box [roark1989]" : "[roark1989]",
                    s.assumed()
                            ? List.of("Assumed: measure it, or hang a known weight on the frame and read how it gives.")
                            : List.of()));
        }
        return all;
    }

    /** To three digits, however large. */
    private String rough(Measure measure, double metric) {
        UnitSystem units = sight.format().system();
        return String.format(Locale.ROOT, "%.3g ", measure.in(units, metric)) + measure.symbol(units);
    }

    private WhyView.Shown shown(
            String name,
            String value,
            String formula,
            List<WhyView.Input> inputs,
            String source,
            List<String> cautions) {
        return new WhyView.Shown(name, value, formula, inputs, source, cautions, false);
    }

    /** What every figure of the frame rests on. */
    private List<WhyView.Input> ground() {
        List<WhyView.Input> all = new ArrayList<>();
        for (Pull p : result.pulls()) {
            String id = p.clamp().id();
            all.add(
                    p.clamp().station().isEmpty()
                            ? written("Stands off at " + id, words.off(p), "frame", "clamps", id, "off")
                            : new WhyView.Input(
                                    "Stands off at " + id,
                                    words.off(p),
                                    "measured: " + p.from(),
                                    false,
                                    "/fit/" + Visit.encoded(result.fit().id()) + "/read?at="
                                            + Visit.encoded(p.clamp().station())));
        }
        result.sections().forEach(s -> all.add(section(s)));
        all.add(written("Places and beams", result.beams().origin(), "frame", "places"));
        return all;
    }

    private WhyView.Input section(UsedSection s) {
        return maybe(
                written(
                        "Section " + s.section().id(),
                        s.origin(),
                        "frame",
                        "sections",
                        s.section().id()),
                s.assumed());
    }

    /** An input that says of itself whether it is assumed. */
    private static WhyView.Input maybe(WhyView.Input i, boolean assumed) {
        return new WhyView.Input(i.name(), i.value(), (assumed ? "assumed; " : "") + i.origin(), assumed, i.link());
    }

    private List<WhyView.Input> adhesive() {
        Optional<FrameAdhesive> adhesive = result.beams().adhesive();
        return adhesive.map(a -> List.of(maybe(written("Adhesive", a.origin(), "frame", "adhesive"), a.assumed())))
                .orElse(List.of());
    }

    private WhyView.Input written(String name, String value, String... keys) {
        return lines.line(keys)
                .map(l -> FitWhys.written(name, value, l))
                .orElseGet(() -> new WhyView.Input(name, value, "entered", false, ""));
    }
}
