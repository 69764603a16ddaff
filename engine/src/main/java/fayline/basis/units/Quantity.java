package fayline.basis.units;

/** A physical quantity held in SI. Each kind is its own type, so that a mass is never taken for an areal mass. */
public sealed interface Quantity
        permits Angle,
                Area,
                ArealMass,
                BendingStiffness,
                LineForce,
                Density,
                Force,
                Fraction,
                Length,
                Mass,
                MolarEnergy,
                Pressure,
                Speed,
                Stress,
                Temperature,
                TemperatureDifference,
                TimeSpan,
                Vacuum,
                Volume {
    /** The value in the coherent SI unit of its kind. */
    double si();

    /**
     * Checks that a value is a finite number.
     *
     * @param what the name of the quantity, for the message
     * @param value the value in SI
     * @throws IllegalArgumentException if the value is infinite or no number
     */
    static void requireFinite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a finite number, got " + value);
        }
    }
}
