package fayline.app.web.fit;

import fayline.app.usecase.fit.NewEdge;
import fayline.app.usecase.fit.NewFit;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnitSystem;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.design.Hand;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the form of a new fit. */
final class FitBeginForm {
    /** Fields of one line. */
    private static final List<String> LINES = List.of(
            "name",
            "hand",
            "gap",
            "tolerance",
            "flush",
            "flush-tolerance",
            "edge",
            "width",
            "height",
            "radius",
            "edge-unit",
            "radii",
            "corner-points",
            "stationing",
            "spread",
            "gauge",
            "deviation",
            "shared",
            "temperature");

    private static final List<String> TEXTS = List.of("corners", "points", "drawing", "stations");

    private final Map<String, String> typed = new TreeMap<>();
    private final List<String> against;
    private final String unit;

    FitBeginForm(Visit visit, UnitSystem units) {
        LINES.forEach(f -> typed.put(f, visit.field(f)));
        TEXTS.forEach(f -> typed.put(f, visit.text(f)));
        against = visit.fields("against").stream().filter(a -> !a.isEmpty()).toList();
        unit = FitSetup.unit(units);
    }

    Map<String, String> typed() {
        return typed;
    }

    List<String> against() {
        return against;
    }

    String id() {
        return id(of("name"));
    }

    /**
     * The fit as typed.
     *
     * @throws Refusal if a field of the edge or the number of stations cannot be read
     */
    NewFit fit() {
        boolean spreading = of("stationing").equals("spread");
        return new NewFit(
                id(),
                of("name"),
                of("hand").equals("right") ? Hand.RIGHT : Hand.LEFT,
                withUnit("gap"),
                withUnit("tolerance"),
                withUnit("flush"),
                withUnit("flush-tolerance"),
                against,
                edge(),
                spreading ? List.of() : stations(of("stations")),
                spreading ? number() : 0,
                new NewFit.Gauge(of("gauge"), withUnit("deviation"), withUnit("shared")));
    }

    private String of(String field) {
        return typed.getOrDefault(field, "");
    }

    private String withUnit(String field) {
        return FitSetup.withUnit(of(field), unit);
    }

    private int number() {
        String n = of("spread");
        if (!n.matches("[1-9][0-9]{0,3}")) {
            throw Refusal.input("Number of stations: found \"" + n + "\", expected a whole number such as 12.");
        }
        return Integer.parseInt(n);
    }

    private Optional<NewEdge> edge() {
        String numbers = of("edge-unit").isEmpty() ? unit : of("edge-unit");
        return switch (of("edge")) {
            case "rectangle" ->
                Optional.of(NewEdge.rectangle(
                        length("width", "Length of the edge"),
                        length("height", "Height of the edge"),
                        of("radius").isEmpty() ? new Length(0) : length("radius", "Radius of the corners")));
            case "corners" -> Optional.of(NewEdge.polygon(places("corners"), of("radii"), numbers));
            case "points" -> Optional.of(NewEdge.traced(places("points"), of("corner-points"), numbers));
            case "drawing" -> {
                if (of("drawing").isBlank()) {
                    throw Refusal.input("No drawing is chosen. Choose a DXF or SVG file, or paste its text.");
                }
                yield Optional.of(NewEdge.drawn(id(), of("drawing")));
            }
            default -> Optional.empty();
        };
    }

    /** Places typed a line each, as a definition takes them. */
    private String places(String field) {
        return String.join(
                ", ",
                of(field)
                        .lines()
                        .map(l -> l.replaceAll("[;\\t ]+", " ").strip())
                        .filter(l -> !l.isEmpty())
                        .toList());
    }

    private Length length(String field, String label) {
        try {
            return QuantityParser.parse(withUnit(field), QuantityKind.LENGTH).value();
        } catch (UnreadableQuantityException e) {
            throw Refusal.input(label + ": found \"" + e.found() + "\", expected " + e.expected() + ".");
        }
    }

    /** A line each: mark, words in quotes or none, place, direction, height, lean, with semicolons between. */
    private static List<NewFit.Marked> stations(String text) {
        List<NewFit.Marked> all = new ArrayList<>();
        for (String line :
                text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
            String[] p = line.split(";", -1);
            all.add(new NewFit.Marked(
                    p[0].strip(),
                    part(p, 1).isEmpty() ? p[0].strip() : part(p, 1),
                    part(p, 2),
                    part(p, 3),
                    FitSetup.withUnit(part(p, 4), "mm"),
                    FitSetup.withUnit(part(p, 5), "deg")));
        }
        return all;
    }

    private static String part(String[] parts, int index) {
        return parts.length > index ? parts[index].strip() : "";
    }

    /** A name as an id: small letters, figures and hyphens. */
    static String id(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return id.length() > 60 ? id.substring(0, 60).replaceAll("-+$", "") : id;
    }
}
