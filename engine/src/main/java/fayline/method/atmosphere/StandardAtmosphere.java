package fayline.method.atmosphere;

import fayline.basis.units.Density;
import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import fayline.basis.units.Speed;
import fayline.basis.units.Temperature;
import java.util.Optional;

/**
 * The standard atmosphere [iso2533], the same as [usstd1976] up to 20 km: 288.15 K and 101 325 Pa at the sea, 6.5 K less for
 * each kilometre up to 11 km, 216.65 K above. Its height is geopotential, as a pressure altitude is; a geometric height z is
 * H = r z / (r + z) with r = 6 356 766 m. At 25 000 ft the two differ by 0.13 percent in pressure. The weather moves the
 * pressure by some 3 percent either way.
 */
public final class StandardAtmosphere {
    private static final double LOWEST_M = -5000;
    private static final double TROPOPAUSE_M = 11000;
    private static final double HIGHEST_M = 20000;
    private static final double SEA_K = 288.15;
    private static final double SEA_PA = 101_325;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double GRAVITY_M_PER_S2 = 9.80665;
    /** Of dry air: 8.31432 J/(mol K) over 28.9644 g/mol, as both standards take them. */
    private static final double GAS_J_PER_KG_K = 8.31432 / 0.0289644;

    private static final double HEAT_RATIO = 1.4;
    private static final double EARTH_M = 6_356_766;

    private StandardAtmosphere() {}

    /**
     * The standard air at a height.
     *
     * @param geopotential -5000 to 20 000 m
     * @return empty outside that range
     */
    public static Optional<StandardAir> air(Length geopotential) {
        double h = geopotential.metres();
        if (!(h >= LOWEST_M && h <= HIGHEST_M)) {
            return Optional.empty();
        }
        double low = Math.min(h, TROPOPAUSE_M);
        double kelvin = SEA_K - LAPSE_K_PER_M * low;
        double pascals = SEA_PA
                * Math.pow(kelvin / SEA_K, GRAVITY_M_PER_S2 / (GAS_J_PER_KG_K * LAPSE_K_PER_M))
                * Math.exp(-GRAVITY_M_PER_S2 * (h - low) / (GAS_J_PER_KG_K * kelvin));
        return Optional.of(new StandardAir(
                new Temperature(kelvin),
                new Pressure(pascals),
                new Density(pascals / (GAS_J_PER_KG_K * kelvin)),
                new Speed(Math.sqrt(HEAT_RATIO * GAS_J_PER_KG_K * kelvin))));
    }

    /**
     * Standard pressure at a height.
     *
     * @param geopotential -5000 to 20 000 m
     * @return empty outside that range
     */
    public static Optional<Pressure> at(Length geopotential) {
        return air(geopotential).map(StandardAir::pressure);
    }

    /** The geopotential height of a geometric one. */
    public static Length geopotential(Length geometric) {
        double z = geometric.metres();
        return new Length(EARTH_M * z / (EARTH_M + z));
    }
}
