package fayline.app.web.traveller;

import fayline.app.usecase.traveller.LotRules;
import fayline.app.usecase.traveller.StepAsks;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lots as they are offered: first expired first, what was taken last picked beforehand. */
final class LotWords {
    private final Definition definition;
    private final List<Lot> lots;
    private final LocalDate today;
    private final String given;

    /**
     * On what lies in the stores.
     *
     * @param given a lot that was asked for by its label; empty for none
     */
    LotWords(Definition definition, List<Lot> lots, LocalDate today, String given) {
        this.definition = definition;
        this.lots = List.copyOf(lots);
        this.today = today;
        this.given = given;
    }

    /**
     * The lots of a material.
     *
     * @param last the lot that was taken last; empty for none
     */
    TravellerView.Lots of(String material, String component, Optional<String> last) {
        List<Lot> known = LotRules.inOrder(lots, material, component, today);
        Optional<String> first = Optional.of(given)
                .filter(g -> known.stream().anyMatch(k -> k.id().equals(g)))
                .or(() -> last.filter(l -> known.stream().anyMatch(k -> k.id().equals(l))))
                .or(() -> known.stream()
                        .filter(k -> !LotRules.isPast(k, today))
                        .map(Lot::id)
                        .findFirst());
        List<TravellerView.Lot> offered = new ArrayList<>();
        for (Lot k : known) {
            boolean past = LotRules.isPast(k, today);
            String until = k.lastDay().map(LocalDate::toString).orElse("");
            offered.add(new TravellerView.Lot(
                    k.id(),
                    until.isEmpty() ? "no date on it" : past ? "out of date since " + until : "good until " + until,
                    past,
                    first.filter(k.id()::equals).isPresent()));
        }
        String name = StepAsks.materialName(definition, material);
        return new TravellerView.Lots(
                material, component.isEmpty() ? name : name + ", " + component, component, offered);
    }
}
