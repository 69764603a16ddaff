package fayline.app.usecase.inspect;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.Signers;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.Optional;

/**
 * What comes of a finding: how it was put right, and whether somebody else accepts that. Nobody signs their own mending. The
 * signature is the shop's own record and no licensed signature.
 */
public final class AnswerFinding {
    private final ShopRecord shop;

    /** On a shop's record. */
    public AnswerFinding(ShopRecord shop) {
        this.shop = shop;
    }

    /** What is checked of an answer beside who sends it and when. */
    @FunctionalInterface
    private interface Further {
        void check(Definition d, FoundFault fault, Checks checks);
    }

    /**
     * Records how it was put right.
     *
     * @param sent who sends it under which id
     * @param finding the finding's entry
     * @param text how
     * @param pictures pictures that go with it
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome mend(Sent sent, long finding, String text, Pictures pictures, Optional<Instant> at) {
        return answer(
                sent,
                finding,
                pictures,
                at,
                EntryKind.FINDING_CORRECTED,
                Value.Fields.NONE.with("text", text),
                (d, fault, checks) -> checks.text("text", text, true));
    }

    /**
     * Records whether the mending is accepted.
     *
     * @param sent who sends it under which id
     * @param finding the finding's entry
     * @param who who signs, as typed, where it is nobody of the crew; empty where it is who sends it
     * @param accepted whether it is accepted; otherwise it is open again
     * @param text what was said
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome sign(Sent sent, long finding, String who, boolean accepted, String text, Optional<Instant> at) {
        Value.Fields payload = Value.Fields.NONE
                .with("accepted", accepted ? "yes" : "no")
                .withUnlessEmpty("who", who.strip())
                .withUnlessEmpty("text", text);
        return answer(sent, finding, Pictures.NONE, at, EntryKind.FINDING_SIGNED, payload, (d, fault, checks) -> {
            checks.text("text", text, !accepted);
            checks.text("who", who, false);
            Optional<FoundFault.Step> mended = fault.lastMending();
            if (mended.isEmpty()) {
                checks.stop("finding", "finding " + fault.number() + ", not put right", "one that was put right", "");
                return;
            }
            String mender = mended.get().by();
            String name = d.shop().people().find(mender).map(p -> p.name()).orElse(mender);
            String signer = who.isBlank() ? sent.by() : who.strip();
            if (signer.equalsIgnoreCase(mender) || signer.equalsIgnoreCase(name)) {
                checks.stop("who", signer, "somebody other than " + name + ", who put it right", "");
            } else if (who.isBlank()) {
                Signers.check(shop, d, checks, "who", sent.by());
            }
        });
    }

    private Outcome answer(
            Sent sent,
            long finding,
            Pictures pictures,
            Optional<Instant> at,
            EntryKind kind,
            Value.Fields payload,
            Further further) {
        if (pictures.refused().isPresent()) {
            return pictures.refused().get();
        }
        return shop.deciding(() -> {
            Optional<FoundFault> fault = shop.state().inspect().fault(finding);
            Optional<Definition> definition = fault.flatMap(f -> shop.definition(f.project()));
            if (fault.isEmpty() || definition.isEmpty()) {
                return Outcome.refused("Entry " + finding + " is no finding that stands in the record.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            checks.time(sent, when, shop.now());
            if (!shop.knows(sent.client())) {
                further.check(definition.get(), fault.get(), checks);
            }
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The answer was not recorded.", checks.problems());
            }
            return pictures.append(
                    shop,
                    sent,
                    fault.get().project(),
                    kind,
                    payload.with("finding", finding).with("at", when.toString()));
        });
    }
}
