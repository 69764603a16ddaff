package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.ANGLE;
import static fayline.basis.units.QuantityKind.FORCE;
import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.LINE_FORCE;
import static fayline.basis.units.QuantityKind.MASS;
import static fayline.basis.units.QuantityKind.TEMPERATURE;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.basis.units.Fraction;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.LaminateLoad;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Material;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.YesNo;
import java.util.ArrayList;
import java.util.List;

/** The kinds {@code laminates} and {@code assemblies}. */
public final class LaminateKind {
    private static final Keys LOAD = Keys.of(
            "a load of a laminate",
            must("name", Forms.TEXT, "What it is."),
            may("along", Measure.any(LINE_FORCE), "Force per width where ply angles are nought; pulling is positive."),
            may("across", Measure.any(LINE_FORCE), "Force per width across that."),
            may("shear", Measure.any(LINE_FORCE), "Shear force per width."),
            may(
                    "bend-along",
                    Measure.any(FORCE),
                    "Moment per width (N mm/mm) along; positive where the last ply is pulled."),
            may("bend-across", Measure.any(FORCE), "Moment per width across."),
            may("twist", Measure.any(FORCE), "Twisting moment per width."),
            may("cure", Measure.any(TEMPERATURE), "The temperature at which the laminate is free of stress."),
            may("service", Measure.any(TEMPERATURE), "The temperature at which it is loaded."),
            must(
                    "factor",
                    Numeral.number(1, 20, ""),
                    "How many times the load must be borne until the first ply fails."),
            must("origin", Forms.TEXT, "Where the load is from."));

    static final Keys LAMINATE = Keys.of(
                    "a laminate",
                    must("id", Forms.ID, "Its id."),
                    must("name", Forms.TEXT, "Its name."),
                    must("resin", Forms.REF, "The system that wets it."),
                    may("fibre", Measure.share(), "Mass of fibre over mass of fibre and resin, core apart."),
                    may("cloth-to-resin", Forms.RATIO, "Mass of cloth to mass of resin, such as \"1:1\"."),
                    must(
                            "plies",
                            Listed.some(Keys.of(
                                    "a ply",
                                    must("of", Forms.REF, "Cloth, tape or core."),
                                    may(
                                            "angle",
                                            Measure.any(ANGLE),
                                            "Fibre direction against the zone's axis, anticlockwise; cloth and tape must have it."),
                                    may(
                                            "stage",
                                            Numeral.count(1, 50),
                                            "The lay-up stage it belongs to; 1 where nothing is said."),
                                    may(
                                            "count",
                                            Numeral.count(1, 200),
                                            "How many such plies lie on each other; 1 where nothing is said."))),
                            "The plies, mould face first."),
                    may(
                            "loads",
                            Listed.some(LOAD),
                            "What it must bear, as an engineer entered it; asked on the laminate's page."),
                    may(
                            "uneven",
                            new YesNo(),
                            "Whether it is meant to be unsymmetric or unbalanced, as a mould with a fine face is; then no caution is given."))
            .oneOf("fibre", "cloth-to-resin");

    static final Keys ASSEMBLY = Keys.of(
            "an assembly",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            may("in", Forms.REF, "The assembly that it belongs to."),
            may("target", Measure.above(MASS), "Its mass budget."),
            may(
                    "budget",
                    Numeral.number(0, 1e9, "the project's currency"),
                    "What it may cost, with all that is in it."));

    private LaminateKind() {}

    /** Reads one laminate. */
    public static Laminate laminate(Fields f, Catalog<Material> materials) {
        List<Ply> plies = new ArrayList<>();
        for (Fields p : f.list("plies")) {
            String of = p.text("of", "");
            boolean core = materials
                    .find(of)
                    .filter(m -> m.kind() == Material.Kind.CORE)
                    .isPresent();
            Ply ply = new Ply(of, p.measure("angle", ANGLE, "0 deg"), p.whole("stage", 1), core);
            for (int i = Math.min(200, p.whole("count", 1)); i > 0; i--) {
                plies.add(ply);
            }
        }
        Fraction fibre = f.measure("fibre", FRACTION)
                .orElseGet(() -> f.read("cloth-to-resin", Forms::ratio)
                        .map(r -> new Fraction(r[0] / (r[0] + r[1])))
                        .orElse(new Fraction(0.5)));
        return new Laminate(f.text("id", ""), f.text("name", ""), f.text("resin", ""), fibre, plies, loads(f));
    }

    private static List<LaminateLoad> loads(Fields f) {
        List<LaminateLoad> loads = new ArrayList<>();
        for (Fields l : f.list("loads")) {
            loads.add(new LaminateLoad(
                    l.text("name", ""),
                    l.measure("along", LINE_FORCE, "0 N/mm"),
                    l.measure("across", LINE_FORCE, "0 N/mm"),
                    l.measure("shear", LINE_FORCE, "0 N/mm"),
                    l.measure("bend-along", FORCE, "0 N"),
                    l.measure("bend-across", FORCE, "0 N"),
                    l.measure("twist", FORCE, "0 N"),
                    l.measure("cure", TEMPERATURE),
                    l.measure("service", TEMPERATURE),
                    l.number("factor", 1),
                    l.text("origin", "")));
        }
        return loads;
    }

    /** Reads one assembly. */
    public static Assembly assembly(Fields f) {
        return new Assembly(
                f.text("id", ""), f.text("name", ""), f.text("in"), f.measure("target", MASS), f.maybe("budget"));
    }
}
