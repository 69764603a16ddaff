package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.units.Quantity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.RecordState;
import fayline.flow.result.stock.Amount;
import fayline.flow.result.stock.Lots;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is checked of entries about the stores. */
final class StoreChecks {
    private static final String NUMBER = "[A-Za-z0-9][A-Za-z0-9._/-]{0,39}";
    private final Definition definition;
    private final Checks checks;

    StoreChecks(Definition definition, Checks checks) {
        this.definition = definition;
        this.checks = checks;
    }

    /** The lots that the stores know at a moment. */
    static List<Lot> lots(Definition d, ShopRecord shop, Instant at) {
        RecordState state = shop.state();
        return Lots.of(d, state.stock(), state.made(), at);
    }

    void number(String key, String text) {
        if (!text.matches(NUMBER)) {
            checks.stop(
                    key,
                    "\"" + text + "\"",
                    "a number as it stands on the label: letters, digits, dots, hyphens, at most 40",
                    "");
        }
    }

    /** A material, or a component of a system. */
    void stuff(String of, String component) {
        boolean system = definition.systems().find(of).isPresent();
        if (!system && definition.materials().find(of).isEmpty()) {
            checks.stop("of", "\"" + of + "\"", "a material or system of the definition", "");
        } else if (system != (component.equals("resin") || component.equals("hardener"))) {
            checks.stop(
                    "component",
                    component.isEmpty() ? "nothing" : "\"" + component + "\"",
                    system ? "resin or hardener: " + of + " has two parts" : "nothing: " + of + " has one part",
                    "");
        }
    }

    Optional<Quantity> amount(String key, String typed) {
        Optional<Quantity> q = Amount.read(typed);
        if (q.isEmpty() || q.get().si() < 0) {
            checks.stop(key, "\"" + typed + "\"", "a mass, an area or a length such as 4.35 kg, not negative", "");
            return Optional.empty();
        }
        return q;
    }

    /** An amount that can be compared with what a lot is written in. */
    void amountOf(String key, String typed, Lot lot) {
        amount(key, typed)
                .filter(q -> Amount.as(
                                q,
                                lot.quantity().value(),
                                definition.materials().find(lot.of()))
                        .isEmpty())
                .ifPresent(q -> checks.stop(
                        key,
                        "\"" + typed + "\"",
                        "an amount like that of lot " + lot.id() + ", " + lot.quantity(),
                        ""));
    }

    void day(String key, String typed, boolean needed) {
        if (typed.isEmpty()) {
            if (needed) {
                checks.stop(key, "nothing", "a day such as 2026-03-02", "");
            }
            return;
        }
        try {
            LocalDate.parse(typed);
        } catch (DateTimeException e) {
            checks.stop(key, "\"" + typed + "\"", "a day such as 2026-03-02", "");
        }
    }
}
