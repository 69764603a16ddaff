package fayline.flow.record.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Trees and proofs against printed vectors, and at every size up to 64 against the recursive definitions of RFC 9162 sections
 * 2.1.1, 2.1.3.1 and 2.1.4.1 written out as they stand.
 */
class HashTreeTest {
    private static final int SIZES = 64;

    /** Leaves of the reference vectors for Certificate Transparency trees, RFC 6962; roots and proofs below from the same. */
    private static final List<byte[]> LEAVES = List.of(
                    "", "00", "10", "2021", "3031", "40414243", "5051525354555657", "606162636465666768696a6b6c6d6e6f")
            .stream()
            .map(HexFormat.of()::parseHex)
            .toList();

    @Test
    void should_give_the_printed_roots_when_leaves_are_those_of_the_reference_vectors() {
        HashTree tree = HashTree.over(LEAVES);

        assertThat(IntStream.of(0, 1, 2, 3, 5, 8).mapToObj(n -> tree.root(n).hex()))
                .containsExactly(
                        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
                        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
                        "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
                        "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
                        "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
                        "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");
        assertThat(tree.root()).isEqualTo(tree.root(8));
    }

    @Test
    void should_give_the_printed_proofs_when_leaves_are_those_of_the_reference_vectors() {
        HashTree tree = HashTree.over(LEAVES);

        assertThat(hex(tree.inclusion(0, 8)))
                .containsExactly(
                        "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
                        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
                        "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4");
        assertThat(hex(tree.inclusion(1, 5)))
                .containsExactly(
                        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
                        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
                        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b");
        assertThat(hex(tree.consistency(2, 5)))
                .containsExactly(
                        "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
                        "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b");
    }

    private static List<String> hex(List<Digest> path) {
        return path.stream().map(Digest::hex).toList();
    }

    @Test
    void should_agree_with_the_definition_at_every_size_and_place() {
        HashTree tree = new HashTree();
        List<byte[]> leaves = new ArrayList<>();
        for (int n = 1; n <= SIZES; n++) {
            leaves.add(new byte[] {(byte) n, 7});
            tree.add(leaves.get(n - 1));
            assertThat(tree.root()).isEqualTo(root(leaves));
            for (int m = 0; m < n; m++) {
                assertThat(tree.inclusion(m, n)).isEqualTo(path(m, leaves));
                assertThat(tree.consistency(m + 1, n)).isEqualTo(m + 1 == n ? List.of() : sub(m + 1, leaves, true));
            }
        }
        assertThat(IntStream.rangeClosed(0, SIZES).mapToObj(tree::root))
                .as("roots of earlier sizes")
                .containsExactlyElementsOf(IntStream.rangeClosed(0, SIZES)
                        .mapToObj(n -> root(leaves.subList(0, n)))
                        .toList());
    }

    @Test
    void should_hold_true_proofs_and_no_flipped_bit_at_every_size_and_place() {
        HashTree tree = new HashTree();
        for (int n = 1; n <= SIZES; n++) {
            tree.add(new byte[] {(byte) n});
            Digest root = tree.root();
            for (int m = 0; m < n; m++) {
                int place = m;
                byte[] leaf = {(byte) (m + 1)};
                List<Digest> inclusion = tree.inclusion(m, n);
                assertThat(Proof.holdsLeaf(m, n, leaf, inclusion, root)).isTrue();
                assertThat(Proof.holdsLeaf(m, n, new byte[] {0}, inclusion, root))
                        .isFalse();
                Digest before = tree.root(m + 1);
                List<Digest> consistency = tree.consistency(m + 1, n);
                assertThat(Proof.holdsEarlier(m + 1, n, before, consistency, root))
                        .isTrue();
                for (int k = 0; k < Digest.BYTES * 8; k += 37) {
                    int bit = k;
                    assertThat(flips(inclusion, bit))
                            .noneMatch(p -> Proof.holdsLeaf(place, tree.size(), leaf, p, root));
                    assertThat(flips(consistency, bit))
                            .noneMatch(p -> Proof.holdsEarlier(place + 1, tree.size(), before, p, root));
                    assertThat(Proof.holdsLeaf(m, n, leaf, inclusion, flip(root, bit)))
                            .isFalse();
                    assertThat(Proof.holdsEarlier(m + 1, n, before, consistency, flip(root, bit)))
                            .isFalse();
                    assertThat(Proof.holdsEarlier(m + 1, n, flip(before, bit), consistency, root))
                            .isFalse();
                }
            }
        }
    }

    private static List<List<Digest>> flips(List<Digest> path, int bit) {
        List<List<Digest>> all = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            List<Digest> one = new ArrayList<>(path);
            one.set(i, flip(path.get(i), bit));
            all.add(one);
        }
        return all;
    }

    private static Digest flip(Digest d, int bit) {
        byte[] bytes = d.bytes();
        bytes[bit / 8] ^= (byte) (1 << bit % 8);
        return Digest.of(bytes);
    }

    @Test
    void should_hold_no_proof_at_another_place_or_size() {
        HashTree tree = new HashTree();
        IntStream.range(0, SIZES).forEach(i -> tree.add(new byte[] {(byte) i}));

        for (int n = 1; n <= SIZES; n++) {
            for (int m = 0; m < n; m++) {
                byte[] leaf = {(byte) m};
                List<Digest> path = tree.inclusion(m, n);
                Digest root = tree.root(n);
                assertThat(Proof.holdsLeaf(m + 1, n, leaf, path, root)).isFalse();
                assertThat(Proof.holdsLeaf(m - 1, n, leaf, path, root)).isFalse();
                List<Digest> longer = new ArrayList<>(path);
                longer.add(root);
                assertThat(Proof.holdsLeaf(m, n, leaf, longer, root)).isFalse();
                if (!path.isEmpty()) {
                    assertThat(Proof.holdsLeaf(m, n, leaf, path.subList(1, path.size()), root))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void should_begin_with_the_empty_tree_and_no_other_when_first_size_is_nought() {
        HashTree tree = HashTree.over(LEAVES);

        assertThat(tree.consistency(0, 8)).isEmpty();
        assertThat(Proof.holdsEarlier(0, 8, tree.root(0), List.of(), tree.root()))
                .isTrue();
        assertThat(Proof.holdsEarlier(0, 8, tree.root(1), List.of(), tree.root()))
                .isFalse();
        assertThat(Proof.holdsEarlier(0, 0, tree.root(0), List.of(), tree.root()))
                .isFalse();
    }

    @Test
    void should_refuse_places_and_sizes_that_never_were() {
        HashTree tree = HashTree.over(LEAVES);

        assertThatThrownBy(() -> tree.root(9)).hasMessage("found 9, expected 0 to 8");
        assertThatThrownBy(() -> tree.inclusion(8, 8)).hasMessage("found 8, expected 0 to 7");
        assertThatThrownBy(() -> tree.consistency(6, 5)).hasMessage("found 6, expected 0 to 5");
        assertThatThrownBy(() -> Digest.ofHex("00")).hasMessageContaining("expected the 32 of SHA-256");
    }

    private static Digest root(List<byte[]> d) {
        if (d.isEmpty()) {
            return Digest.ofNothing();
        }
        if (d.size() == 1) {
            return Digest.ofLeaf(d.get(0));
        }
        int k = split(d);
        return Digest.ofNode(root(d.subList(0, k)), root(d.subList(k, d.size())));
    }

    private static List<Digest> path(int m, List<byte[]> d) {
        List<Digest> p = new ArrayList<>();
        if (d.size() > 1) {
            int k = split(d);
            p.addAll(m < k ? path(m, d.subList(0, k)) : path(m - k, d.subList(k, d.size())));
            p.add(m < k ? root(d.subList(k, d.size())) : root(d.subList(0, k)));
        }
        return p;
    }

    private static List<Digest> sub(int m, List<byte[]> d, boolean b) {
        List<Digest> p = new ArrayList<>();
        if (m == d.size()) {
            return b ? p : List.of(root(d));
        }
        int k = split(d);
        if (m <= k) {
            p.addAll(sub(m, d.subList(0, k), b));
            p.add(root(d.subList(k, d.size())));
        } else {
            p.addAll(sub(m - k, d.subList(k, d.size()), false));
            p.add(root(d.subList(0, k)));
        }
        return p;
    }

    private static int split(List<byte[]> d) {
        int k = 1;
        while (2 * k < d.size()) {
            k *= 2;
        }
        return k;
    }
}
