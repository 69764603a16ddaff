package fayline.flow.result.stock;

import fayline.basis.units.Quantity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the bench says went from a lot into a step.
 *
 * @param of the material or system
 * @param component {@code resin} or {@code hardener} of a system; empty otherwise
 * @param step the step within the project, {@code made/make-number/key}; of another project with that before it
 * @param at when; empty where only the step's own time is known
 * @param seq its entry; 0 where nobody knows
 * @param lot the lot; empty where nobody said
 * @param amount how much; empty where nobody said
 * @param sort how it was said
 */
record BookedUse(
        String of,
        String component,
        String step,
        Optional<Instant> at,
        long seq,
        String lot,
        Optional<Quantity> amount,
        LotStanding.Sort sort) {
    /** Whether it is of a thing. */
    boolean is(String thing, String part) {
        return of.equals(thing) && component.equals(part);
    }

    /** Every use up to the state's moment, by step. */
    static Map<String, List<BookedUse>> byStep(Definition d, ShopState state, List<Lot> lots) {
        Map<String, Lot> known = new HashMap<>();
        lots.forEach(l -> known.putIfAbsent(l.id(), l));
        Map<String, List<BookedUse>> all = new LinkedHashMap<>();
        String project = d.facts().id() + "/";
        for (StepMade s : state.made().steps().values()) {
            String step = s.step().startsWith(project) ? s.step().substring(project.length()) : s.step();
            List<BookedUse> uses = of(step, s, known, state.now());
            if (!uses.isEmpty()) {
                all.computeIfAbsent(step, k -> new ArrayList<>()).addAll(uses);
            }
        }
        for (ShopState.LotUse u : state.used()) {
            Lot lot = known.get(u.lot());
            if (lot != null) {
                all.computeIfAbsent(u.step(), k -> new ArrayList<>())
                        .add(new BookedUse(
                                lot.of(),
                                lot.component(),
                                u.step(),
                                Optional.empty(),
                                0,
                                u.lot(),
                                Optional.of(u.amount().value()),
                                LotStanding.Sort.DRAWN));
            }
        }
        return all;
    }

    private static List<BookedUse> of(String step, StepMade made, Map<String, Lot> known, Instant now) {
        List<BookedUse> uses = new ArrayList<>();
        for (Mix m : made.mixes()) {
            if (!m.at().isAfter(now)) {
                uses.add(mixed(step, m, "resin", m.resinLot(), m.resin()));
                uses.add(mixed(step, m, "hardener", m.hardenerLot(), m.hardener()));
            }
        }
        for (Draw x : made.draws()) {
            Lot lot = known.get(x.lot());
            // A system's parts are told cup by cup where they are; then that a lot was fetched says nothing more.
            boolean told = lot != null
                    && uses.stream()
                            .anyMatch(u -> u.sort() == LotStanding.Sort.MIXED && u.is(lot.of(), lot.component()));
            if (lot != null && !told && !x.at().isAfter(now)) {
                uses.add(new BookedUse(
                        lot.of(),
                        lot.component(),
                        step,
                        Optional.of(x.at()),
                        x.seq(),
                        x.lot(),
                        Amount.read(x.amount()),
                        LotStanding.Sort.DRAWN));
            }
        }
        plies(step, made, known, now, uses);
        return uses;
    }

    /** Plies tell of which lots they were cut, where nothing else does. */
    private static void plies(String step, StepMade made, Map<String, Lot> known, Instant now, List<BookedUse> uses) {
        for (Laid p : made.plies()) {
            Lot lot = p.skipped() ? null : known.get(p.lot());
            if (lot != null
                    && !p.at().isAfter(now)
                    && uses.stream().noneMatch(u -> u.lot().equals(lot.id()))
                    && uses.stream()
                            .noneMatch(u -> u.is(lot.of(), "") && u.amount().isPresent())) {
                uses.add(new BookedUse(
                        lot.of(),
                        lot.component(),
                        step,
                        Optional.of(p.at()),
                        p.seq(),
                        lot.id(),
                        Optional.empty(),
                        LotStanding.Sort.DRAWN));
            }
        }
    }

    private static BookedUse mixed(String step, Mix m, String component, String lot, String typed) {
        return new BookedUse(
                m.system(),
                component,
                step,
                Optional.of(m.at()),
                m.seq(),
                lot,
                Amount.read(typed),
                LotStanding.Sort.MIXED);
    }
}
