package fayline.flow.result.fit.chain;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.ChainRemedy;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitCalculator;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.chain.FitChainResult.Correcting;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainCalculator;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.correct.Remedy;
import fayline.method.fitup.chain.correct.RemedyCalculator;
import fayline.method.fitup.chain.correct.RemedyResult;
import fayline.method.fitup.scheme.Missing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What follows from a chain and the readings where it ends. */
public final class FitChainCalculator {
    private static final String PRACTICE = "common practice, no source";

    private FitChainCalculator() {}

    /** Answers the question. */
    public static FitChainResult calculate(FitChainQuestion question) {
        FitResult end = question.end();
        boolean read = end.advice().isPresent();
        List<FitRow> rows = end.advice().map(FitAdvice::rows).orElseGet(() -> FitCalculator.wanted(end));
        return rows.isEmpty() ? placeless(question) : placed(question, rows, read);
    }

    private static FitChainResult placeless(FitChainQuestion question) {
        FitChain chain = question.chain();
        Finding where = new Finding(
                Severity.NOTE,
                chain.id(),
                "Where the stations of " + question.end().fit().name()
                        + " lie is not known: give each its place, or the fit its outline.",
                "geometry");
        return new FitChainResult(
                chain,
                question.end(),
                List.of(),
                false,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(where));
    }

    private static FitChainResult placed(FitChainQuestion question, List<FitRow> rows, boolean read) {
        FitChain chain = question.chain();
        AskedChain frame = new AskedChain(question, rows, read);
        Chain asked = frame.chain();
        ChainResult spread = ChainCalculator.calculate(asked);
        ChainCorrection correction = new ChainCorrection(frame, asked);
        Optional<Correcting> correcting =
                read && correction.possible() ? Optional.of(correction.correcting()) : Optional.empty();
        boolean left = read && chain.links().stream().allMatch(ChainLink::done);
        return new FitChainResult(
                chain,
                question.end(),
                rows,
                read,
                Optional.of(asked),
                Optional.of(spread),
                read ? correction.carried(chain, correcting) : List.of(),
                correcting,
                left ? Optional.of(remedies(chain, rows, frame)) : Optional.empty(),
                spread.missing().stream()
                        .map(FitChainCalculator::words)
                        .distinct()
                        .toList(),
                spread.assumed(),
                findings(chain, asked, spread));
    }

    /** What must be said; shares, how far a mark is off and what is missing or assumed are told apart. */
    private static List<Finding> findings(FitChain chain, Chain asked, ChainResult spread) {
        List<Finding> marks = asked.links().stream()
                .flatMap(l -> l.carried().stream())
                .flatMap(f -> f.findings().stream())
                .toList();
        List<Finding> all = new ArrayList<>(spread.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && !f.about().equals("assumed") && !marks.contains(f))
                .toList());
        all.addAll(spread.dependence());
        if (asked.stations().stream().anyMatch(s -> s.row().station().isCurved())) {
            all.add(new Finding(
                    Severity.NOTE,
                    chain.id(),
                    "The fit where it ends is of a curved part. A chain counts what links do in the plane: errors in and out of it are"
                            + " not in the chance.",
                    "geometry"));
        }
        if (chain.links().stream().allMatch(ChainLink::done)) {
            all.add(new Finding(
                    Severity.NOTE,
                    chain.id(),
                    "Every link is bonded: what is left is to trim, build up, fill, hang it anew or make it again.",
                    PRACTICE));
        }
        return all;
    }

    private static RemedyResult remedies(FitChain chain, List<FitRow> rows, AskedChain frame) {
        List<String> ids = rows.stream().map(r -> r.station().id()).toList();
        return RemedyCalculator.calculate(
                rows,
                frame.middle(),
                chain.remedies().stream().map(r -> remedy(r, ids)).toList());
    }

    private static Remedy remedy(ChainRemedy r, List<String> ids) {
        Map<String, Double> most = new HashMap<>();
        Remedy.Kind kind = switch (r.kind()) {
            case TRIM -> Remedy.Kind.TRIM;
            case BUILD_UP -> Remedy.Kind.BUILD_UP;
            case FILL -> Remedy.Kind.FILL;
            case RE_HANG -> Remedy.Kind.REHANG;
            case REMAKE -> Remedy.Kind.REMAKE;
        };
        if (kind != Remedy.Kind.REHANG && kind != Remedy.Kind.REMAKE) {
            ids.stream().filter(i -> r.at().isEmpty() || r.at().contains(i)).forEach(i -> most.put(i, r.limitMm()));
        }
        return new Remedy(
                r.name(),
                kind,
                r.hours(),
                most,
                kind == Remedy.Kind.REHANG ? r.room() : Optional.empty(),
                kind == Remedy.Kind.REMAKE ? r.limitMm() : 0);
    }

    private static String words(Missing m) {
        return m.about().isEmpty() ? m.what() : m.what() + " (" + m.about() + ")";
    }
}
