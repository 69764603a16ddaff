package fayline.app.web.design;

import fayline.app.drawing.MassBar;
import fayline.app.drawing.PlyStackDrawing;
import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.ZoneDrawing;
import fayline.app.usecase.coupon.LookAtCoupons;
import fayline.app.usecase.laminate.CheckLaminates;
import fayline.app.web.change.ChangeViews;
import fayline.app.web.coupon.CouponPage;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.StateWord;
import fayline.app.web.frame.Visit;
import fayline.app.web.laminate.LaminatePage;
import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Part;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.quantity.ZoneResult;
import fayline.flow.result.step.StepResult;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A part or a joint: zones and plies drawn, quantities, steps with their states, and why. */
public final class MadePage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public MadePage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/part/{id}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Part part = sight.definition()
                        .parts()
                        .find(visit.inPath("id"))
                        .orElseThrow(() -> Refusal.absent("part of that name"));
                sights.show(visit, "made.jte", sights.frame(visit, sight, part.name(), "/airframe"), part(sight, part));
            });
        });
        routes.get("/joint/{id}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Joint joint = sight.definition()
                        .joints()
                        .find(visit.inPath("id"))
                        .orElseThrow(() -> Refusal.absent("joint of that name"));
                sights.show(
                        visit, "made.jte", sights.frame(visit, sight, joint.name(), "/airframe"), joint(sight, joint));
            });
        });
    }

    static MadeView part(Sight sight, Part p) {
        Optional<PartResult> result = sight.result().part(p.id());
        List<MadeView.Fact> facts = new ArrayList<>();
        facts.add(new MadeView.Fact("In", assembly(sight, p.in()), "/airframe"));
        if (p.hand() != Hand.NONE) {
            facts.add(new MadeView.Fact("Hand", p.hand().key(), ""));
        }
        p.opposite()
                .ifPresent(o -> facts.add(new MadeView.Fact("Opposite hand", sight.madeName(o), sight.madeLink(o))));
        SetWords.afterOpposite(sight, p).ifPresent(w -> fact(facts, "After the first hand", w));
        SetWords.of(sight, p).ifPresent(w -> fact(facts, "Made in sets", w));
        p.mould().ifPresent(m -> facts.add(new MadeView.Fact("Mould", sight.placeName(m), "")));
        fact(facts, "Drawing", p.drawing());
        fact(facts, "Lies", p.orient());
        facts.add(new MadeView.Fact("As built", "Its book", bookLink(p.id())));
        if (!p.coupons().isEmpty()) {
            facts.add(new MadeView.Fact("Witness pieces", tested(sight, p), CouponPage.link(p.id())));
        }
        facts.add(new MadeView.Fact("Heat", "May it be heated?", "/heat/" + p.id()));
        p.zones().stream()
                .map(z -> z.laminate())
                .distinct()
                .forEach(l -> CheckLaminates.of(sight.definition(), l)
                        .ifPresent(c -> facts.add(new MadeView.Fact(
                                "Will it hold: " + c.laminate().name(),
                                c.verdict().words(),
                                LaminatePage.link(l)))));
        sight.definition().fits().items().stream()
                .filter(f -> f.part().equals(Optional.of(p.id())) || f.against().contains(p.id()))
                .forEach(f -> facts.add(new MadeView.Fact("Fit", f.name(), "/fit/" + Visit.encoded(f.id()))));
        result.ifPresent(r -> {
            facts.add(new MadeView.Fact("Area", sight.format().area(r.area()), ""));
            facts.add(new MadeView.Fact("Edge", sight.format().length(r.edge()), ""));
            facts.add(
                    r.asMade().kilograms() > 0
                            ? new MadeView.Fact(
                                    "Mass as made, computed", sight.format().mass(r.asMade()), "")
                            : new MadeView.Fact("Mass", "not computed: it has no zones; weigh it", ""));
            r.weighed().ifPresent(w -> facts.add(new MadeView.Fact("Weighed", w.asTyped(), "")));
            r.target().ifPresent(t -> facts.add(new MadeView.Fact("Target", t.asTyped(), "")));
            facts.add(new MadeView.Fact(
                    "Hands", minutes(sight, r.personMinutes()) + " person-time at the least crew", ""));
            facts.add(new MadeView.Fact("Cost of what is drawn", money(sight, r.cost()), ""));
        });
        String bar = result.filter(r -> r.basis() != PartResult.MassBasis.BUDGETED)
                .flatMap(r -> r.target()
                        .filter(t -> t.value().kilograms() > 0)
                        .map(t -> SvgRenderer.forScreen()
                                .render(MassBar.of(
                                        r.best(), t.value(), r.weighed().isPresent(), sight.format()))))
                .orElse("");
        List<Figure> figures = result.map(PartResult::figures).orElse(List.of());
        return new MadeView(
                p.id(),
                p.name(),
                "part",
                facts,
                p.zones().stream().map(z -> zone(sight, z, result)).toList(),
                bar,
                needs(sight, result.map(PartResult::needs).orElse(List.of())),
                asked("of=part&id=" + Visit.encoded(p.id()), figures),
                steps(sight, p.id()),
                p.lessons(),
                result.map(r -> r.findings().stream()
                                .map(Finding::sentence)
                                .map(sight::named)
                                .toList())
                        .orElse(List.of()),
                new ChangeViews(sight).ofMade(p.id()));
    }

    /** How far a part's witness pieces are tested. */
    private static String tested(Sight sight, Part p) {
        return LookAtCoupons.of(sight.view(), p).stream()
                .map(c -> c.coupon().name() + ": " + c.values().size() + " of "
                        + c.coupon().count())
                .collect(Collectors.joining(", "));
    }

    static MadeView joint(Sight sight, Joint j) {
        Optional<JointResult> result = sight.result().joint(j.id());
        List<MadeView.Fact> facts = new ArrayList<>();
        facts.add(new MadeView.Fact("In", assembly(sight, j.in()), "/airframe"));
        j.between().forEach(p -> facts.add(new MadeView.Fact("Joins", sight.madeName(p), sight.madeLink(p))));
        facts.add(new MadeView.Fact("As built", "Its book", bookLink(j.id())));
        facts.add(new MadeView.Fact("Heat", "May it be heated?", "/heat/" + j.id()));
        facts.add(new MadeView.Fact("Adhesive", sight.stuffName(j.adhesive()), ""));
        facts.add(new MadeView.Fact("Length", sight.format().length(j.length()), ""));
        facts.add(new MadeView.Fact("Overlap", sight.format().length(j.width()), ""));
        facts.add(new MadeView.Fact("Bond line", sight.format().length(j.bondLine()), ""));
        facts.add(new MadeView.Fact("Squeeze-out", sight.format().percent(j.squeezeOut()), ""));
        facts.add(new MadeView.Fact("Carries structure", j.structural() ? "yes" : "no", ""));
        result.ifPresent(r -> {
            facts.add(new MadeView.Fact("Faying area", sight.format().area(r.faying()), ""));
            facts.add(new MadeView.Fact("Adhesive to mix", sight.format().mass(r.adhesive()), ""));
            facts.add(new MadeView.Fact(
                    "Hands", minutes(sight, r.personMinutes()) + " person-time at the least crew", ""));
            facts.add(new MadeView.Fact("Cost of what is drawn", money(sight, r.cost()), ""));
        });
        return new MadeView(
                j.id(),
                j.name(),
                "joint",
                facts,
                List.of(),
                "",
                needs(sight, result.map(JointResult::needs).orElse(List.of())),
                asked(
                        "of=joint&id=" + Visit.encoded(j.id()),
                        result.map(JointResult::figures).orElse(List.of())),
                steps(sight, j.id()),
                List.of(),
                j.structural()
                        ? List.of("No inspection after the bond finds a weak one: the record of how it was made is the"
                                + " evidence. Approved data, local rules and a licensed person decide.")
                        : List.of(),
                new ChangeViews(sight).ofMade(j.id()));
    }

    private static MadeView.Zone zone(Sight sight, fayline.flow.project.design.Zone z, Optional<PartResult> result) {
        Laminate laminate = sight.definition().laminates().get(z.laminate());
        List<MadeView.Fact> facts = new ArrayList<>();
        facts.add(new MadeView.Fact("Area", sight.format().area(z.area()), ""));
        facts.add(new MadeView.Fact("Edge", sight.format().length(z.edge()), ""));
        result.flatMap(r ->
                        r.zones().stream().filter(x -> x.zone().equals(z.id())).findFirst())
                .ifPresent(r -> measures(sight, facts, r));
        List<Double> angles = laminate.plies().stream()
                .filter(p -> !p.core())
                .map(p -> p.angle().degrees())
                .toList();
        return new MadeView.Zone(
                z.name(),
                laminate.name(),
                facts,
                SvgRenderer.forScreen().render(ZoneDrawing.of(z, angles)),
                SvgRenderer.forScreen()
                        .render(PlyStackDrawing.of(laminate, sight.definition().materials(), sight.format())));
    }

    private static void measures(Sight sight, List<MadeView.Fact> facts, ZoneResult r) {
        facts.add(new MadeView.Fact("Cloth", sight.format().mass(r.fibre()), ""));
        if (r.core().kilograms() > 0) {
            facts.add(new MadeView.Fact("Core", sight.format().mass(r.core()), ""));
        }
        facts.add(new MadeView.Fact("Resin in the part", sight.format().mass(r.resin()), ""));
        r.thickness()
                .ifPresent(t -> facts.add(
                        new MadeView.Fact("Thickness as laid", sight.format().length(t), "")));
    }

    static List<MadeView.Asked> asked(String query, List<Figure> figures) {
        List<MadeView.Asked> all = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Figure f = figures.get(i);
            all.add(new MadeView.Asked(f.name(), f.value(), "/why?" + query + "&n=" + i));
        }
        return all;
    }

    private static List<MadeView.Need> needs(Sight sight, List<Need> needs) {
        return needs.stream()
                .map(n -> new MadeView.Need(
                        sight.stuffName(n.of()),
                        sight.amount(n.amount()),
                        n.purpose().replace('-', ' '),
                        n.cost().isPresent() ? money(sight, n.cost().getAsDouble()) : ""))
                .toList();
    }

    private static List<MadeView.Step> steps(Sight sight, String made) {
        return sight.result().stepsOf(made).stream().map(s -> step(sight, s)).toList();
    }

    private static MadeView.Step step(Sight sight, StepResult s) {
        var planned = sight.planned(s.id());
        return new MadeView.Step(
                s.title(),
                Sight.cardLink(s.id()),
                StateWord.of(s, sight),
                planned.map(p -> sight.time().range(p.start(), p.handsEnd())
                                + (p.end().isAfter(p.handsEnd())
                                        ? ", alone until " + sight.time().at(p.end())
                                        : ""))
                        .orElse(""),
                planned.map(p -> sight.personNames(p.people())).orElse(""),
                s.personMinutes() == 0 ? "" : minutes(sight, s.personMinutes()),
                s.windows().stream()
                        .filter(w -> !w.opens().isEmpty() || !w.shuts().isEmpty())
                        .map(w -> "After " + w.fromTitle() + (w.opens().isEmpty() ? "" : ", opens " + w.opens())
                                + (w.shuts().isEmpty() ? "" : ", shuts " + w.shuts()))
                        .toList());
    }

    private static String minutes(Sight sight, int personMinutes) {
        return sight.format().span(TimeSpan.ofMinutes(personMinutes));
    }

    private static String money(Sight sight, double amount) {
        return String.format(
                Locale.ROOT, "%.2f %s", amount, sight.definition().facts().currency());
    }

    private static String bookLink(String made) {
        return "/book/now.pdf?of=" + Visit.encoded(made);
    }

    private static String assembly(Sight sight, String id) {
        return sight.definition().assemblies().find(id).map(a -> a.name()).orElse(id);
    }

    private static void fact(List<MadeView.Fact> facts, String name, String value) {
        if (!value.isEmpty()) {
            facts.add(new MadeView.Fact(name, value, ""));
        }
    }
}
