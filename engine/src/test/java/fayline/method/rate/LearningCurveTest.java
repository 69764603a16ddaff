package fayline.method.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.rate.LearningCurve.Form;
import org.junit.jupiter.api.Test;

/** Printed examples lie in cases/checks/other/learning_curve.csv; here what must hold of any curve, and one sum by hand. */
class LearningCurveTest {
    @Test
    void should_leave_the_rate_at_every_doubling() {
        for (double rate : new double[] {0.7, 0.85, 1, 1.1}) {
            LearningCurve unit = new LearningCurve(rate, Form.UNIT);
            LearningCurve average = new LearningCurve(rate, Form.CUMULATIVE_AVERAGE);
            for (int n = 1; n < 200; n = 2 * n + 1) {
                assertEquals(rate, unit.unit(2 * n) / unit.unit(n), 1e-12);
                assertEquals(rate, average.average(2 * n) / average.average(n), 1e-12);
            }
        }
    }

    /** 100 h at 80 %: 100 + 80 + 70.2 + 64 = 314.2 by the single one, 4 x 100 x 0.64 = 256 by the average. */
    @Test
    void should_tell_the_two_forms_apart() {
        assertEquals(3.142, new LearningCurve(0.8, Form.UNIT).total(4), 0.0005);
        assertEquals(2.56, new LearningCurve(0.8, Form.CUMULATIVE_AVERAGE).total(4), 1e-12);
    }

    @Test
    void should_add_up_and_average() {
        for (Form form : Form.values()) {
            LearningCurve curve = new LearningCurve(0.83, form);
            double sum = 0;
            for (int n = 1; n <= 50; n++) {
                sum += curve.unit(n);
                assertEquals(sum, curve.total(n), 1e-9);
                assertEquals(sum / n, curve.average(n), 1e-9);
                assertTrue(n == 1 || curve.unit(n) < curve.unit(n - 1));
            }
            assertEquals(1, curve.unit(1), 0);
        }
    }

    @Test
    void should_refuse_no_rate_and_no_count() {
        assertThrows(IllegalArgumentException.class, () -> new LearningCurve(0, Form.UNIT));
        assertThrows(IllegalArgumentException.class, () -> new LearningCurve(Double.NaN, Form.UNIT));
        for (Form form : Form.values()) {
            LearningCurve curve = new LearningCurve(0.8, form);
            assertThrows(IllegalArgumentException.class, () -> curve.unit(0));
            assertThrows(IllegalArgumentException.class, () -> curve.total(0));
            assertThrows(IllegalArgumentException.class, () -> curve.average(0));
        }
    }
}
