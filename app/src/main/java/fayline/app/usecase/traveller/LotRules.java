package fayline.app.usecase.traveller;

import fayline.app.usecase.act.Checks;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.made.MadeState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which lots may go into a step: known to the stores, of the right material, in date. */
public final class LotRules {
    private static final Comparator<Lot> FIRST_OUT = Comparator.comparing(
                    (Lot l) -> l.lastDay().orElse(LocalDate.MAX))
            .thenComparing(Lot::received)
            .thenComparing(Lot::id);

    private LotRules() {}

    /** Lots of a material, the first to take leading; those out of date stand last. */
    public static List<Lot> inOrder(List<Lot> lots, String material, String component, LocalDate day) {
        return lots.stream()
                .filter(l -> l.of().equals(material)
                        && (component.isEmpty() || l.component().equals(component)))
                .sorted(Comparator.comparing((Lot l) -> isPast(l, day)).thenComparing(FIRST_OUT))
                .toList();
    }

    /** Whether a lot may no longer be used on a day. */
    public static boolean isPast(Lot lot, LocalDate day) {
        return lot.lastDay().filter(d -> d.isBefore(day)).isPresent();
    }

    /** Whether the lead allowed a lot out of date for what is made, at whichever step of it. */
    static boolean isAllowed(MadeState made, String step, String lot) {
        String[] bits = step.split("/", -1);
        String prefix = bits.length < 2 ? step : bits[0] + "/" + bits[1] + "/";
        return made.steps().tailMap(prefix).entrySet().stream()
                .takeWhile(e -> e.getKey().startsWith(prefix))
                .flatMap(e -> e.getValue().draws().stream())
                .anyMatch(x -> x.override() && x.lot().equals(lot));
    }

    /**
     * Checks that a lot may be used.
     *
     * @param use what is asked
     * @param checks takes what is wrong
     */
    static void check(Definition d, List<Lot> lots, Use use, Checks checks) {
        Optional<Lot> found =
                lots.stream().filter(l -> l.id().equals(use.lot())).findFirst();
        if (found.isEmpty()) {
            String known = inOrder(lots, use.material(), use.component(), LocalDate.MIN).stream()
                    .map(Lot::id)
                    .collect(Collectors.joining(", "));
            checks.stop(
                    use.field(),
                    use.lot().isEmpty() ? "no lot" : "lot \"" + use.lot() + "\", which the stores do not know",
                    known.isEmpty() ? "a lot that was received" : "a lot that was received, such as " + known,
                    "read the label again; a new delivery is entered in the stores first");
            return;
        }
        Lot lot = found.get();
        if (!use.allowed().contains(lot.of())) {
            checks.stop(
                    use.field(),
                    "lot " + lot.id() + " of " + StepAsks.materialName(d, lot.of()),
                    names(d, use.allowed()),
                    "wrong material: nobody can allow it here; a change of material is a change of the definition");
            return;
        }
        if (!use.component().isEmpty() && !lot.component().equals(use.component())) {
            checks.stop(
                    use.field(),
                    "lot " + lot.id() + ", " + lot.component(),
                    "a lot of the " + use.component(),
                    "the two parts were taken for each other: look at both labels");
            return;
        }
        date(d.shop().zone(), lot, use, checks);
    }

    private static void date(ZoneId zone, Lot lot, Use use, Checks checks) {
        if (isPast(lot, use.at().atZone(zone).toLocalDate()) && !use.override()) {
            checks.stop(
                    use.field(),
                    "lot " + lot.id() + ", out of date since "
                            + lot.lastDay().map(LocalDate::toString).orElse(""),
                    "a lot in date",
                    "take another; only the lead can allow it, with a reason such as a good test piece");
        }
    }

    private static String names(Definition d, List<String> materials) {
        return materials.isEmpty()
                ? "nothing of the stores at this step"
                : materials.stream().map(m -> StepAsks.materialName(d, m)).collect(Collectors.joining(" or "));
    }

    /**
     * A use of a lot.
     *
     * @param field the field it stands in
     * @param lot the lot's number as typed
     * @param material the material asked for, where it is one; else empty
     * @param component which part of a system; empty for any
     * @param allowed the materials that may be used
     * @param at when
     * @param override whether a lot out of date was allowed
     */
    record Use(
            String field,
            String lot,
            String material,
            String component,
            List<String> allowed,
            Instant at,
            boolean override) {
        Use {
            allowed = List.copyOf(allowed);
        }
    }
}
