package fayline.method.laminate.optimum;

import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.strength.FirstPlyCalculator;
import fayline.method.laminate.strength.Strength;
import fayline.method.laminate.strength.StrongPly;
import java.util.List;

/** Judges whole stacks by first ply failure under every load asked, and counts them. */
final class StackJudge {
    private static final double ROUNDING = 1e-12;

    private final LightestStack question;
    private long judged;

    StackJudge(LightestStack question) {
        this.question = question;
    }

    long judged() {
        return judged;
    }

    boolean bears(List<PlyChoice> stack) {
        judged++;
        List<StrongPly> plies = stack.stream().map(PlyChoice::ply).toList();
        for (SectionLoad load : question.wanted().loads()) {
            double ratio = FirstPlyCalculator.calculate(
                            new Strength(plies, load, question.wanted().criterion()))
                    .first()
                    .map(f -> f.ratio())
                    .orElse(Double.POSITIVE_INFINITY);
            if (ratio < question.wanted().leastRatio() * (1 - ROUNDING)) {
                return false;
            }
        }
        return true;
    }
}
