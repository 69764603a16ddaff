package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * Whether a planned heat softens the part.
 *
 * @param before glass transition before the heat
 * @param after glass transition after the heat
 * @param leastMargin least distance of the glass transition above the part during the heat; negative where it softens
 * @param tightestAt when that is, from the start of the heat
 * @param hottestNow the hottest at which the part may be put now
 * @param softens whether the margin asked for is undercut
 * @param list what to support, unload or take off before the heat, in the order of the loads
 * @param figure how it comes about; empty where it is not covered
 * @param findings what must be said
 */
public record HeatPlanResult(
        Optional<Temperature> before,
        Optional<Temperature> after,
        Optional<TemperatureDifference> leastMargin,
        Optional<TimeSpan> tightestAt,
        Optional<Temperature> hottestNow,
        boolean softens,
        List<String> list,
        Optional<Figure> figure,
        List<Finding> findings) {
    /** Copies the lists. */
    public HeatPlanResult {
        list = List.copyOf(list);
        findings = List.copyOf(findings);
    }
}
