package fayline.app.usecase.calc.laminate;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.basis.finding.InputProblem;
import fayline.method.laminate.Lamina;
import fayline.method.laminate.LaminaRules;
import fayline.method.laminate.strength.PlyStrength;
import fayline.method.laminate.strength.StrainLimits;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** One ply's material as a script gives it: by direction, or alike in all directions. */
final class MaterialForm {
    private static final String GPA = "GPa";
    private static final String MPA = "MPa";
    private static final String PER_K = "1/K";

    private static final Form STRENGTH = Form.empty()
            .needs("XT", Kind.quantity(MPA), "pulled along the fibres")
            .needs("XC", Kind.quantity(MPA), "pressed along the fibres, a positive number")
            .needs("YT", Kind.quantity(MPA), "pulled across")
            .needs("YC", Kind.quantity(MPA), "pressed across, a positive number")
            .needs("S", Kind.quantity(MPA), "in-plane shear")
            .takes("ST", Kind.quantity(MPA), "shear across the fibres; YC/2 where it is not given");

    private static final Form STRAINS = Form.empty()
            .needs("e1t", Kind.quantity("-"), "pulled along the fibres")
            .needs("e1c", Kind.quantity("-"), "pressed along the fibres, a positive number")
            .needs("e2t", Kind.quantity("-"), "pulled across")
            .needs("e2c", Kind.quantity("-"), "pressed across, a positive number")
            .needs("g12", Kind.quantity("-"), "in-plane shear, engineering");

    static final Form FORM = Form.empty()
            .takes("E1", Kind.quantity(GPA), "modulus along the fibres")
            .takes("E2", Kind.quantity(GPA), "modulus across")
            .takes("G12", Kind.quantity(GPA), "shear modulus")
            .takes("nu12", Kind.quantity("-"), "contraction across over stretch along")
            .takes("alpha1", Kind.quantity(PER_K), "expansion along; 0 where it is not given")
            .takes("alpha2", Kind.quantity(PER_K), "expansion across; 0 where it is not given")
            .takes("stifferAcross", Kind.truth(), "that E2 above E1 is meant")
            .takes("E", Kind.quantity(GPA), "modulus of a material alike in all directions, in place of E1 to nu12")
            .takes("nu", Kind.quantity("-"), "its Poisson's ratio")
            .takes("alpha", Kind.quantity(PER_K), "its expansion; 0 where it is not given")
            .takes("strength", STRENGTH.asKind(), "what it bears")
            .takes(
                    "strainLimits",
                    STRAINS.asKind(),
                    "strains it bears; strength over modulus where they are not given");

    private MaterialForm() {}

    static Lamina lamina(String path, Given m) {
        if (m.has("E")) {
            needed(path, m, "nu");
            for (String other : List.of("E1", "E2", "G12", "nu12")) {
                if (m.has(other)) {
                    throw CalcInputException.of(path + "." + other, "beside E", "E and nu, or E1, E2, G12 and nu12");
                }
            }
            return made(path, () -> Lamina.isotropic(m.si("E", GPA), m.si("nu", "-"), m.si("alpha", PER_K, 0)));
        }
        for (String name : List.of("E1", "E2", "G12", "nu12")) {
            needed(path, m, name);
        }
        List<InputProblem> broken = LaminaRules.ofLamina(
                m.si("E1", GPA),
                m.si("E2", GPA),
                m.si("G12", GPA),
                m.si("nu12", "-"),
                m.si("alpha1", PER_K, 0),
                m.si("alpha2", PER_K, 0),
                m.isTrue("stifferAcross"));
        if (!broken.isEmpty()) {
            throw new CalcInputException(broken.stream()
                    .map(p -> new InputProblem(
                            p.severity(), "", 0, path + "." + p.key(), p.found(), p.expected(), p.suggestion()))
                    .toList());
        }
        return new Lamina(
                m.si("E1", GPA),
                m.si("E2", GPA),
                m.si("G12", GPA),
                m.si("nu12", "-"),
                m.si("alpha1", PER_K, 0),
                m.si("alpha2", PER_K, 0),
                m.isTrue("stifferAcross"));
    }

    static Optional<PlyStrength> strength(String path, Given m) {
        return m.maybeObject("strength")
                .map(s -> made(path + ".strength", () -> {
                    double yc = s.si("YC", MPA);
                    return new PlyStrength(
                            s.si("XT", MPA),
                            s.si("XC", MPA),
                            s.si("YT", MPA),
                            yc,
                            s.si("S", MPA),
                            s.si("ST", MPA, yc / 2));
                }));
    }

    static Optional<StrainLimits> limits(String path, Given m) {
        return m.maybeObject("strainLimits")
                .map(s -> made(
                        path + ".strainLimits",
                        () -> new StrainLimits(
                                s.si("e1t", "-"),
                                s.si("e1c", "-"),
                                s.si("e2t", "-"),
                                s.si("e2c", "-"),
                                s.si("g12", "-"))));
    }

    /** Makes a value; what it refuses is bad input of a field. */
    static <T> T made(String field, Supplier<T> maker) {
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            throw CalcInputException.of(field, String.valueOf(e.getMessage()), "what the rule asks");
        }
    }

    private static void needed(String path, Given m, String name) {
        if (!m.has(name)) {
            throw CalcInputException.of(path + "." + name, "nothing", "E1, E2, G12 and nu12, or E and nu");
        }
    }
}
