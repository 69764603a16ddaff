package fayline.app.usecase.calc.laminate;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.laminate.Ply;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** A stack of plies and what acts on it, as a script gives it. */
final class StackForm {
    private static final String MM = "mm";
    private static final String PER_WIDTH = "N/mm";
    private static final int MOST_PLIES = 2000;

    private static final Form PLY = Form.empty()
            .takes("material", Kind.text(), "its name among the materials; the only one where there is one")
            .needs("angle", Kind.quantity("deg"), "from x counter-clockwise to the fibres")
            .takes("thickness", Kind.quantity(MM), "plyThickness where it is not given");

    private StackForm() {}

    /** The fields that say what the stack is. */
    static Form stack(Form form) {
        return form.takes("materials", Kind.named(MaterialForm.FORM.asKind()), "by names of your own")
                .takes("plies", Kind.list(PLY.asKind(), 1), "from z = -h/2 to z = +h/2")
                .takes("plyThickness", Kind.quantity(MM), "thickness of plies that say none")
                .takes("symmetric", Kind.truth(), "that the plies are one half, to be mirrored");
    }

    /** The fields that say what acts. */
    static Form load(Form form) {
        Form f = form;
        for (String n : List.of("Nx", "Ny", "Nxy")) {
            f = f.takes(n, Kind.quantity(PER_WIDTH), "force per width");
        }
        for (String m : List.of("Mx", "My", "Mxy")) {
            f = f.takes(m, Kind.quantity("N"), "moment per width; positive where the last ply is pulled");
        }
        for (String s : List.of("sx", "sy", "txy")) {
            f = f.takes(s, Kind.quantity("MPa"), "mean stress over the thickness, in place of a force per width");
        }
        return f.takes(
                        "dT",
                        Kind.quantity("K"),
                        "temperature less the stress-free one; negative after cooling from cure")
                .takes("cure", Kind.quantity("degC"), "stress-free temperature, in place of dT")
                .takes("service", Kind.quantity("degC"), "temperature asked, with cure");
    }

    static List<StrongPly> plies(Given in) {
        Map<String, Given> materials = in.named("materials");
        List<StrongPly> plies = new ArrayList<>();
        int i = 0;
        for (Given p : in.objects("plies")) {
            plies.add(ply("plies[" + i++ + "]", p, materials, in));
        }
        if (plies.isEmpty() || plies.size() > MOST_PLIES) {
            throw CalcInputException.of("plies", plies.size() + " plies", "1 to " + MOST_PLIES);
        }
        if (in.isTrue("symmetric")) {
            List<StrongPly> back = new ArrayList<>(plies);
            Collections.reverse(back);
            plies.addAll(back);
        }
        return plies;
    }

    private static StrongPly ply(String path, Given p, Map<String, Given> materials, Given in) {
        String only = materials.size() == 1 ? materials.keySet().iterator().next() : "";
        String name = p.text("material", only);
        Given m = materials.get(name);
        if (m == null) {
            throw CalcInputException.of(
                    path + ".material",
                    name.isEmpty() ? "nothing" : "\"" + name + "\"",
                    "one of " + String.join(", ", materials.keySet()));
        }
        if (!p.has("thickness") && !in.has("plyThickness")) {
            throw CalcInputException.of(path + ".thickness", "nothing", "a thickness, or plyThickness for all");
        }
        double t = p.has("thickness") ? p.si("thickness", MM) : in.si("plyThickness", MM);
        String at = "materials." + name;
        Ply ply = MaterialForm.made(path, () -> new Ply(MaterialForm.lamina(at, m), t, degrees(p.si("angle", "deg"))));
        return new StrongPly(ply, MaterialForm.strength(at, m), MaterialForm.limits(at, m));
    }

    /** Degrees from radians, without the last bit that would make a quarter turn none. */
    static double degrees(double radians) {
        double d = Math.toDegrees(radians);
        double near = Math.rint(d * 1e9) / 1e9;
        return Math.abs(near - d) < 1e-10 ? near : d;
    }

    static OptionalDouble change(Given in) {
        if (in.has("dT")) {
            if (in.has("cure") || in.has("service")) {
                throw CalcInputException.of("dT", "beside cure or service", "dT alone, or cure and service");
            }
            return OptionalDouble.of(in.si("dT", "K"));
        }
        if (in.has("cure") != in.has("service")) {
            throw CalcInputException.of(in.has("cure") ? "service" : "cure", "nothing", "cure and service together");
        }
        return in.has("cure")
                ? OptionalDouble.of(in.si("service", "degC") - in.si("cure", "degC"))
                : OptionalDouble.empty();
    }

    static SectionLoad load(Given in, double thicknessM) {
        return new SectionLoad(
                force(in, "Nx", "sx", thicknessM),
                force(in, "Ny", "sy", thicknessM),
                force(in, "Nxy", "txy", thicknessM),
                in.si("Mx", "N", 0),
                in.si("My", "N", 0),
                in.si("Mxy", "N", 0),
                change(in).orElse(0));
    }

    private static double force(Given in, String n, String stress, double thicknessM) {
        if (in.has(n) && in.has(stress)) {
            throw CalcInputException.of(stress, "beside " + n, "one of the two");
        }
        return in.has(n) ? in.si(n, PER_WIDTH) : in.si(stress, "MPa", 0) * thicknessM;
    }
}
