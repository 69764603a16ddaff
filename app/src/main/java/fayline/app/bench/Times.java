package fayline.app.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Times of many like things; safe for several threads. */
final class Times {
    private final List<Double> ms = Collections.synchronizedList(new ArrayList<>());

    void add(double one) {
        ms.add(one);
    }

    void clear() {
        ms.clear();
    }

    int count() {
        return ms.size();
    }

    /**
     * The time within which a share of them was done.
     *
     * @param share from 0 to 1
     * @return milliseconds; not a number where there are none
     */
    double within(double share) {
        List<Double> sorted;
        synchronized (ms) {
            sorted = new ArrayList<>(ms);
        }
        if (sorted.isEmpty()) {
            return Double.NaN;
        }
        Collections.sort(sorted);
        int at = (int) Math.ceil(share * sorted.size()) - 1;
        return sorted.get(Math.max(0, at));
    }

    /** Writes how many there were, half, 99 of 100 and the longest. */
    void into(ObjectNode n, String name) {
        n.put(name, count());
        if (count() > 0) {
            n.put(name + "P50Ms", Math.round(within(0.5)));
            n.put(name + "P99Ms", Math.round(within(0.99)));
            n.put(name + "MostMs", Math.round(within(1)));
        }
    }
}
