package fayline.app.web.card;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Typed;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A correction that was sent before. It cannot be judged as if it were new: what it corrected may be gone by its own doing.
 */
final class SentBefore {
    private SentBefore() {}

    /** What became of it; empty where its id is new. */
    static Optional<Outcome> correction(ShopRecord shop, Sent sent, Typed typed, Optional<Instant> at) {
        return shop.seqOf(sent.client())
                .flatMap(shop::entry)
                .map(stands -> saysTheSame(stands, typed, at)
                        ? Outcome.already(stands.seq())
                        : Outcome.refused("the id " + sent.client() + " stands at entry " + stands.seq()
                                + " with other content; nothing was changed"));
    }

    private static boolean saysTheSame(Entry stands, Typed typed, Optional<Instant> at) {
        Value.Fields f = stands.fields();
        boolean withdraws = typed.field("how").equals("withdraw");
        Value.Fields with = f.inner("with");
        List<String> said = List.of(with.text("text"), with.inner("values").text("value"));
        boolean mends = (!typed.field("at").isEmpty()
                        && with.text("at").equals(at.map(Instant::toString).orElse("")))
                || (!typed.field("value").isEmpty() && said.contains(typed.field("value")));
        return stands.kind().equals(EntryKind.CORRECTED.key())
                && f.whole("entry")
                        .map(String::valueOf)
                        .filter(typed.field("entry")::equals)
                        .isPresent()
                && f.text("why").equals(typed.field("why"))
                && withdraws == f.text("withdrawn").equals("yes")
                && (withdraws || mends);
    }
}
