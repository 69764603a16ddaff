package fayline.app.pdf.fitcard;

import fayline.basis.units.Amount;
import fayline.basis.units.UnitSystem;
import fayline.flow.card.fit.FitCard;
import fayline.flow.project.fit.frame.FrameFitting.Body;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.flow.result.fit.frame.Pull;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.SprungShape;
import fayline.flow.result.fit.frame.SprungShape.BondPull;
import fayline.flow.result.fit.frame.SprungShape.ClampPull;
import fayline.flow.result.fit.frame.SprungShape.Fitted;
import fayline.flow.result.fit.frame.SprungShape.Strength;
import fayline.flow.result.fit.frame.SprungShape.WidthChange;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.pin.PinRelief;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts a frame told as beams into words.
 *
 * @param units the reader's units
 * @param side the side of the part, for aft and forward
 */
public record SprungWords(UnitSystem units, Side side) {
    private static final double LEAST_MM = 0.005;

    /** The frame in words. */
    public SprungSheet sheet(SprungResult r) {
        Optional<SprungShape> shape = r.shape();
        return new SprungSheet(
                r.beams().origin(),
                r.missing(),
                shape.map(SprungShape::clamps).orElse(List.of()).stream()
                        .map(this::clamp)
                        .toList(),
                shape.map(SprungShape::bonds).orElse(List.of()).stream()
                        .map(this::bond)
                        .toList(),
                shape.map(SprungShape::strength).map(SprungWords::strength).orElse(""),
                shape.map(SprungShape::fittings).orElse(List.of()).stream()
                        .map(this::pin)
                        .toList(),
                shape.map(SprungShape::widths).orElse(List.of()).stream()
                        .map(this::width)
                        .toList(),
                shape.map(SprungShape::strains).orElse(List.of()).stream()
                        .map(s -> String.format(
                                Locale.ROOT,
                                "Bending strain %s: %.2f %% at most, between %s and %s.",
                                s.when(),
                                100 * s.strain(),
                                s.from(),
                                s.to()))
                        .toList(),
                r.assumed(),
                r.findings().stream().map(f -> f.sentence(units)).toList(),
                FitCard.FRAME_CARE.stream().map(c -> c.in(units)).toList());
    }

    private SprungSheet.Clamp clamp(ClampPull c) {
        Pull p = c.pull();
        return new SprungSheet.Clamp(
                p.clamp().id(),
                p.clamp().at(),
                off(p),
                force(c.forceN(), p.clamp().way()),
                c.beyondHand());
    }

    /** How far the free part stands off at a clamp. */
    public String off(Pull p) {
        return length(Math.abs(p.offMm()), 1)
                + (p.offMm() == 0 ? "" : " " + way(p.clamp().way(), p.offMm()))
                + (p.sureMm().isPresent() ? " ± " + length(p.sureMm().getAsDouble(), 1) : "");
    }

    /** A force and the way in which it acts. */
    public String force(double newtons, FrameWay way) {
        double n = Math.abs(newtons);
        String size = Amount.newtons(n, n < 9.95 ? 1 : 0).in(units);
        return newtons == 0 ? size : size + " " + way(way, newtons);
    }

    /** Which way something goes, in the builder's words. */
    public String way(FrameWay way, double sign) {
        return switch (way) {
            case ALONG -> side.along(sign);
            case UP -> side.upward(sign);
            case OUT -> sign < 0 ? "in" : "out";
            case TURN_ALONG, TURN_UP, TURN_OUT -> way.key();
        };
    }

    private SprungSheet.Bond bond(BondPull b) {
        return new SprungSheet.Bond(b.place().id(), line(b.peelNPerMm()), line(b.shearNPerMm()), b.pulledOpen());
    }

    /** A load along a line. */
    public String line(double nPerMm) {
        return Amount.newtonsPerMm(nPerMm, 3).in(units);
    }

    /** What can be said of the strength of a bond. */
    public static String strength(Strength s) {
        String used = s.margin().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "the load is %.1f %% of it, most at %s (margin %.1f)",
                        100 / (1 + s.margin().getAsDouble()),
                        s.at(),
                        s.margin().getAsDouble())
                : "nothing pulls at it";
        return switch (s.judged()) {
            case NOT_GIVEN -> "No strength is entered: no margin is told.";
            case ASSUMED -> "Assumed strength: " + used + ". That is no verdict.";
            case PARTLY -> "One strength only: " + used + ". That is no verdict.";
            case WITHIN ->
                "Within the entered strength: " + used
                        + ". It does not replace a test of what is bonded, approved data, local rules or a licensed person.";
            case ABOVE -> "Above the entered strength: " + used + ".";
        };
    }

    private SprungSheet.Pin pin(Fitted f) {
        return new SprungSheet.Pin(
                f.fitting().name(),
                shift(f),
                length(f.leftMm(), 2)
                        + (f.sureMm().isPresent() ? " ± " + length(f.sureMm().getAsDouble(), 2) : ""),
                f.relief().filter(r -> f.inDoubt()).map(r -> relief(f, r)).orElse(""),
                f.binds());
    }

    private String shift(Fitted f) {
        List<String> parts = new ArrayList<>();
        FramePoint s = f.shift();
        part(parts, f, FrameWay.ALONG, s.xMm());
        part(parts, f, FrameWay.UP, s.yMm());
        part(parts, f, FrameWay.OUT, s.zMm());
        return parts.isEmpty() ? "stays" : String.join(", ", parts);
    }

    private void part(List<String> parts, Fitted f, FrameWay way, double mm) {
        if (way != f.fitting().axis() && Math.abs(mm) > LEAST_MM) {
            parts.add(length(Math.abs(mm), 2) + " " + way(way, mm));
        }
    }

    private String relief(Fitted f, PinRelief r) {
        String change = "At clamp " + r.clamp() + ": change the free part by "
                + Amount.signedMm(r.changeMm(), 1).in(units);
        return change
                + (f.fitting().on() == Body.CARRIER
                        ? ", or hold it off by "
                                + Amount.signedMm(0 - r.changeMm(), 1).in(units)
                        : "")
                + "; " + length(r.lateralMm(), 2) + " is left";
    }

    private SprungSheet.Width width(WidthChange w) {
        return new SprungSheet.Width(
                w.width(),
                Amount.signedMm(w.changeMm(), 1).in(units),
                w.readMm().isPresent()
                        ? Amount.signedMm(w.readMm().getAsDouble(), 1).in(units)
                        : "");
    }

    private String length(double mm, int digits) {
        return Amount.mm(mm, digits).in(units);
    }
}
