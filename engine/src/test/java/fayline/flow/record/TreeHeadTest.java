package fayline.flow.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.payload.Value;
import fayline.flow.record.proof.HashTree;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Heads of the tree: on paper, signed, and against a record. */
class TreeHeadTest {
    private static final Instant NOW = Instant.parse("2026-04-27T06:00:00Z");

    /** "foobar" in RFC 4648, section 10, is MZXW6YTBOI======; ten zero bytes follow here. */
    @Test
    void should_print_the_digits_of_RFC_4648() {
        String root = HexFormat.of().formatHex("foobar".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
                + "00".repeat(26);

        TreeHead head = new TreeHead(128, root);

        assertThat(head.paper()).isEqualTo("128-MZXW6-YTBOI-AAAAA-AAAAA-AAAAA-A");
        assertThat(KeptHead.parse(head.paper())).isEqualTo(new TreeHead(128, root.substring(0, 32)));
    }

    @Test
    void should_read_from_paper_what_a_tired_hand_types() {
        TreeHead head = new TreeHead(7, "73c4e8".concat("1f".repeat(29)));

        TreeHead kept = new TreeHead(7, head.root().substring(0, 32));
        assertThat(KeptHead.parse(head.paper().toLowerCase(java.util.Locale.ROOT)))
                .isEqualTo(kept);
        assertThat(KeptHead.parse(
                        head.paper().replace('O', '0').replace('I', '1').replace('B', '8')))
                .isEqualTo(kept);
        assertThat(KeptHead.parse(" 7-" + head.paper().substring(2).replace("-", "") + " "))
                .isEqualTo(kept);
    }

    @Test
    void should_say_what_was_expected_when_a_head_is_misread() {
        assertThatThrownBy(() -> KeptHead.parse("128-MZXW6-YTBOI"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("128-MZXW6-YTBOI")
                .hasMessageContaining("expected");
        assertThatThrownBy(() -> new TreeHead(1, "ab")).hasMessageContaining("expected a sequence number and 32 or 64");
    }

    @Test
    void should_find_a_rewritten_chain_and_a_cut_tail_when_a_head_was_kept_on_paper() {
        List<Entry> chain = ChainTest.chain(12);
        HashTree tree = HashTree.over(chain.stream()
                .limit(9)
                .map(e -> HexFormat.of().parseHex(e.hash()))
                .toList());
        KeptHead kept = KeptHead.parse(TreeHead.of(9, tree.root()).paper());

        assertThat(Chain.check(chain, Optional.of(kept))).isEmpty();
        assertThat(Chain.check(chain.subList(0, 8), Optional.of(kept))
                        .orElseThrow()
                        .seq())
                .isEqualTo(9);
        List<Entry> other = rewritten(chain, 4);
        assertThat(Chain.check(other, Optional.empty())).isEmpty();
        assertThat(Chain.check(other, Optional.of(kept)).orElseThrow().sentence())
                .isEqualTo("entry 9: it does not fit the head kept outside: the record was rewritten at or before it");
    }

    /** The chain with another payload in one entry and every hash from there on made anew. */
    private static List<Entry> rewritten(List<Entry> chain, int at) {
        MemoryLog log = new MemoryLog(chain.subList(0, at));
        for (Entry e : chain.subList(at, chain.size())) {
            Value.Fields payload = e.seq() == at + 1 ? e.fields().with("text", "quite all right") : e.fields();
            log.append(
                    new NewEntry(e.client(), e.by(), e.phone(), e.taken(), e.project(), e.kind(), payload, e.files()));
        }
        return log.read(1);
    }

    @Test
    void should_tell_the_tree_up_to_the_last_sound_entry() {
        List<Entry> chain = ChainTest.chain(5);
        Chain check = new Chain(Optional.of(new Head(4, "0".repeat(64))));
        chain.forEach(check::next);

        assertThat(check.head().seq()).isEqualTo(3);
        assertThat(check.treeHead())
                .isEqualTo(TreeHead.of(
                        3,
                        HashTree.over(chain.stream()
                                        .limit(3)
                                        .map(e -> HexFormat.of().parseHex(e.hash()))
                                        .toList())
                                .root()));
    }

    @Test
    void should_hold_a_signature_and_refuse_every_change_under_it() throws Exception {
        KeyPair key = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        TreeHead head = new TreeHead(128, "ab".repeat(32));

        SignedHead signed = SignedHead.sign(head, NOW, key.getPublic(), key.getPrivate());

        assertThat(signed.holds()).isTrue();
        assertThat(SignedHead.parse(signed.text())).isEqualTo(signed);
        assertThat(new SignedHead(new TreeHead(129, head.root()), signed.at(), signed.key(), signed.signature())
                        .holds())
                .isFalse();
        assertThat(new SignedHead(head, "2026-04-27T06:00:01Z", signed.key(), signed.signature()).holds())
                .isFalse();
        assertThat(new SignedHead(head, signed.at(), "xx", signed.signature()).holds())
                .isFalse();
        assertThatThrownBy(() -> SignedHead.parse(signed.text().replace("128", "127")))
                .hasMessageContaining("does not hold");
        assertThatThrownBy(() -> SignedHead.parse("{}")).hasMessageContaining("as its QR code holds it");
    }
}
