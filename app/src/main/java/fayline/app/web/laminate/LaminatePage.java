package fayline.app.web.laminate;

import fayline.app.drawing.PlyStackDrawing;
import fayline.app.drawing.RoundDrawing;
import fayline.app.drawing.SvgRenderer;
import fayline.app.usecase.laminate.CheckLaminates;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Angle;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.stock.Material;
import fayline.flow.result.laminate.LaminateCheck;
import fayline.flow.result.laminate.LaminateCheck.Verdict;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A laminate asked whether it bears what was entered, from its real plies; also with one ply exchanged. */
public final class LaminatePage implements Page {
    private static final String OUT = "none";
    private final Sights sights;

    /** Makes the page. */
    public LaminatePage(Sights sights) {
        this.sights = sights;
    }

    /** Where a laminate is shown. */
    public static String link(String laminate) {
        return "/laminate/" + Visit.encoded(laminate);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/laminate/{id}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                LaminateCheck check = CheckLaminates.of(sight.definition(), visit.inPath("id"))
                        .orElseThrow(() -> Refusal.absent("laminate of that name"));
                LaminateView view = view(visit, sight, check);
                if (!view.swap().refused().isEmpty()) {
                    visit.status(422);
                }
                sights.show(
                        visit,
                        "laminate/laminate.jte",
                        sights.frame(visit, sight, check.laminate().name(), "/airframe"),
                        view);
            });
        });
    }

    private static LaminateView view(Visit visit, Sight sight, LaminateCheck c) {
        LaminateFigures figures = new LaminateFigures(sight.format());
        String currency = sight.definition().facts().currency();
        return new LaminateView(
                c.laminate().id(),
                c.laminate().name(),
                CheckLaminates.partsOf(sight.definition(), c.laminate().id()).stream()
                        .map(p -> new LaminateView.Link(p.name(), sight.madeLink(p.id())))
                        .toList(),
                c.verdict().words(),
                c.verdict() == Verdict.WITHIN,
                c.verdict() == Verdict.NOT_WITHIN,
                c.why(),
                SvgRenderer.forScreen()
                        .render(PlyStackDrawing.of(
                                c.laminate(), sight.definition().materials(), sight.format())),
                round(c),
                c.stack().map(s -> figures.facts(s, currency)).orElse(List.of()),
                c.loads().stream().map(l -> figures.load(c, l, names(sight))).toList(),
                c.inputs().stream()
                        .map(i -> new LaminateView.Input(i.of(), i.status(), i.origin(), i.trusted()))
                        .toList(),
                c.missing(),
                swap(visit, sight, c, figures, currency));
    }

    private static LaminateFigures.ToName names(Sight sight) {
        return new LaminateFigures.ToName() {
            @Override
            public String of(String material) {
                return sight.stuffName(material);
            }

            @Override
            public String angle(double degrees) {
                return PlyStackDrawing.angle(degrees);
            }
        };
    }

    private static String round(LaminateCheck c) {
        if (c.stack().isEmpty()) {
            return "";
        }
        List<RoundDrawing.Ray> rays = c.stack().get().round().stream()
                .map(p -> new RoundDrawing.Ray(p.angleDeg(), p.modulusPa()))
                .toList();
        double most = rays.stream().mapToDouble(RoundDrawing.Ray::value).max().orElse(0) / 1e9;
        double least = rays.stream().mapToDouble(RoundDrawing.Ray::value).min().orElse(0) / 1e9;
        return SvgRenderer.forScreen()
                .render(RoundDrawing.of(
                        String.format(
                                Locale.ROOT,
                                "Modulus in every direction of the plane, from %.1f to %.1f GPa.",
                                least,
                                most),
                        rays,
                        String.format(Locale.ROOT, "%.1f GPa", most)));
    }

    private static LaminateView.Swap swap(
            Visit visit, Sight sight, LaminateCheck c, LaminateFigures figures, String currency) {
        List<LaminateView.Choice> plies = new ArrayList<>();
        for (int k = 0; k < c.laminate().plies().size(); k++) {
            var ply = c.laminate().plies().get(k);
            String name = (k + 1) + ": " + sight.stuffName(ply.material())
                    + (ply.core()
                            ? ""
                            : " at " + PlyStackDrawing.angle(ply.angle().degrees()));
            plies.add(new LaminateView.Choice(String.valueOf(k + 1), name));
        }
        List<LaminateView.Choice> materials = new ArrayList<>();
        materials.add(new LaminateView.Choice(OUT, "nothing: leave it out"));
        sight.definition().materials().stream()
                .filter(m -> m.kind() == Material.Kind.CLOTH
                        || m.kind() == Material.Kind.TAPE
                        || m.kind() == Material.Kind.CORE)
                .forEach(m -> materials.add(new LaminateView.Choice(m.id(), m.name())));
        String ply = visit.query("ply");
        String of = visit.query("of");
        String angle = visit.query("angle").isEmpty() ? "0 deg" : visit.query("angle");
        String refused = "";
        List<LaminateView.Row> rows = List.of();
        if (!ply.isEmpty()) {
            try {
                Angle turned = QuantityParser.parse(angle, QuantityKind.ANGLE).value();
                Optional<LaminateCheck> then = CheckLaminates.exchanged(
                        sight.definition(),
                        c.laminate(),
                        ply.matches("[0-9]{1,3}") ? Integer.parseInt(ply) : 0,
                        OUT.equals(of) ? Optional.empty() : Optional.of(of),
                        turned);
                rows = then.map(t -> figures.compared(c, t, currency)).orElse(List.of());
                refused = then.isPresent() ? "" : "Choose a ply and a material of the lists; one ply must be left.";
            } catch (UnreadableQuantityException e) {
                refused = "Direction: " + e.getMessage() + ".";
            }
        }
        return new LaminateView.Swap(ply, of, angle, plies, materials, refused, rows);
    }
}
