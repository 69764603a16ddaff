package fayline.method.vacuum;

import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import java.util.Optional;

/**
 * Pressure of the standard atmosphere: 101.325 (1 - 2.25577e-5 h)^5.25588 kPa, h in metres [iso2533], as printed in
 * [ashrae-f2017], chapter 1, eq. 3. The weather moves it by some 3 percent either way.
 */
public final class StandardAtmosphere {
    private static final double LOWEST_M = -5000;
    private static final double HIGHEST_M = 11000;

    private StandardAtmosphere() {}

    /**
     * Standard pressure at a height above the sea.
     *
     * @param elevation -5000 to 11000 m
     * @return empty outside that range
     */
    public static Optional<Pressure> at(Length elevation) {
        double h = elevation.metres();
        if (!(h >= LOWEST_M && h <= HIGHEST_M)) {
            return Optional.empty();
        }
        return Optional.of(Pressure.ofKilopascals(101.325 * Math.pow(1 - 2.25577e-5 * h, 5.25588)));
    }
}
