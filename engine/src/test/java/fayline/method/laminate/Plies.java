package fayline.method.laminate;

import java.util.ArrayList;
import java.util.List;

/** Materials of the check tables and short ways to write stacks. */
public final class Plies {
    private static final double GPA = 1e9;

    /** T300/5208 [tsai-hahn1980], recalled. */
    public static final Lamina T300 = gpa(181, 10.3, 7.17, 0.28, 0.02e-6, 22.5e-6);

    /** AS4/3501-6, the 1998 failure exercise, recalled. */
    public static final Lamina AS4 = gpa(126, 11, 6.6, 0.28, -1e-6, 26e-6);

    private Plies() {}

    public static Lamina gpa(double e1, double e2, double g12, double nu12, double alpha1, double alpha2) {
        return new Lamina(e1 * GPA, e2 * GPA, g12 * GPA, nu12, alpha1, alpha2);
    }

    /** Plies of one thickness, from z = -h/2. */
    public static Laminate stack(Lamina lamina, double thicknessMm, double... angles) {
        List<Ply> plies = new ArrayList<>();
        for (double a : angles) {
            plies.add(new Ply(lamina, thicknessMm / 1e3, a));
        }
        return Laminate.of(plies);
    }
}
