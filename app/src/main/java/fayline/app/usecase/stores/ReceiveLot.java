package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Price;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes a lot into the stores, with the file of its certificate where there is one. */
public final class ReceiveLot {
    private static final String REFUSED = "The lot was not taken into the stores.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public ReceiveLot(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a lot.
     *
     * @param sent who sends it under which id
     * @param project a project whose definition names the material
     * @param lot the lot
     * @param certificate its certificate's file
     * @param at when; now where nothing is said
     */
    public Outcome receive(
            Sent sent, String project, ReceivedLot lot, Optional<Certificate> certificate, Optional<Instant> at) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definition(project);
            if (definition.isEmpty()) {
                return Outcome.refused("The project " + project + " is not in this shop.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            List<InputProblem> problems = problems(sent, definition.get(), lot, when, certificate);
            if (!problems.isEmpty()) {
                return Outcome.refused(REFUSED, problems);
            }
            Optional<String> kept;
            try {
                kept = certificate.map(c -> shop.files().put(c.bytes()));
            } catch (EntryFiles.CannotKeepException e) {
                return new Outcome(Outcome.Kind.UNKNOWN, 0, String.valueOf(e.getMessage()), List.of(), List.of());
            }
            return shop.append(entry(shop, sent, lot, kept, when));
        });
    }

    /**
     * Takes several lots, all or none.
     *
     * @param sent who sends them; each has an id of its own made from this one's
     * @param project a project whose definition names the materials
     * @param lots the lots
     */
    public List<Outcome> receiveAll(Sent sent, String project, List<ReceivedLot> lots) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definition(project);
            if (definition.isEmpty()) {
                return List.of(Outcome.refused("The project " + project + " is not in this shop."));
            }
            Instant when = shop.timeOf(sent);
            List<Outcome> refused = new ArrayList<>();
            List<NewEntry> entries = new ArrayList<>();
            for (int i = 0; i < lots.size(); i++) {
                Sent own = i == 0 ? sent : sent.along("lot " + i);
                List<InputProblem> problems = problems(own, definition.get(), lots.get(i), when, Optional.empty());
                if (!problems.isEmpty()) {
                    refused.add(Outcome.refused("Lot " + lots.get(i).lot() + " was not taken.", problems));
                }
                entries.add(entry(shop, own, lots.get(i), Optional.empty(), when));
            }
            return refused.isEmpty() ? shop.append(entries) : refused;
        });
    }

    /** What is wrong with a lot, were it received now; nothing is recorded. */
    public List<InputProblem> look(Sent sent, String project, ReceivedLot lot) {
        return shop.definition(project)
                .map(d -> problems(sent, d, lot, shop.minute(), Optional.empty()))
                .orElse(List.of());
    }

    private List<InputProblem> problems(
            Sent sent, Definition d, ReceivedLot lot, Instant when, Optional<Certificate> certificate) {
        Checks checks = new Checks(d);
        checks.person("by", sent.by());
        checks.time(sent, when, shop.now());
        check(d, checks, lot);
        if (!shop.knows(sent.client())
                && StoreChecks.lots(d, shop, Instant.MAX).stream().anyMatch(l -> l.id().equals(lot.lot()))) {
            checks.stop("lot", "lot " + lot.lot() + " a second time", "a number that the stores do not hold yet", "");
        }
        certificate
                .filter(c -> c.type().isEmpty())
                .ifPresent(c ->
                        checks.stop("certificate", "another kind of file", "a PDF, JPEG or PNG of at most 20 MB", ""));
        return checks.problems();
    }

    static void check(Definition d, Checks checks, ReceivedLot lot) {
        StoreChecks own = new StoreChecks(d, checks);
        own.number("lot", lot.lot());
        own.stuff(lot.of(), lot.component());
        own.amount("quantity", lot.quantity());
        own.day("received", lot.received(), true);
        own.day("expires", lot.expires(), false);
        checks.text("order", lot.order(), false);
        if (!lot.price().isEmpty() && Price.read(lot.price()).isEmpty()) {
            checks.stop("price", "\"" + lot.price() + "\"", "a price such as 17.80 per kg", "");
        }
        if (!lot.openedLife().isEmpty()) {
            try {
                QuantityParser.parse(lot.openedLife(), QuantityKind.TIME_SPAN);
            } catch (UnreadableQuantityException e) {
                checks.stop("opened-life", "\"" + e.found() + "\"", e.expected(), e.suggestion());
            }
        }
    }

    private static NewEntry entry(
            ShopRecord shop, Sent sent, ReceivedLot lot, Optional<String> certificate, Instant when) {
        Value.Fields payload = Value.Fields.NONE
                .with("lot", lot.lot())
                .with("of", lot.of())
                .withUnlessEmpty("component", lot.component())
                .with("quantity", lot.quantity())
                .withUnlessEmpty("weighed", lot.weighed() ? "yes" : "")
                .with("received", lot.received())
                .withUnlessEmpty("expires", lot.expires())
                .withUnlessEmpty("opened-life", lot.openedLife())
                .withUnlessEmpty("price", lot.price())
                .withUnlessEmpty("order", lot.order())
                .withUnlessEmpty("certificate", certificate.orElse(""))
                .with("at", when.toString());
        return new NewEntry(
                sent.client(),
                sent.by(),
                "",
                shop.now(),
                "",
                EntryKind.LOT_RECEIVED.key(),
                payload,
                certificate.stream().toList());
    }
}
