package fayline.flow.project.piece;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Into how many sets of which sizes a number of pieces goes. */
final class SetSizes {
    private SetSizes() {}

    /**
     * Ways to divide pieces, fewest sets first: as evenly as can be, and with all sets full but the last. Where no whole number of
     * sets comes out, one way with a set that is smaller than asked for.
     *
     * @param pieces how many; positive
     * @param least least size of a set; positive
     * @param most largest size, not below the least
     * @return sizes in the order of the pieces; at least one way
     */
    static List<List<Integer>> of(int pieces, int least, int most) {
        Set<List<Integer>> ways = new LinkedHashSet<>();
        for (int sets = (pieces + most - 1) / most; sets * least <= pieces; sets++) {
            ways.add(even(pieces, sets));
            full(pieces, sets, least, most, ways);
        }
        if (ways.isEmpty()) {
            ways.add(even(pieces, (pieces + most - 1) / most));
        }
        return List.copyOf(ways);
    }

    private static List<Integer> even(int pieces, int sets) {
        List<Integer> sizes = new ArrayList<>();
        for (int i = 0; i < sets; i++) {
            sizes.add(pieces / sets + (i < pieces % sets ? 1 : 0));
        }
        return List.copyOf(sizes);
    }

    private static void full(int pieces, int sets, int least, int most, Set<List<Integer>> into) {
        int last = pieces - (sets - 1) * most;
        if (last >= least && last < most) {
            List<Integer> sizes = new ArrayList<>();
            for (int i = 1; i < sets; i++) {
                sizes.add(most);
            }
            sizes.add(last);
            into.add(List.copyOf(sizes));
        }
    }
}
