package fayline.app.usecase.book;

import fayline.flow.project.design.Made;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.change.Change;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.stock.Order;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.result.coupon.CouponResult;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.quantity.PlyCut;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the record holds of one part or joint.
 *
 * @param made the part or joint
 * @param above the assemblies it stands in, by name, the outermost first
 * @param part what was computed of it, where it is a part
 * @param joint what was computed of it, where it is a joint
 * @param steps its steps in order, done or not
 * @param readings what was read of it or of its steps, in the order of time; those of fits apart
 * @param fits its fits, with all that was read of them
 * @param deviations what came out other than drawn
 * @param faults what visits found on it
 * @param coupons what its witness pieces showed
 * @param orders what was ordered from outside for it
 * @param changes alterations of the design that are on it
 * @param mendings what was corrected
 * @param late entries that were made long after what they tell
 */
public record Chapter(
        Made made,
        List<String> above,
        Optional<PartResult> part,
        Optional<JointResult> joint,
        List<Done> steps,
        List<TakenReading> readings,
        List<FitResult> fits,
        List<Deviation> deviations,
        List<FoundFault> faults,
        List<CouponResult> coupons,
        List<Order> orders,
        List<Change> changes,
        List<Mending> mendings,
        List<Late> late) {
    /** Copies the lists. */
    public Chapter {
        above = List.copyOf(above);
        steps = List.copyOf(steps);
        readings = List.copyOf(readings);
        fits = List.copyOf(fits);
        deviations = List.copyOf(deviations);
        faults = List.copyOf(faults);
        coupons = List.copyOf(coupons);
        orders = List.copyOf(orders);
        changes = List.copyOf(changes);
        mendings = List.copyOf(mendings);
        late = List.copyOf(late);
    }

    /** Whether anything was done or read. */
    public boolean begun() {
        return steps.stream().anyMatch(Done::begun)
                || !readings.isEmpty()
                || !deviations.isEmpty()
                || !faults.isEmpty()
                || !orders.isEmpty()
                || fits.stream().anyMatch(f -> !f.states().isEmpty());
    }

    /** The step in which a ply is laid; the step that cuts it has it in its kit, too. */
    public Optional<Done> ofPly(PlyCut ply) {
        return steps.stream()
                .filter(s -> s.step().stage() > 0 && s.step().plies().contains(ply))
                .findFirst();
    }

    /**
     * A step with what the record holds of it.
     *
     * @param step the step
     * @param record what is recorded
     * @param made what went into it: lots, mixes, plies
     * @param air the shop's air while it was done, or last before
     * @param signature who signed it, where it is a hold point and was signed
     */
    public record Done(
            StepResult step, StepRecord record, StepMade made, List<TakenReading> air, Optional<Signature> signature) {
        /** Copies the list. */
        public Done {
            air = List.copyOf(air);
        }

        /** What was told of one of its plies alone; empty where nobody ticked it. */
        public Optional<Laid> laid(PlyCut ply) {
            return made.ply(String.valueOf(step.plies().indexOf(ply) + 1));
        }

        /** Whether anything is recorded of it. */
        public boolean begun() {
            return record.started().isPresent()
                    || record.finished().isPresent()
                    || !record.notes().isEmpty()
                    || !made.isEmpty();
        }
    }

    /**
     * Who signed a hold point.
     *
     * @param by the person's id
     * @param at when
     * @param entry the entry that says so
     * @param signIn the entry of the sign-in under which it was done; empty where nobody signs in: then it is a name, not proven
     */
    public record Signature(String by, Instant at, long entry, Optional<Long> signIn) {}

    /**
     * Something that was corrected.
     *
     * @param entry the correction
     * @param of the entry that was wrong
     * @param at when it was corrected
     * @param by who
     * @param what what the wrong entry told, as {@code step-finished}
     * @param about the step, part or fit it is about
     * @param why the reason, as typed
     * @param withdrawn whether it was taken back altogether
     */
    public record Mending(
            long entry, long of, Instant at, String by, String what, String about, String why, boolean withdrawn) {}

    /**
     * An entry that was made long after what it tells.
     *
     * @param entry the entry
     * @param told when it was made
     */
    public record Late(long entry, Instant told) {}
}
