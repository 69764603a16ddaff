package fayline.method.drive;

import fayline.basis.numeric.RootFinder;
import java.util.OptionalDouble;

/**
 * Two toothed pulleys and a belt, at the pitch line: d = z p / pi; sin(f) = (d2 - d1) / 2C;
 * L = 2 C cos(f) + pi (d1 + d2) / 2 + f (d2 - d1), exact [budynas2015].
 *
 * @param pitchM distance of teeth along the belt; positive
 * @param driverTeeth teeth on the engine's side; 6 or more
 * @param drivenTeeth teeth on the propeller's side; 6 or more
 */
public record BeltDrive(double pitchM, int driverTeeth, int drivenTeeth) {
    /** The fewest teeth of a pulley that is looked at. */
    public static final int LEAST_TEETH = 6;

    /** The fewest teeth that should be in mesh (common practice, no source). */
    public static final int LEAST_IN_MESH = 6;

    /**
     * Refuses what is no drive.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public BeltDrive {
        if (!(pitchM > 0 && Double.isFinite(pitchM))) {
            throw new IllegalArgumentException("a belt's pitch is above nought, found " + pitchM + " m");
        }
        if (driverTeeth < LEAST_TEETH || drivenTeeth < LEAST_TEETH) {
            throw new IllegalArgumentException(
                    "a pulley has at least 6 teeth, found " + driverTeeth + " and " + drivenTeeth);
        }
    }

    /** Turns of the engine for one of the propeller. */
    public double ratio() {
        return drivenTeeth / (double) driverTeeth;
    }

    /** Pitch diameter of the engine's pulley, in metres. */
    public double driverM() {
        return driverTeeth * pitchM / Math.PI;
    }

    /** Pitch diameter of the propeller's pulley, in metres. */
    public double drivenM() {
        return drivenTeeth * pitchM / Math.PI;
    }

    /** The centre distance at which both pulleys touch at their pitch lines, in metres: every centre is larger. */
    public double leastCentreM() {
        return (driverM() + drivenM()) / 2;
    }

    /**
     * Length of belt at a centre distance, in metres.
     *
     * @param centreM more than {@link #leastCentreM}
     * @throws IllegalArgumentException if the pulleys would touch
     */
    public double beltM(double centreM) {
        if (!(centreM > leastCentreM() && Double.isFinite(centreM))) {
            throw new IllegalArgumentException("the pulleys touch: the centre distance must exceed "
                    + 1e3 * leastCentreM() + " mm, found " + 1e3 * centreM + " mm");
        }
        double apart = drivenM() - driverM();
        double lean = lean(centreM);
        return 2 * centreM * Math.cos(lean) + Math.PI * (driverM() + drivenM()) / 2 + lean * apart;
    }

    /**
     * Centre distance for a length of belt, in metres.
     *
     * @return empty where the belt is too short to go round pulleys that do not touch
     */
    public OptionalDouble centreM(double beltM) {
        double low = leastCentreM() * (1 + 1e-12);
        if (!(beltM > beltM(low) && Double.isFinite(beltM))) {
            return OptionalDouble.empty();
        }
        return RootFinder.bracketed(c -> beltM(c) - beltM, low, Math.max(beltM, 2 * low), 1e-12);
    }

    /** Angle of the belt round the smaller pulley, in radians. */
    public double wrapRad(double centreM) {
        return Math.PI - 2 * Math.abs(lean(centreM));
    }

    /** Teeth of the smaller pulley in mesh; the whole part counts. */
    public double inMesh(double centreM) {
        return Math.min(driverTeeth, drivenTeeth) * wrapRad(centreM) / (2 * Math.PI);
    }

    /** Speed of the belt in metres a second. */
    public double beltSpeedMPerS(double engineTurnsPerS) {
        return driverTeeth * pitchM * engineTurnsPerS;
    }

    /**
     * Load on each shaft in newtons where the slack side of the belt carries a part of the tight side's: the pull F of the power
     * at the belt's speed, tight F / (1 - slack), both added along the centres.
     *
     * @param powerW power carried; above nought
     * @param engineTurnsPerS speed of the engine; above nought
     * @param slack slack side over tight side, 0 to below 1; the belt's maker says how tight it is set
     */
    public double hubLoadN(double powerW, double engineTurnsPerS, double slack, double centreM) {
        if (!(powerW > 0 && engineTurnsPerS > 0 && slack >= 0 && slack < 1)) {
            throw new IllegalArgumentException(
                    "power and speed are above nought and the slack side is 0 to below 1 of the tight side");
        }
        double pull = powerW / beltSpeedMPerS(engineTurnsPerS);
        double tight = pull / (1 - slack);
        double lean = lean(centreM);
        double along = (tight + slack * tight) * Math.cos(lean);
        double across = (tight - slack * tight) * Math.sin(lean);
        return Math.hypot(along, across);
    }

    /** Common teeth: how seldom the same tooth meets the same gap; 1 is the most even wear. */
    public static int commonFactor(int a, int b) {
        return b == 0 ? Math.abs(a) : commonFactor(b, a % b);
    }

    private double lean(double centreM) {
        return Math.asin((drivenM() - driverM()) / (2 * centreM));
    }
}
