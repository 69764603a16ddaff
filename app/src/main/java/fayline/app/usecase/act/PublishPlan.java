package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.plan.Plan;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;

/** The plan that the crew was told, kept so that later changes can be shown against it. */
public final class PublishPlan {
    private final ShopRecord shop;

    /** On a shop's record. */
    public PublishPlan(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a plan.
     *
     * @param sent who sends it under which id
     * @param definition hash of the definition it was made from
     * @param plan the plan
     * @param origin how it came about, in a sentence
     */
    public Outcome publish(Sent sent, String definition, Plan plan, String origin) {
        List<Value> steps = new ArrayList<>();
        for (Plan.PlannedStep s : plan.steps()) {
            steps.add(Value.Fields.NONE
                    .with("step", s.step())
                    .with("start", s.start().toString())
                    .with("hands-end", s.handsEnd().toString())
                    .with("end", s.end().toString())
                    .with("people", s.people())
                    .with("places", s.places()));
        }
        Value.Fields planned = Value.Fields.NONE.with("steps", new Value.Many(steps));
        return shop.append(NewEntry.of(
                sent.client(),
                sent.by(),
                shop.now(),
                "",
                EntryKind.PLAN_PUBLISHED,
                planned.with("definition", definition)
                        .with("hash", planned.sha256())
                        .with("made", origin)));
    }
}
