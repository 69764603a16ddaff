package fayline.method.atmosphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Length;
import org.junit.jupiter.api.Test;

/** The printed tables are checked where all tables are; here what joins the layers and where they end. */
class StandardAtmosphereTest {
    private static StandardAir air(double metres) {
        return StandardAtmosphere.air(new Length(metres)).orElseThrow();
    }

    @Test
    void should_give_22632_pascals_at_the_tropopause() {
        // US Standard Atmosphere 1976, base of the second layer: 22 632.06 Pa, from memory.
        assertEquals(22632.06, air(11000).pressure().si(), 0.05);
        assertEquals(216.65, air(11000).temperature().si(), 1e-9);
    }

    @Test
    void should_have_no_step_at_the_tropopause_and_none_warmer_above() {
        assertEquals(
                air(11000 - 1e-6).pressure().si(), air(11000 + 1e-6).pressure().si(), 1e-5);
        // 20 km: 5474.89 Pa, from memory.
        assertEquals(5474.89, air(20000).pressure().si(), 0.05);
        assertEquals(216.65, air(20000).temperature().si(), 1e-9);
    }

    @Test
    void should_refuse_heights_outside_its_layers() {
        assertTrue(StandardAtmosphere.air(new Length(-5000)).isPresent());
        assertTrue(StandardAtmosphere.air(new Length(-5000.1)).isEmpty());
        assertTrue(StandardAtmosphere.air(new Length(20000)).isPresent());
        assertTrue(StandardAtmosphere.air(new Length(20000.1)).isEmpty());
    }

    @Test
    void should_put_a_geometric_height_lower_as_geopotential() {
        assertEquals(10984, StandardAtmosphere.geopotential(new Length(11003)).metres(), 0.5);
    }
}
