package fayline.flow.record.proof;

import java.util.List;

/**
 * Checks proofs without the tree they came from, with the steps of RFC 9162 sections 2.1.3.2 and 2.1.4.2. The second is written
 * for any subtree that a tree holds, of which the tree of an earlier size is the case that begins at leaf 0.
 */
public final class Proof {
    private Proof() {}

    /**
     * Whether a proof shows that a leaf stands in a tree.
     *
     * @param leaf the leaf's place, from 0
     * @param size size of the tree
     * @param bytes the leaf's own bytes
     * @param path the proof
     * @param root root of the tree
     */
    public static boolean holdsLeaf(long leaf, long size, byte[] bytes, List<Digest> path, Digest root) {
        return holdsLeafHash(leaf, size, Digest.ofLeaf(bytes), path, root);
    }

    static boolean holdsLeafHash(long leaf, long size, Digest leafHash, List<Digest> path, Digest root) {
        return leaf >= 0 && leaf < size && holdsWithin(leaf, leaf + 1, size, leafHash, path, root);
    }

    /**
     * Whether a proof shows that a tree begins with an earlier one.
     *
     * @param first size of the earlier tree
     * @param second size of the later tree
     * @param before root of the earlier tree
     * @param path the proof
     * @param after root of the later tree
     */
    public static boolean holdsEarlier(long first, long second, Digest before, List<Digest> path, Digest after) {
        boolean bothEmpty = second == 0;
        return holdsWithin(0, first, second, before, path, after) && (!bothEmpty || before.equals(after));
    }

    /**
     * Whether a proof shows that a tree holds a subtree over some of its leaves. The walk goes from the subtree's right edge up
     * to the root and rebuilds both hashes on the way.
     *
     * @param from first leaf of the subtree, a multiple of the least power of two that is not below its size
     * @param to leaf after its last
     * @param size size of the tree
     * @param part hash of the subtree
     * @param path the proof
     * @param root root of the tree
     */
    static boolean holdsWithin(long from, long to, long size, Digest part, List<Digest> path, Digest root) {
        if (from == to && from >= 0 && to <= size) {
            // Every tree holds the empty one; there is nothing to prove, and no proof to give.
            return path.isEmpty() && part.equals(Digest.ofNothing());
        }
        if (!isSubtree(from, to, size)) {
            return false;
        }
        Walk walk = new Walk(from, to - 1, size - 1);
        boolean whole = walk.climbToStart();
        if (!whole && path.isEmpty()) {
            return false;
        }
        Digest rebuiltPart = whole ? part : path.get(0);
        Digest rebuiltRoot = rebuiltPart;
        for (Digest beside : path.subList(whole ? 0 : 1, path.size())) {
            if (walk.atTop()) {
                return false;
            }
            if (walk.besideIsLeft()) {
                rebuiltPart = walk.insidePart() ? Digest.ofNode(beside, rebuiltPart) : rebuiltPart;
                rebuiltRoot = Digest.ofNode(beside, rebuiltRoot);
                walk.skipMissing();
            } else {
                rebuiltRoot = Digest.ofNode(rebuiltRoot, beside);
            }
            walk.up();
        }
        return walk.atTop() && rebuiltPart.equals(part) && rebuiltRoot.equals(root);
    }

    private static boolean isSubtree(long from, long to, long size) {
        if (from < 0 || to <= from || to > size) {
            return false;
        }
        long leaves = to - from;
        long span = leaves == 1 ? 1 : Long.highestOneBit(leaves - 1) << 1;
        return from % span == 0;
    }

    /** Places at one level of the tree: of the subtree's first and last node and of the tree's last. */
    private static final class Walk {
        private long first;
        private long last;
        private long end;

        Walk(long first, long last, long end) {
            this.first = first;
            this.last = last;
            this.end = end;
        }

        /** Climbs to where the proof begins; whether the subtree is one node there, whose hash is known. */
        boolean climbToStart() {
            boolean reachesEnd = last == end;
            while (first != last && (reachesEnd || last % 2 == 1)) {
                up();
            }
            return first == last;
        }

        boolean atTop() {
            return end == 0;
        }

        boolean besideIsLeft() {
            return last % 2 == 1 || last == end;
        }

        boolean insidePart() {
            return first < last;
        }

        /** Levels at which the last node has no neighbour and is its own parent. */
        void skipMissing() {
            while (last % 2 == 0) {
                up();
            }
        }

        void up() {
            first >>= 1;
            last >>= 1;
            end >>= 1;
        }
    }
}
