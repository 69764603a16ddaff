package fayline.app.web.design;

import fayline.app.usecase.heat.CheckHeat;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.Finding;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.design.Made;
import fayline.method.cure.reaction.HeatPlan.Kind;
import fayline.method.cure.reaction.HeatPlan.Load;
import fayline.method.cure.reaction.HeatPlanResult;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** May this part be heated: glass transition so far against a planned heat, and what to support and unload. */
public final class HeatPage implements Page {
    /** Least distance wanted above the part; common practice, no source. */
    private static final double MARGIN_K = 10;

    private static final Map<String, Load> LOADS = loads();
    private final Sights sights;

    /** Makes the page. */
    public HeatPage(Sights sights) {
        this.sights = sights;
    }

    private static Map<String, Load> loads() {
        Map<String, Load> all = new LinkedHashMap<>();
        all.put("weight", new Load("its own weight between supports", Kind.OWN_WEIGHT));
        all.put("strut", new Load("gas struts", Kind.STRUT));
        all.put("spring", new Load("springs or a preloaded latch", Kind.SPRING));
        all.put("seal", new Load("a compressed seal", Kind.SEAL));
        all.put("clamp", new Load("clamps or straps", Kind.OTHER));
        return all;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/heat/{id}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Made made = sight.made(visit.inPath("id")).orElseThrow(() -> Refusal.absent("part of that name"));
                HeatView view = view(visit, sight, made);
                if (!view.refused().isEmpty()) {
                    visit.status(422);
                }
                sights.show(visit, "heat.jte", sights.frame(visit, sight, "Heat: " + made.name(), "/airframe"), view);
            });
        });
    }

    private static HeatView view(Visit visit, Sight sight, Made made) {
        boolean asked = !visit.query("peak").isEmpty();
        List<String> refused = new ArrayList<>();
        List<HeatView.Answer> answers = new ArrayList<>();
        List<Load> loads = LOADS.entrySet().stream()
                .filter(e -> !visit.query(e.getKey()).isEmpty())
                .map(Map.Entry::getValue)
                .toList();
        if (asked) {
            Temperature peak =
                    read(visit.query("peak"), QuantityKind.TEMPERATURE, "Peak", refused, Temperature.ofCelsius(0));
            TimeSpan hold = read(visit.query("hold"), QuantityKind.TIME_SPAN, "Hold", refused, TimeSpan.ofHours(1));
            TemperatureDifference ramp = read(
                    visit.query("ramp"),
                    QuantityKind.TEMPERATURE_DIFFERENCE,
                    "Climb per hour",
                    refused,
                    TemperatureDifference.ofKelvins(1));
            if (refused.isEmpty() && (ramp.kelvins() <= 0 || hold.seconds() < 0)) {
                refused.add("Climb per hour: found " + visit.query("ramp")
                        + ", expected more than nought; the hold must" + " not be negative.");
            }
            if (refused.isEmpty()) {
                CheckHeat.ask(
                                sight.view(),
                                made.id(),
                                new CheckHeat.Heat(
                                        peak, ramp.kelvins(), hold, TemperatureDifference.ofKelvins(MARGIN_K), loads))
                        .forEach(a -> answers.add(answer(sight, a)));
            }
        }
        return new HeatView(
                made.id(),
                made.name(),
                sight.madeLink(made.id()),
                visit.query("peak"),
                visit.query("ramp"),
                visit.query("hold"),
                LOADS.entrySet().stream()
                        .map(e -> new HeatView.Load(
                                e.getKey(),
                                e.getValue().name(),
                                (!asked && e.getKey().equals("weight"))
                                        || !visit.query(e.getKey()).isEmpty()))
                        .toList(),
                asked,
                refused,
                answers);
    }

    private static <Q extends fayline.basis.units.Quantity> Q read(
            String typed, QuantityKind<Q> kind, String label, List<String> refused, Q otherwise) {
        try {
            return QuantityParser.parse(typed, kind).value();
        } catch (UnreadableQuantityException e) {
            refused.add(label + ": " + e.getMessage() + ".");
            return otherwise;
        }
    }

    private static HeatView.Answer answer(Sight sight, CheckHeat.Answer a) {
        HeatPlanResult r = a.result();
        List<HeatView.Fact> facts = new ArrayList<>();
        r.before()
                .ifPresent(t -> facts.add(new HeatView.Fact(
                        "Glass transition so far", sight.format().temperature(t))));
        r.after()
                .ifPresent(t -> facts.add(
                        new HeatView.Fact("After the heat", sight.format().temperature(t))));
        r.leastMargin()
                .ifPresent(m -> facts.add(
                        new HeatView.Fact("Least margin", sight.format().difference(m))));
        r.tightestAt()
                .ifPresent(t ->
                        facts.add(new HeatView.Fact("Tightest", sight.format().span(t) + " after the heat begins")));
        r.hottestNow()
                .ifPresent(t -> facts.add(new HeatView.Fact(
                        "Hottest it may be put now", sight.format().temperature(t))));
        List<String> why = new ArrayList<>();
        r.figure().ifPresent(f -> {
            why.add(f.formula());
            f.inputs()
                    .forEach(i -> why.add(i.name() + ": " + i.value() + ", "
                            + i.origin()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', ' ')));
            why.add("Source: " + f.source());
        });
        return new HeatView.Answer(
                a.system() + ", " + a.step().title() + ", begun " + sight.time().at(a.since()),
                r.softens(),
                facts,
                r.list(),
                why,
                r.findings().stream().map(Finding::sentence).toList());
    }
}
