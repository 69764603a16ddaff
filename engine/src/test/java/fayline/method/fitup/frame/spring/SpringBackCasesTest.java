package fayline.method.fitup.frame.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fayline.checks.FitCase;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.FrameCases;
import fayline.method.fitup.frame.pin.LatchPin;
import fayline.method.fitup.frame.pin.PinCalculator;
import fayline.method.fitup.frame.pin.PinPlace;
import fayline.method.fitup.frame.pin.PinShift;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every spring-back case; its source (hand, energy, an independent beam program) stands in the case. */
class SpringBackCasesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "F29-offset-beams-equal",
                "F30-offset-beams-stiff-part",
                "F31-canopy-frame-feet",
                "F44-stepped-bulkhead-three-clamps",
                "F46-strip-on-three-soft-bonds"
            })
    void should_hold_when_the_frame_is_plane(String name) {
        FitCase c = FitCase.read("checks/fitup/" + name);
        SpringBackResult result = SpringBackCalculator.calculate(FrameCases.inPlane(c.inputs()));
        SpringBackShape shape = result.shape().orElseThrow();
        c.holds("clampForces", c.expected(), forces(shape));
        c.holds(
                "releasedDisplacement",
                c.expected(),
                shape.watched().stream().map(Watched::shiftMm).toList());
        List<FitCase.Node> rows = c.expected().get("sensitivity").items();
        assertEquals(rows.size(), shape.sensitivity().rows());
        for (int w = 0; w < rows.size(); w++) {
            List<Double> row = rows.get(w).numbers();
            for (int j = 0; j < row.size(); j++) {
                c.holds("sensitivity", row.get(j), shape.sensitivity().get(w, j));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"F32-door-frame-latch-pins", "F45-curved-hatch-ring"})
    void should_hold_when_the_frame_is_in_space(String name) {
        FitCase c = FitCase.read("checks/fitup/" + name);
        SpringBackShape shape = SpringBackCalculator.calculate(FrameCases.inSpace(c.inputs()))
                .shape()
                .orElseThrow();
        c.holds("clampForces", c.expected(), forces(shape));
        c.holds(
                "clampDisplacementAfterRelease",
                c.expected(),
                shape.watched().stream().map(Watched::shiftMm).toList());
        List<LatchPin> pins = c.inputs().get("pins").items().stream()
                .map(p -> new LatchPin(
                        p.text("id"),
                        new PinPlace(
                                (int) p.number("node"),
                                FrameCases.point(p.get("offset").numbers()),
                                true),
                        Axis.of(FrameCases.point(p.get("axis").numbers())),
                        p.number("radialClearance"),
                        Optional.empty()))
                .toList();
        for (PinShift pin :
                PinCalculator.calculate(pins, shape, Optional.empty()).pins()) {
            FitCase.Node wanted = c.expected().get("pins").get(pin.pin().id());
            c.holds(
                    "displacement",
                    wanted,
                    List.of(
                            pin.displacement().xMm(),
                            pin.displacement().yMm(),
                            pin.displacement().zMm()));
            c.holds("lateral", wanted, pin.lateralMm());
            c.holds("clearanceLeft", wanted, pin.clearanceLeftMm());
            assertEquals(wanted.text("status"), pin.binds() ? "BINDS" : "OK");
            List<FitCase.Node> six =
                    c.expected().get("sensitivityPins").get(pin.pin().id()).items();
            for (int k = 0; k < six.size(); k++) {
                double[] row = pin.sensitivity().row(k);
                for (int j = 0; j < row.length; j++) {
                    c.holds("sensitivityPins", six.get(k).numbers().get(j), row[j]);
                }
            }
        }
    }

    private static List<Double> forces(SpringBackShape shape) {
        return shape.clampForces().stream().map(ClampForce::forceN).toList();
    }
}
