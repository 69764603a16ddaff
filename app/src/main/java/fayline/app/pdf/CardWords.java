package fayline.app.pdf;

import fayline.app.drawing.BagStackDrawing;
import fayline.app.drawing.Drawing;
import fayline.app.drawing.PlyStackDrawing;
import fayline.app.drawing.SvgRenderer;
import fayline.basis.finding.Finding;
import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.flow.card.Card;
import fayline.flow.card.PrintMark;
import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.stock.Material;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.StepResult;
import fayline.method.mix.batch.Batch;
import fayline.method.mix.batch.WayOut;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Puts cards into words.
 *
 * @param materials the catalog, for how a cloth is drawn
 * @param ground what the plies of a step lie on, in words
 * @param format the reader's units
 */
public record CardWords(Catalog<Material> materials, UnaryOperator<String> ground, QuantityFormat format) {
    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final int HASH_SHOWN = 12;

    /** For the cards of a project. */
    public static CardWords of(Definition definition, ProjectResult result, QuantityFormat format) {
        return new CardWords(definition.materials(), step -> ground(definition, result, step), format);
    }

    private static String ground(Definition definition, ProjectResult result, String step) {
        Optional<StepResult> found = result.step(step);
        if (found.filter(s -> s.stage() > 1).isPresent()) {
            return "What was laid before";
        }
        boolean mould = found.flatMap(s -> definition.parts().find(s.made()))
                .flatMap(Part::mould)
                .isPresent();
        return mould ? "Mould face" : "Surface it is laid on";
    }

    /** A card in words. */
    public CardSheet sheet(Card card) {
        Card.Heading h = card.heading();
        ZoneId zone = card.when().zone();
        return new CardSheet(
                card.step(),
                path(card.step()),
                card.title(),
                card.kind().key().replace('-', ' '),
                h.name(),
                h.hand() == Hand.NONE ? "" : h.hand().key(),
                facts(h),
                "Revision " + h.revision() + ", definition "
                        + h.definition()
                                .substring(
                                        0, Math.min(HASH_SHOWN, h.definition().length())),
                PrintMark.of(card.step().split("/", -1)[1], h.drawing(), h.definition())
                        .text(),
                card.whichWay().map(w -> new CardSheet.Pair(w.question(), w.orient())),
                when(card.when(), zone),
                card.when().state(),
                card.when().unplanned(),
                stacks(card),
                card.plies().stream().map(this::ply).toList(),
                card.mixes().stream().map(this::mix).toList(),
                bag(card),
                card.bag().stream()
                        .map(b -> new CardSheet.Row(
                                String.valueOf(b.order()),
                                b.what() + (b.material().isEmpty() ? "" : ", " + b.material()),
                                amount(b.size()),
                                b.margin().metres() > 0 ? format.length(b.margin()) + " beyond the lay-up" : ""))
                        .toList(),
                card.fetch().stream()
                        .map(f -> new CardSheet.Row(
                                "",
                                f.name(),
                                amount(f.amount()),
                                f.purpose().replace('-', ' ')
                                        + (f.lots().isEmpty() ? "" : ", lot " + String.join(", then ", f.lots()))))
                        .toList(),
                card.say(),
                card.checks(),
                card.readings(),
                card.signed(),
                card.windows().stream().map(w -> window(w, zone)).toList(),
                clocks(card, zone),
                card.cautions().stream()
                        .map(c -> new CardSheet.Pair(c.title(), c.text()))
                        .toList(),
                card.lessons(),
                card.findings().stream()
                        .map(Finding::sentence)
                        .filter(f -> card.mixes().stream()
                                .noneMatch(m -> m.list().findings().stream()
                                        .anyMatch(x -> x.sentence().equals(f))))
                        .toList());
    }

    /** The address of a step's card within the program. */
    static String path(String step) {
        String[] p = step.split("/");
        return p.length == 4 ? "/card/" + p[1] + "/" + p[2] + "/" + p[3] + "?project=" + p[0] : "/";
    }

    private static List<CardSheet.Pair> facts(Card.Heading h) {
        List<CardSheet.Pair> all = new ArrayList<>();
        all.add(new CardSheet.Pair("Aircraft", h.aircraft()));
        if (!h.drawing().isEmpty()) {
            all.add(new CardSheet.Pair("Drawing", h.drawing()));
        }
        if (!h.opposite().isEmpty()) {
            all.add(new CardSheet.Pair("Opposite hand", h.opposite()));
        }
        return all;
    }

    private static List<CardSheet.Pair> when(Card.When w, ZoneId zone) {
        List<CardSheet.Pair> all = new ArrayList<>();
        w.start().ifPresent(s -> all.add(new CardSheet.Pair("Hands", range(s, w.handsEnd(), zone))));
        if (w.end().isPresent()
                && w.handsEnd().isPresent()
                && w.end().get().isAfter(w.handsEnd().get())) {
            all.add(new CardSheet.Pair("Alone until", at(w.end().get(), zone)));
        }
        if (!w.people().isEmpty()) {
            all.add(new CardSheet.Pair("Who", String.join(", ", w.people())));
        }
        if (!w.crew().isEmpty()) {
            all.add(new CardSheet.Pair("Crew", w.crew()));
        }
        if (!w.places().isEmpty()) {
            all.add(new CardSheet.Pair("Where", String.join(", ", w.places())));
        }
        if (!w.watch().isEmpty()) {
            all.add(new CardSheet.Pair(
                    "Look at it",
                    String.join(", ", w.watch().stream().map(t -> at(t, zone)).toList())));
        }
        return all;
    }

    private static String range(Instant from, Optional<Instant> to, ZoneId zone) {
        if (to.isEmpty()) {
            return "from " + at(from, zone);
        }
        boolean sameDay =
                from.atZone(zone).toLocalDate().equals(to.get().atZone(zone).toLocalDate());
        return at(from, zone) + " to " + (sameDay ? CLOCK.format(to.get().atZone(zone)) : at(to.get(), zone));
    }

    private static String at(Instant t, ZoneId zone) {
        return AT.format(t.atZone(zone));
    }

    private List<Drawing> stacks(Card card) {
        Map<String, List<PlyStackDrawing.Layer>> byZone = new LinkedHashMap<>();
        for (Card.PlyLine p : card.plies()) {
            Optional<Material> m = materials.stream()
                    .filter(x -> x.name().equals(p.material()))
                    .findFirst();
            byZone.computeIfAbsent(p.zone(), z -> new ArrayList<>())
                    .add(PlyStackDrawing.Layer.of(
                            p.order(), p.material(), m, p.core(), p.angle().degrees(), format));
        }
        return byZone.entrySet().stream()
                .map(e -> PlyStackDrawing.of(e.getKey(), e.getValue(), ground.apply(card.step())))
                .toList();
    }

    private CardSheet.Row ply(Card.PlyLine p) {
        return new CardSheet.Row(
                String.valueOf(p.order()),
                p.material(),
                format.area(p.area()),
                (p.core() ? "core" : angle(p.angle())) + ", " + p.zone());
    }

    private static String angle(Angle a) {
        return PlyStackDrawing.angle(a.degrees());
    }

    private CardSheet.Mix mix(Card.MixLine m) {
        MixList l = m.list();
        List<CardSheet.Pair> facts = new ArrayList<>();
        if (l.batches() > 0) {
            facts.add(new CardSheet.Pair(
                    "Container", l.container() + ", never more than " + format.scaleMass(l.largest()) + " in it"));
            facts.add(new CardSheet.Pair(
                    "Use up within",
                    span(l.usable()) + " of mixing (pot life " + span(l.potLife()) + " at "
                            + format.temperature(l.temperature()) + ")"));
            facts.add(new CardSheet.Pair("Applied by", l.people() + (l.people() == 1 ? " person" : " people")));
        }
        l.resinLife()
                .ifPresent(life -> facts.add(new CardSheet.Pair(
                        "On the part",
                        "workable for " + span(life) + "; tight or closed " + span(l.tight())
                                + " after the first mixing")));
        if (!m.lots().isEmpty()) {
            facts.add(new CardSheet.Pair("Lots", String.join(", ", m.lots())));
        }
        List<String> findings =
                new ArrayList<>(l.findings().stream().map(Finding::sentence).toList());
        l.waysOut().stream().filter(WayOut::possible).forEach(w -> findings.add("Way out: " + w.sentence()));
        return new CardSheet.Mix(
                m.name(),
                l.purpose().replace('-', ' '),
                batches(l),
                l.thickener().kilograms() > 0,
                format.scaleMass(l.total()),
                facts,
                findings);
    }

    private List<CardSheet.Batch> batches(MixList l) {
        String thickener = l.thickener().kilograms() > 0 ? format.scaleMass(l.thickener()) : "";
        List<CardSheet.Batch> all = new ArrayList<>();
        for (Batch b : l.scale()) {
            all.add(new CardSheet.Batch(
                    b.number(),
                    format.scaleMass(b.resin()),
                    format.scaleMass(b.hardener()),
                    "\u00b1 " + format.scaleMass(b.hardenerTolerance()),
                    thickener,
                    format.scaleMass(b.mass()),
                    sinceFirst(b.mixAt()),
                    sinceFirst(b.usableUntil()),
                    (long) (b.usableUntil().minutes() - b.mixAt().minutes())));
        }
        return all;
    }

    /** Hours and minutes from the first mixing, as a stopwatch shows them. */
    private static String sinceFirst(TimeSpan t) {
        long minutes = Math.round(t.minutes());
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }

    private static List<CardSheet.Clock> clocks(Card card, ZoneId zone) {
        List<CardSheet.Clock> all = new ArrayList<>();
        for (ClockRunning c : card.clocks()) {
            String state = c.state().key().replace('-', ' ') + ", " + c.title();
            String at = c.at().map(t -> at(t, zone)).orElse("not within sight");
            all.add(new CardSheet.Clock(
                    state,
                    c.reached() ? "reached by computation " + at + "; check by hand" : at,
                    c.reached() ? "" : c.at().map(Instant::toString).orElse(""),
                    c.key()));
        }
        return all;
    }

    private Optional<Drawing> bag(Card card) {
        if (card.bag().isEmpty()) {
            return Optional.empty();
        }
        List<BagStackDrawing.Layer> layers = new ArrayList<>();
        layers.add(new BagStackDrawing.Layer("the wet part", "", BagStackDrawing.Kind.PART));
        String tape = "";
        for (Card.BagLine b : card.bag()) {
            String what = b.what().toLowerCase(Locale.ROOT);
            if (what.contains("tape")) {
                tape = amount(b.size());
            } else {
                layers.add(new BagStackDrawing.Layer(b.what(), amount(b.size()), kind(what)));
            }
        }
        return Optional.of(BagStackDrawing.of(
                layers,
                tape,
                ground.apply(card.step()).startsWith("Surface") ? "Surface it is laid on" : "Mould, released"));
    }

    private static BagStackDrawing.Kind kind(String what) {
        return what.contains("peel")
                ? BagStackDrawing.Kind.PEEL
                : what.contains("breather")
                        ? BagStackDrawing.Kind.BREATHER
                        : what.contains("bag") ? BagStackDrawing.Kind.BAG : BagStackDrawing.Kind.FILM;
    }

    private static CardSheet.Window window(Card.WindowLine w, ZoneId zone) {
        StringBuilder s = new StringBuilder();
        w.opens().ifPresent(t -> s.append("Opens ").append(at(t, zone)).append(". "));
        w.shuts().ifPresent(t -> s.append("Shuts ").append(at(t, zone)).append(". "));
        if (w.opens().isEmpty() && w.shuts().isEmpty()) {
            s.append(w.says()).append(". ");
        }
        s.append(w.miss());
        return new CardSheet.Window(
                (w.before() ? "Begin this after " : "Then begin ") + w.what(),
                s.toString().strip(),
                w.says());
    }

    private String span(TimeSpan t) {
        return format.span(t);
    }

    /** An amount in the reader's units. */
    String amount(Quantity q) {
        if (q instanceof Mass m) {
            return format.mass(m);
        }
        if (q instanceof Area a) {
            return format.area(a);
        }
        if (q instanceof Length l) {
            return format.length(l);
        }
        return SvgRenderer.number(q.si());
    }
}
