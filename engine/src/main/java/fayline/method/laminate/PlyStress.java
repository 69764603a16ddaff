package fayline.method.laminate;

/**
 * Stress at one height of one ply, in the ply's own axes.
 *
 * @param s1Pa along the fibres, Pa
 * @param s2Pa across, Pa
 * @param t12Pa shear, Pa
 */
public record PlyStress(double s1Pa, double s2Pa, double t12Pa) {
    /** The sum of two. */
    public PlyStress plus(PlyStress o) {
        return new PlyStress(s1Pa + o.s1Pa, s2Pa + o.s2Pa, t12Pa + o.t12Pa);
    }

    /** This so many times. */
    public PlyStress times(double f) {
        return new PlyStress(s1Pa * f, s2Pa * f, t12Pa * f);
    }

    /** Stress along x of a ply that is turned so, Pa. */
    public double alongXPa(double angleDeg) {
        Turn t = Turn.by(angleDeg);
        return s1Pa * t.cos() * t.cos() + s2Pa * t.sin() * t.sin() - 2 * t12Pa * t.cos() * t.sin();
    }

    /** Stress along y of a ply that is turned so, Pa. */
    public double alongYPa(double angleDeg) {
        Turn t = Turn.by(angleDeg);
        return s1Pa * t.sin() * t.sin() + s2Pa * t.cos() * t.cos() + 2 * t12Pa * t.cos() * t.sin();
    }

    /** Shear stress in x and y of a ply that is turned so, Pa. */
    public double shearXyPa(double angleDeg) {
        Turn t = Turn.by(angleDeg);
        return (s1Pa - s2Pa) * t.cos() * t.sin() + t12Pa * (t.cos() * t.cos() - t.sin() * t.sin());
    }
}
