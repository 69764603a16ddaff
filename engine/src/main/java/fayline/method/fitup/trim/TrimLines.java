package fayline.method.fitup.trim;

import fayline.basis.numeric.optimum.GrowingRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A question for trimming as straight lines in the move (shifts, then turns times Λ): what every station needs, what it has room for,
 * and which edges may give. Of a curved part the flushes must stay inside too, where no cut helps.
 */
final class TrimLines {
    private static final double BROKEN_MM = 1e-10;
    private static final double LEAST_EASE_MM = 1e-9;
    private static final double MOST_EASE_MM = 1e-6;

    private final TrimQuestion question;
    private final WantedLines<?, ?> moving;
    private final Box box;
    private final List<FairEnvelope.Pair> pairs = new ArrayList<>();

    /**
     * Takes a question.
     *
     * @param moving the gaps in the order of its rows, then the flushes that must stay inside, if any
     * @param box the limits of the move, finite
     */
    TrimLines(TrimQuestion question, WantedLines<?, ?> moving, Box box) {
        this.question = question;
        this.moving = moving;
        this.box = box;
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < count(); i++) {
            places.put(question.rows().get(i).row().station().id(), i);
        }
        for (NeighbourPair p : new LinkedHashSet<>(question.pairs())) {
            int one = places.getOrDefault(p.one(), -1);
            int other = places.getOrDefault(p.other(), -1);
            if (one != other) {
                pairs.add(new FairEnvelope.Pair(one, other, question.rules().slope() * p.distanceMm()));
            }
        }
    }

    int count() {
        return question.rows().size();
    }

    /** How many unknowns a move has. */
    int unknowns() {
        return moving.unknowns();
    }

    /** The limits of flushes that a move breaks, as rows over so many unknowns. */
    List<GrowingRows.Row> flushesBroken(double[] q, int unknowns) {
        List<GrowingRows.Row> all = new ArrayList<>();
        for (int i = count(); i < moving.count(); i++) {
            double[] a = moving.coefficients(i);
            double value = moving.valueMm(i, q);
            double level = moving.levelMm(i);
            Wanted w = moving.wanted(i);
            if (value < w.lowerMm() - BROKEN_MM) {
                all.add(row(a, OptionalInt.empty(), level - w.lowerMm(), unknowns));
            } else if (value > w.upperMm() + BROKEN_MM) {
                double[] back = Arrays.stream(a).map(v -> -v).toArray();
                all.add(row(back, OptionalInt.empty(), w.upperMm() - level, unknowns));
            }
        }
        return all;
    }

    /** The depth that a move needs at each station: never negative, and fair along the edges. */
    FairEnvelope depths() {
        double[][] slope = new double[count()][];
        double[] level = new double[count()];
        for (int i = 0; i < level.length; i++) {
            slope[i] = moving.coefficients(i);
            level[i] = needLevel(i);
        }
        return new FairEnvelope(slope, level, new double[level.length], pairs);
    }

    /** The height that a move needs at each station, where more than nothing; below that, less the depth that could be cut. */
    FairEnvelope heights(Set<String> edges) {
        double[][] slope = new double[count()][];
        double[] level = new double[count()];
        for (int i = 0; i < level.length; i++) {
            slope[i] = Arrays.stream(moving.coefficients(i)).map(a -> -a).toArray();
            level[i] = -roomLevel(i);
        }
        return new FairEnvelope(
                slope, level, Arrays.stream(most(edges)).map(m -> -m).toArray(), pairs);
    }

    /** The most that may come off at each station when only some edges are cut. */
    double[] most(Set<String> edges) {
        return question.rows().stream()
                .mapToDouble(r -> edges.contains(r.row().edge()) ? r.mostMm() : 0)
                .toArray();
    }

    /** How deep a cut each station has room for at a move before its gap is too large, in mm. */
    double[] room(double[] q) {
        double[] room = new double[count()];
        for (int i = 0; i < room.length; i++) {
            room[i] = roomLevel(i) + dot(moving.coefficients(i), q);
        }
        return room;
    }

    /** How need and room of a station grow with the move. */
    double[] slope(int i) {
        return moving.coefficients(i);
    }

    /** What each station by itself needs off at a move; negative where it has some to spare. */
    double[] needs(double[] q) {
        double[] need = new double[count()];
        for (int i = 0; i < need.length; i++) {
            need[i] = needLevel(i) + dot(moving.coefficients(i), q);
        }
        return need;
    }

    /** The need of a station at no move. */
    double needLevel(int i) {
        return lower(i) - moving.levelMm(i);
    }

    /** The room of a station at no move. */
    double roomLevel(int i) {
        return upper(i) - moving.levelMm(i);
    }

    /** The tributary lengths, each as often as its edge is down the list: so what is on the first edges counts least. */
    double[] orderedLengthsMm() {
        List<String> edges = new ArrayList<>(question.rules().edges());
        question.rows().stream()
                .map(r -> r.row().edge())
                .filter(e -> !edges.contains(e))
                .distinct()
                .forEach(edges::add);
        return question.rows().stream()
                .mapToDouble(r -> (1 + edges.indexOf(r.row().edge())) * r.tributaryMm())
                .toArray();
    }

    /** The tributary lengths. */
    double[] lengthsMm() {
        return question.rows().stream().mapToDouble(TrimRow::tributaryMm).toArray();
    }

    /** Least or most of each unknown of the move, finite. */
    double[] limit(boolean most) {
        return most ? box.highs() : box.lows();
    }

    /** The least fair values that are nowhere below given ones. */
    double[] fair(double[] least) {
        return new FairEnvelope(new double[count()][0], least, nothing(count()), pairs)
                .at(new double[0])
                .values();
    }

    /** The row slope · move − x ≤ most, x being another unknown of so many; without it where there is none. */
    GrowingRows.Row row(double[] slope, OptionalInt other, double most, int unknowns) {
        double[] a = Arrays.copyOf(Arrays.copyOf(slope, unknowns()), unknowns);
        other.ifPresent(k -> a[k] = -1);
        return new GrowingRows.Row(a, most);
    }

    /**
     * The shortest move with the unknowns after it no more than given values, which are eased a little where no move is left.
     *
     * @param held the values
     */
    Optional<List<Double>> shortest(GrowingRows rows, double... held) {
        double[] low = Arrays.copyOf(limit(false), unknowns() + held.length);
        double[] high = Arrays.copyOf(limit(true), low.length);
        Optional<List<Double>> found = Optional.empty();
        for (double ease = LEAST_EASE_MM; ease <= MOST_EASE_MM && found.isEmpty(); ease *= 10) {
            for (int k = 0; k < held.length; k++) {
                low[unknowns() + k] = held[k] + ease;
                high[unknowns() + k] = held[k] + ease;
            }
            found = rows.nearest(new double[low.length], low, high);
        }
        return found;
    }

    private static double[] nothing(int count) {
        double[] all = new double[count];
        Arrays.fill(all, Double.NEGATIVE_INFINITY);
        return all;
    }

    private static double dot(double[] a, double[] q) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * q[k];
        }
        return sum;
    }

    /** The lower limit raised by the guard, but not past the middle of the tolerance; never below the hard minimum. */
    double lower(int i) {
        TrimRow r = question.rows().get(i);
        FitRow f = r.row();
        double guarded = Math.min(
                f.lowerMm() + question.rules().guard() * r.deviationMm(),
                Math.max(f.lowerMm(), (f.lowerMm() + f.upperMm()) / 2));
        return Math.max(guarded, f.minimumMm().orElse(Double.NEGATIVE_INFINITY));
    }

    double upper(int i) {
        return question.rows().get(i).row().upperMm();
    }

    boolean guardCut(int i) {
        TrimRow r = question.rows().get(i);
        return r.row().lowerMm() + question.rules().guard() * r.deviationMm()
                > (r.row().lowerMm() + r.row().upperMm()) / 2 + 1e-12;
    }
}
