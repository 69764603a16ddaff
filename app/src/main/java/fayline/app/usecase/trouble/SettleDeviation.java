package fayline.app.usecase.trouble;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.Signers;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Disposition;
import fayline.flow.record.trouble.Rework;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The lead decides about a deviation. Where structure is touched the decision has an engineering note, and holds once a second
 * person, who is not the first, agrees. That is the shop's own record and no licensed signature.
 */
public final class SettleDeviation {
    private static final String REFUSED = "The decision was not recorded.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public SettleDeviation(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is decided.
     *
     * @param disposition a word of {@link Disposition}
     * @param note the engineering note; needed where structure is touched
     * @param structural whether structure is touched, where that was not said before
     * @param second who agrees, where a second person is picked on the same screen; else empty
     * @param rework what is to be done, for rework
     */
    public record Decision(String disposition, String note, boolean structural, String second, List<Rework> rework) {
        /** Copies the list. */
        public Decision {
            rework = List.copyOf(rework);
        }
    }

    /**
     * Records a decision.
     *
     * @param sent who decides, under which id
     * @param deviation the entry that raised it
     * @param decision what
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome settle(Sent sent, long deviation, Decision decision, Optional<Instant> at) {
        return decide(sent, deviation, at, (d, found, checks) -> {
            check(checks, d, sent, found, decision);
            Value.Fields f = Value.Fields.NONE
                    .with("disposition", decision.disposition())
                    .withUnlessEmpty("note", decision.note())
                    .withUnlessEmpty("structural", decision.structural() ? "yes" : "")
                    .withUnlessEmpty("second", decision.second());
            return decision.rework().isEmpty()
                    ? f
                    : f.with(
                            "rework",
                            new Value.Many(decision.rework().stream()
                                    .map(r -> (Value) r.fields())
                                    .toList()));
        });
    }

    /**
     * A second person agrees to what was decided.
     *
     * @param sent who agrees, under which id
     * @param deviation the entry that raised it
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome agree(Sent sent, long deviation, Optional<Instant> at) {
        return decide(sent, deviation, at, (d, found, checks) -> {
            boolean fresh = !shop.knows(sent.client()) && sent.live();
            if (fresh && !found.isWaitingForSecond()) {
                checks.stop("deviation", "one that waits for no second person", "one that does", "");
            }
            if (!Signers.isOne(d, sent.by())) {
                checks.stop("second", sent.by(), "somebody whom the crew list lets sign", "");
            }
            found.settled()
                    .filter(s -> s.by().equals(sent.by()))
                    .ifPresent(s -> checks.stop("second", "who decided it", "a second person", ""));
            return Value.Fields.NONE
                    .with(
                            "disposition",
                            found.settled().map(s -> s.disposition().key()).orElse(""))
                    .with("second", sent.by());
        });
    }

    /** What is checked, and the decision's own fields. */
    @FunctionalInterface
    private interface Body {
        Value.Fields of(Definition d, Deviation found, Checks checks);
    }

    private Outcome decide(Sent sent, long deviation, Optional<Instant> given, Body body) {
        return shop.deciding(() -> {
            Optional<Deviation> found = shop.state().trouble().find(deviation);
            if (found.isEmpty()) {
                return Outcome.refused("Entry " + deviation + " raises no deviation.");
            }
            Optional<Definition> definition = shop.definition(found.get().project());
            if (definition.isEmpty()) {
                return Outcome.refused("The project of deviation " + deviation + " is not in this shop.");
            }
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            Instant at = given.orElseGet(() -> shop.timeOf(sent));
            checks.time(sent, at, shop.now());
            if (at.isBefore(found.get().at())) {
                checks.stop("at", "a time before the deviation was raised", "a later one", "");
            }
            Value.Fields own = body.of(definition.get(), found.get(), checks);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            return shop.append(Checks.entry(
                    shop,
                    sent,
                    found.get().project(),
                    EntryKind.DEVIATION_SETTLED,
                    own.with("deviation", deviation).with("at", at.toString())));
        });
    }

    private void check(Checks checks, Definition d, Sent sent, Deviation found, Decision decision) {
        Optional<Disposition> what = Disposition.of(decision.disposition());
        if (what.isEmpty()) {
            checks.stop(
                    "disposition",
                    "\"" + decision.disposition() + "\"",
                    "one of " + String.join(", ", Disposition.keys()),
                    "");
        }
        boolean structural = found.structural() || decision.structural();
        checks.text("note", decision.note(), structural);
        if (sent.live()) {
            Signers.check(shop, d, checks, "by", sent.by());
            if (found.settled().isPresent() && !shop.knows(sent.client())) {
                checks.stop(
                        "deviation",
                        "one that " + found.settled().get().by() + " decided about (entry "
                                + found.settled().get().seq() + ")",
                        "one that is open",
                        "raise it anew where something else came to light");
            }
        }
        second(checks, d, sent, decision);
        rework(checks, what, decision);
    }

    private static void second(Checks checks, Definition d, Sent sent, Decision decision) {
        if (decision.second().isEmpty()) {
            return;
        }
        checks.person("second", decision.second());
        if (decision.second().equals(sent.by())) {
            checks.stop("second", "the same person twice", "a second person, who is not the first", "");
        } else if (sent.live() && !Signers.isOne(d, decision.second())) {
            checks.stop("second", decision.second(), "somebody whom the crew list lets sign", "");
        }
    }

    private static void rework(Checks checks, Optional<Disposition> what, Decision decision) {
        boolean asks = what.filter(w -> w == Disposition.REWORK).isPresent();
        if (asks && decision.rework().isEmpty()) {
            checks.stop("rework", "nothing to do", "what is to be done, each with its time", "");
        }
        if (!asks && !decision.rework().isEmpty()) {
            checks.stop("rework", "work to do", "none, since it is not reworked", "");
        }
        for (Rework r : decision.rework()) {
            checks.text("rework", r.what(), true);
            if (r.minutes().isEmpty()) {
                checks.stop("rework", "time \"" + r.time() + "\"", "person-time up to 1000 h, such as 90 min", "");
            }
            if (Arrays.stream(StepKind.values()).noneMatch(k -> k.key().equals(r.kind()))) {
                checks.stop("rework", "\"" + r.kind() + "\"", "a sort of work, such as trim or lay-up", "");
            }
        }
    }
}
