package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Spot;
import fayline.method.fitup.heat.BondedHeat;
import fayline.method.fitup.heat.BondedHeatCalculator;
import fayline.method.fitup.heat.BondedHeatResult;
import fayline.method.fitup.heat.Heat;
import fayline.method.fitup.heat.HeatCalculator;
import fayline.method.fitup.heat.HeatResult;
import fayline.method.fitup.heat.HeatRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What heat does over the service range, from the state read last.
 *
 * @param free for a part that is free to grow
 * @param bonded for a part that is, or will be, bonded all round
 */
record HeatNow(Optional<HeatResult> free, Optional<BondedHeatResult> bonded) {
    static final HeatNow NONE = new HeatNow(Optional.empty(), Optional.empty());
    private static final String PRACTICE = "common practice, no source";
    private static final String GEOMETRY = "free expansion about the anchor";

    /**
     * Answers for a state, and says what is missing or how its temperature was allowed for.
     *
     * @param shop what its temperature makes of the gaps; empty where no gap of it has a place
     */
    static HeatNow of(
            Targets targets,
            StateReadings now,
            List<LaterState> later,
            Optional<ShopHeat> shop,
            List<Finding> findings) {
        Fit fit = targets.fit();
        List<HeatRow> rows = new ArrayList<>();
        for (FitRow r : targets.nominalRows(later)) {
            now.stations().stream()
                    .filter(v -> v.station().id().equals(r.station().id()))
                    .flatMap(v -> v.gap().stream())
                    .forEach(g -> rows.add(HeatRow.of(r.station(), g.gapMm(), r.nominalMm())));
        }
        if (fit.heat().isEmpty()) {
            if (now.read() > 0) {
                findings.add(unknown(fit, now));
            }
            return NONE;
        }
        if (rows.isEmpty()) {
            return NONE;
        }
        FitHeat heat = fit.heat().get();
        if (now.temperatureDegC().isEmpty()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    fit.id(),
                    "No temperature was noted with the readings; the reference temperature is taken. Read it beside the part:"
                            + " ten degrees are worth more than the gauge's error on a large sheet.",
                    PRACTICE));
        }
        double read = now.temperatureDegC().orElse(heat.referenceDegC());
        Spot anchor = targets.places().anchor(heat);
        if (targets.growth().bondedAllRound()) {
            keepsItsGap(fit, heat, read).ifPresent(findings::add);
            return new HeatNow(Optional.empty(), Optional.of(bonded(heat, anchor, read, rows)));
        }
        shop.filter(ShopHeat::matters).map(s -> corrected(fit, s)).ifPresent(findings::add);
        return new HeatNow(
                Optional.of(HeatCalculator.calculate(new Heat(
                        anchor,
                        heat.part(),
                        heat.surround(),
                        read,
                        heat.referenceDegC(),
                        heat.serviceDegC(),
                        fit.wanted().minimumGap().map(Targets::mm).orElse(0.0),
                        rows,
                        heat.sheet()))),
                Optional.empty());
    }

    private static BondedHeatResult bonded(FitHeat heat, Spot anchor, double readDegC, List<HeatRow> rows) {
        return BondedHeatCalculator.calculate(new BondedHeat(
                anchor,
                heat.part(),
                heat.surround(),
                readDegC,
                heat.serviceDegC(),
                heat.bondMm().orElseThrow(),
                rows.stream().map(HeatRow::station).toList(),
                OptionalDouble.empty(),
                OptionalDouble.empty()));
    }

    private static Finding unknown(Fit fit, StateReadings now) {
        Phrase at = now.temperatureDegC().isPresent()
                ? Phrase.of(" at %s", Amount.degC(now.temperatureDegC().getAsDouble()))
                : Phrase.NONE;
        return new Finding(
                Severity.NOTE,
                fit.id(),
                Phrase.of(
                        "How part and surround grow is not given (heat in the definition), so gaps count as they were read%s."
                                + " Say what both are made of and at which temperature the gaps are wanted.",
                        at),
                "the definition");
    }

    private static Optional<Finding> keepsItsGap(Fit fit, FitHeat heat, double readDegC) {
        return readDegC == heat.referenceDegC()
                ? Optional.empty()
                : Optional.of(new Finding(
                        Severity.NOTE,
                        fit.id(),
                        Phrase.of(
                                "Bonded all round it keeps the gap at which its adhesive sets, so the move is sought at %s, as"
                                        + " read, and nothing is shifted to %s. What warmth does to the bond stands under heat.",
                                Amount.degC(readDegC), Amount.degC(heat.referenceDegC())),
                        "geometry"));
    }

    private static Finding corrected(Fit fit, ShopHeat shop) {
        return new Finding(
                Severity.NOTE,
                fit.id(),
                Phrase.of(
                        "%s The move is sought at %s.",
                        shop.words(), Amount.degC(shop.soughtDegC().orElseThrow())),
                GEOMETRY);
    }
}
