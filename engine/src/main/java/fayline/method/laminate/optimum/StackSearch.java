package fayline.method.laminate.optimum;

import fayline.method.laminate.TurnedStiffness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One search for the lightest stack; used once. */
final class StackSearch {
    private static final int NONE = -1;
    private static final double ROUNDING = 1e-12;

    private final LightestStack question;
    private final int n;
    private final double[] mass;
    private final double[] cost;
    private final int[] opposite;
    private final double lightest;
    private final int deepest;
    private final Grown grown;
    private final int[] chosen;
    private final int[] counts;
    private final Map<String, Boolean> known = new HashMap<>();
    private final StackJudge judge;
    private int middle = NONE;
    private int depth;
    private double best = Double.POSITIVE_INFINITY;
    private double bestCost = Double.POSITIVE_INFINITY;
    private Optional<List<PlyChoice>> found = Optional.empty();
    private long nodes;

    StackSearch(LightestStack question) {
        this.question = question;
        List<PlyChoice> c = question.choices();
        n = c.size();
        mass = c.stream().mapToDouble(PlyChoice::massKgPerM2).toArray();
        cost = c.stream().mapToDouble(PlyChoice::costPerM2).toArray();
        opposite = new int[n];
        double least = Double.POSITIVE_INFINITY;
        TurnedStiffness[] turned = new TurnedStiffness[n];
        double[] thickness = new double[n];
        for (int i = 0; i < n; i++) {
            opposite[i] = opposite(c, i);
            least = Math.min(least, mass[i]);
            turned[i] =
                    c.get(i).ply().ply().lamina().turned(c.get(i).ply().ply().angleDeg());
            thickness[i] = c.get(i).ply().ply().thicknessM();
        }
        lightest = least;
        deepest = question.rules().mostPlies() / 2;
        grown = new Grown(turned, thickness, deepest);
        chosen = new int[deepest];
        counts = new int[n];
        judge = new StackJudge(question);
    }

    /** The choice that balances one: itself where it needs none, NONE where there is no such choice. */
    private static int opposite(List<PlyChoice> choices, int i) {
        PlyChoice one = choices.get(i);
        double a = one.ply().ply().angleDeg();
        if (Math.abs(Math.sin(Math.toRadians(2 * a))) < ROUNDING) {
            return i;
        }
        for (int j = 0; j < choices.size(); j++) {
            PlyChoice other = choices.get(j);
            double sum = (other.ply().ply().angleDeg() + a) / 180;
            if (Math.abs(sum - Math.rint(sum)) < ROUNDING
                    && other.ply().ply().lamina().equals(one.ply().ply().lamina())
                    && other.ply().ply().thicknessM() == one.ply().ply().thicknessM()) {
                return j;
            }
        }
        return NONE;
    }

    LightestStackResult run() {
        int plies = 1;
        for (; plies <= question.rules().mostPlies() && plies * lightest <= best && !isSpent(); plies++) {
            if (plies % 2 == 1 && question.rules().oddMiddle()) {
                odd(plies / 2);
            } else if (plies % 2 == 0) {
                depth = plies / 2;
                middle = NONE;
                grown.begin(NONE);
                grow(0, 0, 0);
            }
        }
        boolean proven = !isSpent();
        // The round that was broken off is not excluded.
        double bound = proven ? (found.isPresent() ? best : 0) : Math.min(best, (plies - 1) * lightest);
        return new LightestStackResult(
                found.orElse(List.of()),
                found.isPresent() ? best : 0,
                found.isPresent() ? bestCost : 0,
                proven,
                bound,
                space(),
                nodes,
                judge.judged());
    }

    private void odd(int pairs) {
        depth = pairs;
        for (int m = 0; m < n && !isSpent(); m++) {
            middle = m;
            counts[m]++;
            grown.begin(m);
            grow(0, mass[m], cost[m]);
            counts[m]--;
        }
    }

    private boolean isSpent() {
        return nodes >= question.mostNodes();
    }

    private double space() {
        double all = 0;
        for (int plies = 1; plies <= question.rules().mostPlies(); plies++) {
            boolean odd = plies % 2 == 1;
            if (!odd || question.rules().oddMiddle()) {
                int own = (plies + 1) / 2;
                all += Math.pow(n, own);
            }
        }
        return all;
    }

    private void grow(int at, double m, double c) {
        nodes++;
        int more = depth - at;
        if (isWorse(m + 2 * more * lightest, c) || !canBeStiff(at, more) || !canBalance(more)) {
            return;
        }
        if (more == 0) {
            if (runs() <= question.rules().mostTogether() && bears()) {
                best = m;
                bestCost = c;
                found = Optional.of(stack());
            }
            return;
        }
        for (int i = 0; i < n && !isSpent(); i++) {
            chosen[at] = i;
            counts[i] += 2;
            grown.add(at, i);
            grow(at + 1, m + 2 * mass[i], c + 2 * cost[i]);
            counts[i] -= 2;
        }
    }

    private boolean isWorse(double leastMass, double leastCost) {
        return leastMass > best * (1 + ROUNDING)
                || (leastMass >= best * (1 - ROUNDING) && leastCost >= bestCost * (1 - ROUNDING));
    }

    private boolean canBeStiff(int at, int more) {
        for (int i = 0; i < 3; i++) {
            double stretch = question.wanted().stretch(i);
            if (stretch > 0 && grown.mostStretch(at, i, more) < stretch * (1 - ROUNDING)) {
                return false;
            }
            double bend = question.wanted().bend(i);
            if (bend > 0 && grown.mostBend(at, i, more) < bend * (1 - ROUNDING)) {
                return false;
            }
        }
        return true;
    }

    private boolean canBalance(int more) {
        if (!question.rules().balanced()) {
            return true;
        }
        int missing = 0;
        for (int i = 0; i < n; i++) {
            if (counts[i] > 0 && opposite[i] == NONE) {
                return false;
            }
            if (opposite[i] != i && opposite[i] != NONE) {
                missing += Math.max(0, counts[i] - counts[opposite[i]]);
            }
        }
        return missing <= 2 * more;
    }

    /** The longest run of one direction in the whole stack. */
    private int runs() {
        int run = middle == NONE ? 0 : 1;
        int longest = run;
        boolean central = true;
        double last = middle == NONE ? angle(chosen[0]) : angle(middle);
        for (int k = 0; k < depth; k++) {
            double a = angle(chosen[k]);
            if (a != last) {
                central = false;
                run = 0;
                last = a;
            }
            run += central ? 2 : 1;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private double angle(int choice) {
        return question.choices().get(choice).ply().ply().angleDeg();
    }

    private boolean bears() {
        if (question.wanted().loads().isEmpty()) {
            return true;
        }
        if (!question.wanted().isInPlane()) {
            return judge.bears(stack());
        }
        // In plane the order cannot matter: what was judged in one order is known in all.
        return known.computeIfAbsent(Arrays.toString(counts), k -> judge.bears(stack()));
    }

    private List<PlyChoice> stack() {
        List<PlyChoice> all = new ArrayList<>();
        for (int k = depth - 1; k >= 0; k--) {
            all.add(question.choices().get(chosen[k]));
        }
        if (middle != NONE) {
            all.add(question.choices().get(middle));
        }
        for (int k = 0; k < depth; k++) {
            all.add(question.choices().get(chosen[k]));
        }
        return all;
    }
}
