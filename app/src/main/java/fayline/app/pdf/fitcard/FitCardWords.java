package fayline.app.pdf.fitcard;

import fayline.app.drawing.fit.HoldDrawing;
import fayline.app.drawing.fit.HoldPicture;
import fayline.app.pdf.CardSheet.Pair;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.card.Caution;
import fayline.flow.card.fit.FitBond;
import fayline.flow.card.fit.FitCard;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.ShopHeat;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.ClockRunning;
import fayline.method.fitup.Spot;
import fayline.method.fitup.shim.ShimStack;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Puts the card of a fit into words.
 *
 * @param format the reader's units
 * @param zone the shop's zone
 * @param names the name of a person, by id
 */
public record FitCardWords(QuantityFormat format, ZoneId zone, UnaryOperator<String> names) {
    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final int HASH_SHOWN = 12;
    private static final double LEAST_FILLED_MM = 0.005;

    /**
     * A card in words and drawn.
     *
     * @param c the card
     * @param r what follows from the fit's readings
     */
    public FitSheet sheet(FitCard c, FitResult r) {
        return new FitSheet(
                c.fit(),
                path(c.fit()),
                c.name(),
                c.part(),
                c.hand() == Hand.NONE ? "" : c.hand().key(),
                facts(c),
                c.definition().replaceAll("(definition .{" + HASH_SHOWN + "}).*", "$1"),
                c.go(),
                verdict(c),
                c.stops().stream().map(this::say).toList(),
                c.reasons().stream()
                        .filter(x -> x.severity() != Severity.STOP)
                        .map(this::say)
                        .toList(),
                c.set().map(s -> s.sentence().in(format.system())).orElse(""),
                c.set()
                        .map(s -> s.atMarks().stream()
                                .map(m -> m.in(format.system()))
                                .toList())
                        .orElse(List.of()),
                c.holds().stream().map(this::hold).toList(),
                c.widths().stream().map(new WidthWords(format, names)::sheet).toList(),
                c.sprung().map(new SprungWords(format.system(), r.side())::sheet),
                c.located().map(l -> located(l, c.assumed())).orElse(List.of()),
                Stream.concat(
                                c.bond().map(this::adhesive).orElse(List.of()).stream(),
                                c.cast().map(new CastWords(format)::onCard).orElse(List.of()).stream())
                        .toList(),
                c.bond().map(this::working).orElse(List.of()),
                lastChance(c),
                HoldDrawing.of(picture(c, r)),
                c.lastChance().stream().map(this::reading).toList(),
                c.cautions().stream().map(FitCardWords::caution).toList());
    }

    private HoldPicture picture(FitCard c, FitResult r) {
        List<FitHolding.Point> points = r.fit().holding().points();
        List<HoldPicture.Hold> holds = new ArrayList<>();
        for (int i = 0; i < Math.min(points.size(), c.holds().size()); i++) {
            FitCard.Hold h = c.holds().get(i);
            String words = h.stack()
                    .map(s -> fine(s.heightMm()))
                    .or(() -> h.exactMm().isPresent()
                            ? Optional.of(fine(h.exactMm().getAsDouble()))
                            : Optional.empty())
                    .orElse("");
            holds.add(new HoldPicture.Hold(points.get(i).stop().contact(), words));
        }
        return new HoldPicture(
                c.name(),
                r.side(),
                r.outline(),
                r.drawn(),
                holds,
                c.set().map(FitCard.Setting::move),
                c.set().map(FitCard.Setting::pivot).orElse(new Spot(0, 0)));
    }

    /** The address of a fit's card within the program. */
    public static String path(String fit) {
        return "/fit/" + URLEncoder.encode(fit, StandardCharsets.UTF_8).replace("+", "%20") + "/card";
    }

    private static String verdict(FitCard c) {
        int stops = c.stops().size();
        return c.go()
                ? "Go: nothing known stops the adhesive"
                : "No go: " + (stops == 1 ? "one thing first" : stops + " things first");
    }

    private List<Pair> facts(FitCard c) {
        List<Pair> all = new ArrayList<>();
        if (!c.against().isEmpty()) {
            all.add(new Pair("Against", String.join(", ", c.against())));
        }
        String air = c.temperatureDegC().isPresent()
                ? ", at "
                        + format.temperature(
                                Temperature.ofCelsius(c.temperatureDegC().getAsDouble()))
                : "";
        all.add(new Pair(
                "Rests on", c.state().map(FitState::name).map(n -> n + air).orElse("no reading yet")));
        return all;
    }

    private FitSheet.Hold hold(FitCard.Hold h) {
        String place = String.format(
                Locale.ROOT,
                "%sat %s, %s",
                h.near().isEmpty() ? "" : "near " + h.near() + ", ",
                place(h.at().xMm()),
                place(h.at().yMm()));
        String force = h.forceN().isPresent()
                ? Amount.newtons(h.forceN().getAsDouble(), 0).in(format.system())
                : "hand tight";
        return new FitSheet.Hold(h.point(), place, shim(h), force);
    }

    private String shim(FitCard.Hold h) {
        if (h.stack().isPresent()) {
            return stack(h.stack().get());
        }
        if (h.exactMm().isEmpty()) {
            return "not known";
        }
        double exact = h.exactMm().getAsDouble();
        return exact < -LEAST_FILLED_MM ? "relieve by " + fine(-exact) : fine(exact) + ", no stock named";
    }

    private String stack(ShimStack s) {
        return s.piecesMm().isEmpty() ? "none" : s.sum(this::fine) + " = " + fine(s.heightMm());
    }

    private List<Pair> located(FitCard.Located l, List<Phrase> assumed) {
        List<Pair> all = new ArrayList<>();
        all.add(new Pair("Located by", l.scheme() + (l.stops().isEmpty() ? "" : ": " + String.join(", ", l.stops()))));
        if (l.chance().isPresent()) {
            all.add(new Pair(
                    "Every gap inside",
                    String.format(
                            Locale.ROOT,
                            "in %.0f of 100 cases; station %s is the risk",
                            Math.min(99, 100 * l.chance().getAsDouble()),
                            l.weakest())));
        } else {
            all.add(new Pair(
                    "Every gap inside",
                    "no chance is told"
                            + (l.missing().isEmpty() ? "" : ": not known " + String.join("; ", l.missing()))));
        }
        if (!assumed.isEmpty()) {
            all.add(new Pair("Assumed", Phrase.joined("; ", assumed).in(format.system())));
        }
        return all;
    }

    private List<Pair> adhesive(FitBond b) {
        List<Pair> all = new ArrayList<>();
        all.add(new Pair("Joint", b.joint().name()));
        if (!b.others().isEmpty()) {
            all.add(new Pair("Other joints of the part", String.join("; ", b.others())));
        }
        all.add(new Pair("Adhesive", b.adhesive() + ", " + toMix(b)));
        b.card()
                .ifPresent(c -> c.mixes().forEach(m -> {
                    MixList l = m.list();
                    if (l.batches() > 0) {
                        all.add(new Pair(
                                l.batches() == 1 ? "One batch" : l.batches() + " batches, each",
                                format.scaleMass(l.resin()) + " resin, " + format.scaleMass(l.hardener())
                                        + " hardener \u00b1 "
                                        + format.scaleMass(l.hardenerTolerance())
                                        + (m.lots().isEmpty() ? "" : "; lot " + String.join(", ", m.lots()))));
                    }
                }));
        all.add(new Pair(
                "Bond line",
                format.length(b.joint().bondLine()) + " thick, "
                        + format.length(b.joint().width())
                        + " wide. Set pieces of that thickness into it at every clamp; adhesive out of both edges"
                        + " along the whole length shows that it is full"));
        return all;
    }

    /** A part that is hung and not bonded has a joint whose steps mix nothing. */
    private String toMix(FitBond b) {
        return b.amounts().adhesive().kilograms() > 0
                ? format.mass(b.amounts().adhesive()) + " to mix, "
                        + format.mass(b.amounts().inJoint()) + " stays in the joint"
                : "no step of this joint mixes any";
    }

    private List<Pair> working(FitBond b) {
        List<Pair> all = new ArrayList<>();
        b.running().stream()
                .filter(c -> !c.reached())
                .forEach(c -> all.add(new Pair("Until " + c.state().words(), until(c))));
        if (!all.isEmpty() || b.state().filter(s -> s == WorkStep.State.DONE).isPresent()) {
            return all;
        }
        b.card()
                .ifPresent(c -> c.mixes().stream()
                        .map(m -> m.list())
                        .filter(l -> l.batches() > 0)
                        .forEach(l -> {
                            all.add(new Pair("Use each batch up within", span(l.usable()) + " of mixing"));
                            l.resinLife().ifPresent(t -> all.add(new Pair("Workable in the joint", span(t))));
                            all.add(new Pair("Clamps closed, last readings taken", span(l.tight()) + " after mixing"));
                        }));
        return all;
    }

    private String until(ClockRunning c) {
        return c.remaining().map(r -> span(r) + " left when this was made").orElse("time left not within sight")
                + c.at().map(t -> ", " + AT.format(t.atZone(zone))).orElse("");
    }

    private String lastChance(FitCard c) {
        if (c.lastChance().isEmpty()) {
            return "";
        }
        boolean decides = c.lastChance().stream().anyMatch(FitCard.Reading::decides);
        return "Read under clamps, while it can still be moved."
                + (decides ? " Those marked decide: read them first." : "")
                + " Outside its limits: open the clamps and set it anew, or clean it off before it gels."
                + c.shop()
                        .filter(ShopHeat::matters)
                        .map(w -> " Gaps and limits here are as seen in the shop. "
                                + w.words().in(format.system()))
                        .orElse("");
    }

    private FitSheet.Reading reading(FitCard.Reading r) {
        return new FitSheet.Reading(
                r.station(),
                r.where(),
                length(r.nowMm()),
                length(r.expectedMm()),
                length(r.lowerMm()) + " to " + length(r.upperMm()),
                r.flush().afterMm().isPresent() ? length(r.flush().afterMm().getAsDouble()) : "",
                Phrase.of(
                                "%s to %s",
                                Amount.bareMm(r.flush().lowerMm(), 1),
                                Amount.mm(r.flush().upperMm(), 1))
                        .in(format.system()),
                r.flush().readMm().isPresent() ? length(r.flush().readMm().getAsDouble()) : "",
                r.decides());
    }

    private static Pair caution(Caution c) {
        return new Pair(c.title(), c.text());
    }

    private String length(double mm) {
        return format.gap(Length.ofMillimetres(mm));
    }

    private String place(double mm) {
        return Amount.placeMm(mm, 0).in(format.system());
    }

    private String say(Finding f) {
        return f.sentence(format.system());
    }

    /** To 0.01 mm or 0.1 thou, as shims are told. */
    private String fine(double mm) {
        return format.fineGap(Length.ofMillimetres(mm));
    }

    private String span(TimeSpan t) {
        return format.span(t);
    }
}
