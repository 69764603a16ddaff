package fayline.app.usecase.traveller;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One entry about what went into a step: who, at which step and when; the deed itself says the rest. */
final class StepDeed {
    private final ShopRecord shop;
    private final Sent sent;
    private final String step;
    private final BenchTime time;

    StepDeed(ShopRecord shop, Sent sent, String step, BenchTime time) {
        this.shop = shop;
        this.sent = sent;
        this.step = step;
        this.time = time;
    }

    /** What is checked of a deed, and what is to be said of it though it is taken. */
    @FunctionalInterface
    interface Body {
        /**
         * Checks.
         *
         * @param d the definition
         * @param checks takes what is wrong
         * @param at when it happened
         * @param cautions takes what is to be said
         * @return the entry's own fields
         */
        Value.Fields of(Definition d, Checks checks, Instant at, List<Finding> cautions);
    }

    Outcome record(EntryKind kind, String refusal, Body body) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definitionWith(StartStep.project(step), StartStep.made(step));
            if (definition.isEmpty()) {
                return Outcome.refused("The project of " + step + " is not in this shop.");
            }
            Definition d = definition.get();
            Checks checks = new Checks(d);
            checks.step(step);
            checks.person("by", sent.by());
            Instant at = time.at().orElseGet(() -> shop.timeOf(sent));
            checks.time(sent, at, shop.now());
            List<Finding> cautions = new ArrayList<>();
            Value.Fields own = body.of(d, checks, at, cautions);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(refusal, checks.problems());
            }
            Value.Fields payload = own.with("step", step)
                    .with("at", at.toString())
                    .withUnlessEmpty("told", time.toldOf(shop, sent, at));
            return shop.append(Checks.entry(shop, sent, StartStep.project(step), kind, payload))
                    .with(cautions);
        });
    }
}
