package fayline.flow.record.proof;

import java.util.ArrayList;
import java.util.List;

/**
 * A tree of hashes that grows at its end, RFC 9162 sections 2.1.1 to 2.1.4: every size that it ever had keeps its root. Adding
 * a leaf hashes twice on average; a root or a proof takes hashes in the order of the square of the logarithm of the size. Not
 * safe for several threads at once.
 */
public final class HashTree {
    /** Hashes of whole subtrees: at level k those over 2^k leaves that begin at a multiple of 2^k. */
    private final List<List<Digest>> levels = new ArrayList<>();

    private int size;

    /** An empty tree. */
    public HashTree() {
        levels.add(new ArrayList<>());
    }

    /** A tree over leaves in their order. */
    public static HashTree over(Iterable<byte[]> leaves) {
        HashTree tree = new HashTree();
        leaves.forEach(tree::add);
        return tree;
    }

    /**
     * Adds a leaf at the end.
     *
     * @param leaf its bytes, any number
     */
    public void add(byte[] leaf) {
        Digest whole = Digest.ofLeaf(leaf);
        levels.get(0).add(whole);
        size++;
        for (int level = 1, pairs = size; pairs % 2 == 0; level++, pairs /= 2) {
            List<Digest> below = levels.get(level - 1);
            whole = Digest.ofNode(below.get(below.size() - 2), whole);
            if (levels.size() == level) {
                levels.add(new ArrayList<>());
            }
            levels.get(level).add(whole);
        }
    }

    /** How many leaves there are. */
    public int size() {
        return size;
    }

    /** The root over all leaves. */
    public Digest root() {
        return root(size);
    }

    /**
     * The root that the tree had at an earlier size.
     *
     * @param first how many leaves, 0 to {@link #size()}
     * @throws IndexOutOfBoundsException if there never were so many
     */
    public Digest root(int first) {
        within(first, 0, size);
        return first == 0 ? Digest.ofNothing() : over(0, first);
    }

    /**
     * Shows that a leaf stands in the tree of some size, RFC 9162 section 2.1.3.1.
     *
     * @param leaf its place, from 0
     * @param first size of the tree, above {@code leaf} and at most {@link #size()}
     * @return hashes from the leaf's neighbour up to below the root
     * @throws IndexOutOfBoundsException if leaf or size are out of range
     */
    public List<Digest> inclusion(int leaf, int first) {
        within(first, 1, size);
        within(leaf, 0, first - 1);
        List<Digest> path = new ArrayList<>();
        collectInclusion(leaf, 0, first, path);
        return List.copyOf(path);
    }

    private void collectInclusion(int leaf, int from, int to, List<Digest> path) {
        if (to - from == 1) {
            return;
        }
        int middle = from + leftOf(to - from);
        if (leaf < middle) {
            collectInclusion(leaf, from, middle, path);
            path.add(over(middle, to));
        } else {
            collectInclusion(leaf, middle, to, path);
            path.add(over(from, middle));
        }
    }

    /**
     * Shows that the tree of one size begins with the tree of an earlier one, RFC 9162 section 2.1.4.1.
     *
     * @param first the earlier size, 0 to {@code second}
     * @param second the later size, at most {@link #size()}
     * @return hashes; none where the sizes are equal or the first is 0
     * @throws IndexOutOfBoundsException if a size is out of range
     */
    public List<Digest> consistency(int first, int second) {
        within(second, 0, size);
        within(first, 0, second);
        List<Digest> path = new ArrayList<>();
        if (first > 0 && first < second) {
            collectConsistency(first, 0, second, true, path);
        }
        return List.copyOf(path);
    }

    private void collectConsistency(int first, int from, int to, boolean known, List<Digest> path) {
        if (first == to) {
            if (!known) {
                path.add(over(from, to));
            }
            return;
        }
        int middle = from + leftOf(to - from);
        if (first <= middle) {
            collectConsistency(first, from, middle, known, path);
            path.add(over(middle, to));
        } else {
            collectConsistency(first, middle, to, false, path);
            path.add(over(from, middle));
        }
    }

    /** The hash over the leaves of a subtree that the tree's form holds. */
    private Digest over(int from, int to) {
        int leaves = to - from;
        if (Integer.bitCount(leaves) == 1) {
            int level = Integer.numberOfTrailingZeros(leaves);
            return levels.get(level).get(from >> level);
        }
        int middle = from + leftOf(leaves);
        return Digest.ofNode(over(from, middle), over(middle, to));
    }

    /** How many of n leaves stand on the left: the largest power of two below n. */
    private static int leftOf(int n) {
        return Integer.highestOneBit(n - 1);
    }

    private static void within(int value, int least, int most) {
        if (value < least || value > most) {
            throw new IndexOutOfBoundsException("found " + value + ", expected " + least + " to " + most);
        }
    }
}
