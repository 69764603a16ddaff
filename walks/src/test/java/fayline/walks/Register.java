package fayline.walks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What clients wrote to and read from single texts, each of which holds one value at a time: whether each text can have taken its values
 * one after the other, every one between its sending and its answer. Texts are judged one by one, since together they can be in order
 * exactly if each of them can (Herlihy and Wing, ACM TOPLAS 12 (1990)). The search tries what may have come first, remembering what was
 * tried (Wing and Gong, J. Parallel and Distributed Computing 17 (1993); the memory is Lowe's, Concurrency and Computation 29 (2017).
 * From memory.)
 */
final class Register {
    private final Map<String, List<Op>> ofText = new HashMap<>();

    /**
     * One writing or reading.
     *
     * @param write whether it was written; else read
     * @param value what
     * @param invoked when it was first sent
     * @param answered when the answer came; {@link History#NEVER} where none did, so that a writing may or may not count
     */
    record Op(boolean write, String value, long invoked, long answered) {}

    synchronized void add(String text, Op op) {
        if (op.write() || op.answered() != History.NEVER) {
            ofText.computeIfAbsent(text, t -> new ArrayList<>()).add(op);
        }
    }

    /** How much was written and read. */
    synchronized int size() {
        return ofText.values().stream().mapToInt(List::size).sum();
    }

    /**
     * The first text whose values cannot have come one after the other; empty where all can.
     *
     * @param initial what each text held at first
     */
    synchronized Optional<String> fault(Map<String, String> initial) {
        return new TreeMap<>(ofText)
                .entrySet().stream()
                        .filter(t -> !new Search(t.getValue()).holds(initial.getOrDefault(t.getKey(), "")))
                        .findFirst()
                        .map(t -> "what was written to and read from \"" + t.getKey() + "\" has no order: "
                                + t.getValue());
    }

    /** A search for an order of one text's operations. */
    private static final class Search {
        private final List<Op> ops;
        private final BitSet done = new BitSet();
        private final Set<Tried> tried = new HashSet<>();

        /** What was put in order already, and what the text then held. */
        private record Tried(BitSet done, String value) {}

        private Search(List<Op> ops) {
            this.ops =
                    ops.stream().sorted(Comparator.comparingLong(Op::invoked)).toList();
        }

        private boolean holds(String value) {
            if (!tried.add(new Tried((BitSet) done.clone(), value))) {
                return false;
            }
            long first = History.NEVER;
            for (int i = done.nextClearBit(0); i < ops.size(); i = done.nextClearBit(i + 1)) {
                first = Math.min(first, ops.get(i).answered());
            }
            if (first == History.NEVER) {
                // what is left was never answered and need not have counted
                return true;
            }
            for (int i = done.nextClearBit(0);
                    i < ops.size() && ops.get(i).invoked() <= first;
                    i = done.nextClearBit(i + 1)) {
                Op op = ops.get(i);
                if (op.write() || op.value().equals(value)) {
                    done.set(i);
                    if (holds(op.write() ? op.value() : value)) {
                        return true;
                    }
                    done.clear(i);
                }
            }
            return false;
        }
    }
}
