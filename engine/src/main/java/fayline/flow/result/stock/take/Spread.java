package fayline.flow.result.stock.take;

import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.flow.result.stock.Amount;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How well a mass is known: by the digits in which it was read, or by what a label may be off. */
final class Spread {
    private static final Pattern NUMBER = Pattern.compile("^\\s*[0-9]+(?:[.,]([0-9]+))?(?![0-9/ ]*/)");
    private static final double ROOT_3 = Math.sqrt(3);
    private static final double[] UP_TO_KG = {0.05, 0.1, 0.2, 0.3, 0.5, 1, 10, 15};
    /** Of the same steps: a share of the mass where below one half, else grams. */
    private static final double[] SHARE = {0.09, 0, 0.045, 0, 0.03, 0, 0.015, 0};

    private static final double[] GRAMS = {0, 4.5, 0, 9, 0, 15, 0, 150};
    private static final double ABOVE = 0.01;

    private Spread() {}

    /**
     * Standard uncertainty of a reading: anything within one step of its last digit is taken for as likely (two roundings, of the vessel
     * and of the whole; common practice, no source), so the step over root 3 [jcgm100], 4.3.7. A reading without a plain number is
     * taken to one percent.
     */
    static Mass ofReading(String typed, Mass value) {
        Matcher m = NUMBER.matcher(typed);
        if (m.find()) {
            int digits = m.group(1) == null ? 0 : m.group(1).length();
            String step = digits == 0 ? "1" : "0." + "0".repeat(digits - 1) + "1";
            Optional<Quantity> one = Amount.read(step + typed.substring(m.end()));
            if (one.isPresent() && one.get() instanceof Mass mass) {
                return new Mass(mass.kilograms() / ROOT_3);
            }
        }
        return new Mass(value.kilograms() * 0.01 / ROOT_3);
    }

    /**
     * Standard uncertainty of what a label says, where nobody weighed what came: the tolerable deficiency of a package [oiml-r87], either
     * way, as a rectangle.
     */
    static Mass ofLabel(Mass label) {
        double kg = label.kilograms();
        for (int i = 0; i < UP_TO_KG.length; i++) {
            if (kg <= UP_TO_KG[i]) {
                return new Mass((SHARE[i] > 0 ? kg * SHARE[i] : GRAMS[i] / 1000) / ROOT_3);
            }
        }
        return new Mass(kg * ABOVE / ROOT_3);
    }
}
