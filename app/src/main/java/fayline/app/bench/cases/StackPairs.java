package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.basis.units.UnitOfMeasure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Rows of stacks of plies: stiffness, constants, expansion, warp, stress under moments. */
final class StackPairs extends FormPairs {
    private static final Pattern STIFFNESS = Pattern.compile("([ABD]) ((?:\\d\\d ?)+)");
    private static final Pattern STRAIN = Pattern.compile("(eps0|kappa) (x y|x y xy)");
    private static final Pattern MOMENT = Pattern.compile("case ([12]) sigma_([xy]) at z=-h/([24])(?: in 90 ply)?");
    private static final Map<String, String> UNITS = Map.of("A", "N/mm", "B", "N", "D", "N mm");
    private static final Map<String, String[]> NAMES = names();

    private static Map<String, String[]> names() {
        Map<String, String[]> n = new LinkedHashMap<>();
        n.put("Ex", new String[] {"/constants/Ex", "GPa"});
        n.put("Ey", new String[] {"/constants/Ey", "GPa"});
        n.put("Gxy", new String[] {"/constants/Gxy", "GPa"});
        n.put("nuxy", new String[] {"/constants/nuxy", "-"});
        n.put("nuyx", new String[] {"/constants/nuyx", "-"});
        n.put("Efx = 12/(h^3 d11)", new String[] {"/constants/flexEx", "GPa"});
        n.put("Efy = 12/(h^3 d22)", new String[] {"/constants/flexEy", "GPa"});
        n.put("alpha_x", new String[] {"/expansion/epsX", "1e-6/K"});
        n.put("alpha_y", new String[] {"/expansion/epsY", "1e-6/K"});
        n.put("alpha_xy (engineering)", new String[] {"/expansion/gammaXy", "1e-6/K"});
        n.put("bow = |kx| L^2/8 over L", new String[] {"/warp/bow", "mm"});
        n.put("bending stiffness per width of a narrow strip, 1/d11", new String[] {"/bending/narrow", "N mm"});
        n.put("ky/kx", new String[] {"/bending/kappaYPerKappaX", "-"});
        n.put("kxy/kx", new String[] {"/bending/kappaXyPerKappaX", "-"});
        return n;
    }

    StackPairs() {
        super(
                "laminate",
                "(mat\\d\\.)?(material|E1|E2|nu12|G12|alpha1|alpha2)|G13|G23|plies from z=-h/2.*|ply t|ply material no\\."
                        + "|dT for stress|dT|L|W|strip width|coupon width|load case [12] M[xy] per width",
                "[ABD] (\\d\\d ?)+|(eps0|kappa) x y( xy)?|case [12] sigma_.+|linear plate theory applicable \\(bow <= h\\)"
                        + "|first ply sigma1 sigma2 tau12 at dT|"
                        + String.join(
                                "|",
                                names().keySet().stream().map(Pattern::quote).toList()));
    }

    @Override
    Optional<Reckoned> found(PairQuestion question, String name) {
        ObjectNode in = stack(question);
        take(question, "dT for stress", in, "dT");
        take(question, "dT", in, "dT");
        take(question, "L", in, "length");
        Matcher moment = MOMENT.matcher(name);
        if (moment.matches()) {
            in.set("1".equals(moment.group(1)) ? "Mx" : "My", quantity(1, "N"));
            // Printed at the face of the ply that lies further out: row 1 of ply 1, or the near face of ply 2.
            int row = "2".equals(moment.group(3)) ? 0 : 2;
            return at(told(in), "MPa", "/stresses/" + row + "/s" + moment.group(2));
        }
        JsonNode told = told(in);
        Matcher stiffness = STIFFNESS.matcher(name);
        if (stiffness.matches()) {
            String which = stiffness.group(1);
            return at(told, UNITS.getOrDefault(which, "-"), below("/" + which, stiffness.group(2)));
        }
        Matcher strain = STRAIN.matcher(name);
        if (strain.matches()) {
            boolean eps = "eps0".equals(strain.group(1));
            Stream<String> words = eps ? Stream.of("epsX epsY gammaXy") : Stream.of("kappaX kappaY kappaXy");
            String all = words.findFirst().orElseThrow();
            String asked = strain.group(2).endsWith("xy") ? all : all.substring(0, all.lastIndexOf(' '));
            return at(told, eps ? "1e-6" : "1/m", below("/free", asked));
        }
        if (name.startsWith("first ply")) {
            return at(told, "MPa", below("/stresses/0", "s1 s2 t12"));
        }
        if (name.startsWith("linear")) {
            return Optional.of(new Reckoned(told.at("/warp/linear").asBoolean(), UnitOfMeasure.ONE));
        }
        String[] known = NAMES.getOrDefault(name, new String[] {"", "-"});
        return known[0].isEmpty() ? Optional.empty() : at(told, known[1], known[0]);
    }
}
