package fayline.method.cure;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * How old a mix is, counted at the reference temperature.
 *
 * @param age the equivalent age
 * @param remaining how long to wait until the needed age, zero when it is reached; empty where no age was asked for
 * @param ageOfMean what the averaged temperature would give: never used, shown because it is always too young
 * @param figure how the age comes about
 * @param findings what must be said
 */
public record EquivalentAgeResult(
        TimeSpan age, Optional<TimeSpan> remaining, TimeSpan ageOfMean, Figure figure, List<Finding> findings) {
    /** Copies the list. */
    public EquivalentAgeResult {
        findings = List.copyOf(findings);
    }
}
