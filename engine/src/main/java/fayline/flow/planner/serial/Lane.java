package fayline.flow.planner.serial;

import java.util.Arrays;

/** What occupies one person, place or room: stretches in order of their start, which may overlap, each with its owner. */
final class Lane {
    private int[] from = new int[16];
    private int[] to = new int[16];
    private int[] owner = new int[16];
    /** The latest end up to each stretch: what ends before a moment need not be looked at one by one. */
    private int[] latest = new int[16];

    private int size;

    int size() {
        return size;
    }

    int from(int i) {
        return from[i];
    }

    int to(int i) {
        return to[i];
    }

    int owner(int i) {
        return owner[i];
    }

    void add(int start, int end, int by) {
        if (size == from.length) {
            from = Arrays.copyOf(from, size * 2);
            to = Arrays.copyOf(to, size * 2);
            owner = Arrays.copyOf(owner, size * 2);
            latest = Arrays.copyOf(latest, size * 2);
        }
        int i = size++;
        while (i > 0 && from[i - 1] > start) {
            from[i] = from[i - 1];
            to[i] = to[i - 1];
            owner[i] = owner[i - 1];
            i--;
        }
        from[i] = start;
        to[i] = end;
        owner[i] = by;
        latestFrom(i);
    }

    private void latestFrom(int changed) {
        int before = changed > 0 ? latest[changed - 1] : Integer.MIN_VALUE;
        for (int i = changed; i < size; i++) {
            before = Math.max(before, to[i]);
            latest[i] = before;
        }
    }

    void remove(int start, int end, int by) {
        for (int i = 0; i < size; i++) {
            if (from[i] == start && to[i] == end && owner[i] == by) {
                System.arraycopy(from, i + 1, from, i, size - i - 1);
                System.arraycopy(to, i + 1, to, i, size - i - 1);
                System.arraycopy(owner, i + 1, owner, i, size - i - 1);
                size--;
                latestFrom(i);
                return;
            }
        }
        throw new IllegalStateException("nothing to remove");
    }

    /** The first minute from t on at which nothing occupies. */
    int clearFrom(int t) {
        int s = t;
        for (int i = endingAfter(t); i < size && from[i] <= s; i++) {
            s = Math.max(s, to[i]);
        }
        return s;
    }

    /** Index of the first stretch that ends after t; none before it does. */
    int endingAfter(int t) {
        int low = 0;
        int high = size;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (latest[mid] <= t) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return low;
    }

    /** Where the first stretch from t on begins. */
    int nextFrom(int t) {
        int low = 0;
        int high = size;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (from[mid] < t) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return low < size ? from[low] : TimeLine.FOREVER;
    }
}
