package fayline.flow.result.quantity;

import fayline.basis.finding.Figure;
import fayline.basis.units.Area;
import fayline.basis.units.Mass;
import java.util.List;

/**
 * What goes into one joint.
 *
 * @param joint the joint
 * @param faying the faying area
 * @param inJoint mass of adhesive that stays in the joint
 * @param adhesive mass of adhesive to mix, squeeze-out included
 * @param needs what is drawn from the stores for it, over all its steps
 * @param cost cost of everything drawn that has a price
 * @param personMinutes hands-on time over all its steps at the least crew
 * @param figures how the amounts came about
 */
public record JointResult(
        String joint,
        Area faying,
        Mass inJoint,
        Mass adhesive,
        List<Need> needs,
        double cost,
        int personMinutes,
        List<Figure> figures) {
    /** Copies the lists. */
    public JointResult {
        needs = List.copyOf(needs);
        figures = List.copyOf(figures);
    }
}
