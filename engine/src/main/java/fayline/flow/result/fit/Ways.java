package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.flow.project.fit.Fit;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.aim.AimedMove;
import fayline.method.fitup.aim.AimedMovesCalculator;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.PartQuestion;
import java.util.List;
import java.util.Optional;

/** The ways to judge a move, side by side. */
final class Ways {
    private static final double CUT_MM = 1e-6;

    private final Fit fit;
    private final FitPlaces places;
    private final SpaceWords words;

    Ways(Fit fit, FitPlaces places, SpaceWords words) {
        this.fit = fit;
        this.places = places;
        this.words = words;
    }

    /** Each way; the least move is asked to end inside by the doubt of the worst known reading, where all are known. */
    List<FitWay> of(PartQuestion question, PartMove best) {
        double guard =
                question.uncertaintiesMm().stream().mapToDouble(u -> u).max().orElse(0);
        return AimedMovesCalculator.calculate(question, best, guard).stream()
                .map(m -> way(question.gaps(), m))
                .toList();
    }

    private FitWay way(List<FitRow> rows, AimedMove m) {
        return new FitWay(
                m,
                m.move().map(l -> words.sentence(l.move())).orElse(Phrase.NONE),
                m.move()
                        .map(l -> fit.marks().stream()
                                .map(k -> words.at(l.move(), k.place(), k.name()))
                                .toList())
                        .orElse(List.of()),
                m.move().flatMap(l -> cut(rows, l.gapsMm())));
    }

    private Optional<FitWay.Cut> cut(List<FitRow> rows, List<Double> gapsMm) {
        List<Double> share =
                places.tributaryMm(rows.stream().map(r -> r.station().id()).toList());
        double most = CUT_MM;
        double area = 0;
        String at = "";
        for (int i = 0; i < rows.size(); i++) {
            double depth = Math.max(0, rows.get(i).lowerMm() - gapsMm.get(i));
            area += depth * share.get(i);
            if (depth > most) {
                most = depth;
                at = rows.get(i).station().id();
            }
        }
        return at.isEmpty() ? Optional.empty() : Optional.of(new FitWay.Cut(most, at, area));
    }
}
