package fayline.method.fitup.chain.correct;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.correct.CorrectionResult.Part;
import fayline.method.fitup.chain.correct.CorrectionResult.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds where a correction goes: in the last link that is still open if that is enough, since it also takes up what went wrong
 * before it; in an earlier one where its room is too small; together with neighbours where those can move. Least largest
 * weighted deviation [boyd-vandenberghe2004], then least total motion.
 */
public final class CorrectionCalculator {
    private static final double ALIKE = 1e-6;

    private CorrectionCalculator() {}

    /** Finds it. */
    public static CorrectionResult calculate(Correction question) {
        Chain chain = question.chain();
        List<Integer> open = new ArrayList<>();
        for (int k = chain.links().size() - 1; k >= 0; k--) {
            if (chain.links().get(k).open()) {
                open.add(k);
            }
        }
        List<List<Integer>> choices = new ArrayList<>();
        open.forEach(k -> choices.add(List.of(k)));
        if (open.size() > 1) {
            choices.add(open);
        }
        List<Way> ways = new ArrayList<>();
        choices.forEach(c -> way(question, c, false).ifPresent(ways::add));
        if (!question.neighbours().isEmpty()) {
            if (choices.isEmpty()) {
                choices.add(List.of());
            }
            choices.forEach(c -> way(question, c, true).ifPresent(ways::add));
        }
        Optional<Way> chosen = chosen(ways);
        return new CorrectionResult(ways, chosen, findings(question, open, chosen));
    }

    private static Optional<Way> chosen(List<Way> ways) {
        return ways.stream()
                .filter(Way::fits)
                .findFirst()
                .or(() -> ways.stream().reduce((a, b) -> b.worstDeviation() < a.worstDeviation() - ALIKE ? b : a));
    }

    private static Optional<Way> way(Correction question, List<Integer> links, boolean neighbours) {
        Chain chain = question.chain();
        List<Mover> movers = new ArrayList<>();
        links.forEach(k -> movers.add(Mover.of(chain, k)));
        if (neighbours) {
            question.neighbours().forEach(n -> movers.add(Mover.of(chain, n)));
        }
        List<FitRow> rows = chain.stations().stream().map(ChainStation::row).toList();
        List<Double> none = GapProgram.none(rows.size());
        return new GapProgram(rows, movers, none, none).solve().map(r -> {
            List<Part> parts = new ArrayList<>();
            for (int m = 0; m < movers.size(); m++) {
                parts.add(new Part(movers.get(m).name(), r.moves().get(m)));
            }
            int worst = r.worst();
            return new Way(
                    String.join(" and ", movers.stream().map(Mover::name).toList()),
                    parts,
                    r.gapsMm(),
                    rows.get(worst).station().id(),
                    r.gapsMm().get(worst),
                    r.weighted(worst),
                    r.outside());
        });
    }

    private static List<Finding> findings(Correction question, List<Integer> open, Optional<Way> chosen) {
        if (open.isEmpty() && question.neighbours().isEmpty()) {
            return List.of(note(
                    Severity.STOP,
                    Phrase.plain("Every link is bonded and no neighbour can move: only remedies are left.")));
        }
        if (chosen.isEmpty()) {
            return List.of(
                    note(Severity.STOP, Phrase.plain("The room to move and the least gaps contradict each other.")));
        }
        Way way = chosen.get();
        Phrase reached = Phrase.of("worst gap will be %s at %s", Amount.mm(way.worstGapMm(), 2), way.worstStation());
        return List.of(
                way.fits()
                        ? note(Severity.NOTE, Phrase.of("Correct in %s: %s.", way.name(), reached))
                        : note(
                                Severity.CAUTION,
                                Phrase.of(
                                        "No motion that is left brings every gap inside: the best is in %s, %s, outside stay %s.",
                                        way.name(), reached, String.join(", ", way.outside()))));
    }

    private static Finding note(Severity severity, Phrase sentence) {
        return new Finding(severity, "correction", sentence, "[boyd-vandenberghe2004]");
    }
}
