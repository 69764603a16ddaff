package fayline.app.usecase.people;

import fayline.app.usecase.shop.Judge;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Judges entries at the one place through which all of them pass, whatever page or form they came by: what kind of act an entry
 * is, and whether the role of who makes it allows that. Nobody signs for another.
 */
final class ByRole implements Judge {
    private static final Set<EntryKind> OF_CHANGES = Set.of(
            EntryKind.CHANGE_RAISED, EntryKind.CHANGE_DECIDED, EntryKind.CHANGE_SETTLED, EntryKind.CHANGE_CLOSED);
    private final ShopRecord record;
    private final Roster roster;
    private final Telling refused;

    /** Tells the record of a refusal. */
    @FunctionalInterface
    interface Telling {
        void of(String person, Role role, Act act, String what);
    }

    ByRole(ShopRecord record, Roster roster, Telling refused) {
        this.record = record;
        this.roster = roster;
        this.refused = refused;
    }

    @Override
    public Optional<String> refuses(NewEntry fresh) {
        Optional<Roster.Known> who = roster.find(fresh.by());
        if (who.isEmpty()) {
            return Optional.of("Nobody who may enter is named \"" + fresh.by() + "\".");
        }
        Act act = actOf(fresh);
        if (!Rights.may(who.get().role(), act)) {
            refused.of(fresh.by(), who.get().role(), act, fresh.kind());
            return Optional.of(
                    "As " + who.get().role().word() + " you may not " + act.words() + ". The lead decides who may.");
        }
        String signature = signature(fresh);
        if (!signature.isEmpty() && !signature.equals(fresh.by())) {
            refused.of(fresh.by(), who.get().role(), Act.SIGN, "for " + signature);
            return Optional.of("Nobody signs for another. Let " + name(signature)
                    + " sign on a phone of their own, or switch person on this one.");
        }
        return Optional.empty();
    }

    private String name(String person) {
        return roster.find(person).map(Roster.Known::name).orElse(person);
    }

    private Act actOf(NewEntry fresh) {
        Optional<EntryKind> kind = EntryKind.of(fresh.kind());
        if (kind.isEmpty()) {
            return Act.KEEP_PEOPLE;
        }
        return switch (kind.get()) {
            case FILE_SAVED, FILE_REMOVED, PROJECT_ADDED, FOLDER_IMPORTED -> Act.CHANGE_DEFINITION;
            case STEP_STARTED -> fresh.payload().text("despite").isEmpty() ? Act.WORK : Act.DECIDE_CHANGE;
            case STEP_NOTED, READING_TAKEN, MIX_MADE, PLY_LAID, DEVIATION_RAISED, FINDING_CORRECTED -> Act.WORK;
            case LOT_RECEIVED, LOT_MOVED, STOCK_TAKEN -> Act.WORK;
            case ORDER_PLACED, ORDER_RECEIVED -> Act.ORDER;
            case VISIT_HELD, FINDING_RAISED -> Act.INSPECT;
            case FINDING_SIGNED -> Act.SIGN;
            case WEEK_TOLD -> Act.TELL_WEEK;
            case ERASED -> Act.ERASE;
            case LOT_DRAWN -> isYes(fresh.payload(), "override") ? Act.OVERRIDE_LOT : Act.WORK;
            case DEVIATION_SETTLED -> signature(fresh).isEmpty() ? Act.ACCEPT_DEVIATION : Act.SIGN;
            case STEP_FINISHED -> signature(fresh).isEmpty() ? Act.WORK : Act.SIGN;
            case CHANGE_RAISED -> Act.RAISE_CHANGE;
            case CHANGE_DECIDED -> signature(fresh).isEmpty() ? Act.DECIDE_CHANGE : Act.SIGN;
            case CHANGE_SETTLED, CHANGE_CLOSED -> Act.DECIDE_CHANGE;
            case CORRECTED -> ofCorrection(fresh);
            case PLAN_PUBLISHED -> Act.PUBLISH_PLAN;
            case SHEET_PRINTED -> Act.PRINT_SHEET;
            case PERSON_ADMITTED,
                    PERSON_CHANGED,
                    DEVICE_PAIRED,
                    DEVICE_ENDED,
                    SIGNED_IN,
                    SIGNED_OUT,
                    SIGN_IN_BARRED,
                    ACT_REFUSED -> Act.KEEP_PEOPLE;
        };
    }

    private static boolean isYes(Value.Fields f, String field) {
        return f.text(field).equals("yes");
    }

    /** A correction asks what the entry asks that it corrects. */
    private Act ofCorrection(NewEntry fresh) {
        Optional<Entry> old = corrected(fresh.payload());
        Optional<EntryKind> kind = old.flatMap(e -> EntryKind.of(e.kind()));
        if (kind.filter(EntryKind.DEVIATION_SETTLED::equals).isPresent()) {
            return Act.ACCEPT_DEVIATION;
        }
        if (kind.filter(OF_CHANGES::contains).isPresent()) {
            return Act.DECIDE_CHANGE;
        }
        if (kind.filter(EnumSet.of(EntryKind.ORDER_PLACED, EntryKind.ORDER_RECEIVED)::contains)
                .isPresent()) {
            return Act.ORDER;
        }
        if (kind.filter(EntryKind.FINDING_SIGNED::equals).isPresent()) {
            return Act.SIGN;
        }
        if (kind.filter(k -> k == EntryKind.VISIT_HELD || k == EntryKind.FINDING_RAISED)
                .isPresent()) {
            return Act.INSPECT;
        }
        if (old.filter(e -> isYes(e.fields(), "override")).isPresent()) {
            return Act.OVERRIDE_LOT;
        }
        return signature(fresh).isEmpty() && !touchesSignature(fresh) ? Act.WORK : Act.SIGN;
    }

    /** The entry that a correction, or a correction of a correction, names in the end. */
    private Optional<Entry> corrected(Value.Fields correction) {
        Optional<Entry> named = correction
                .whole("entry")
                .filter(n -> n > 0)
                .flatMap(n -> record.entries(n).stream().limit(1).findFirst());
        return named.filter(e -> e.kind().equals(EntryKind.CORRECTED.key())).isPresent()
                ? named.flatMap(e -> corrected(e.fields()))
                : named;
    }

    private static String signature(NewEntry fresh) {
        Value.Fields f = fresh.payload();
        if (fresh.kind().equals(EntryKind.DEVIATION_SETTLED.key())
                || fresh.kind().equals(EntryKind.CHANGE_DECIDED.key())) {
            return f.text("second");
        }
        return fresh.kind().equals(EntryKind.CORRECTED.key()) ? f.inner("with").text("signed") : f.text("signed");
    }

    /** Whether a correction names an entry that somebody signed. */
    private boolean touchesSignature(NewEntry fresh) {
        long named = fresh.payload().whole("entry").orElse(0L);
        List<Entry> found = named < 1 ? List.of() : record.entries(named);
        if (found.isEmpty()) {
            return false;
        }
        Value.Fields f = found.get(0).fields();
        return !f.text("signed").isEmpty() || !f.inner("with").text("signed").isEmpty();
    }
}
