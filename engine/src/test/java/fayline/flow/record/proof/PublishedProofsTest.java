package fayline.flow.record.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * True and false proofs published with the open implementation of verifiable logs at github.com/transparency-dev/merkle
 * (Apache 2.0), 518 files. They are not ours to carry: give the folder that holds {@code testdata} as
 * {@code -Dfayline.vectors=FOLDER}; without it this test is skipped, and {@link HashTreeTest} stands alone.
 */
class PublishedProofsTest {
    private static final Pattern WHOLE = Pattern.compile("\"(\\w+)\":\\s*(\\d+|true|false)");
    private static final Pattern TEXT = Pattern.compile("\"(\\w+)\":\\s*\"([^\"]*)\"");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern PROOF = Pattern.compile("\"proof\":\\s*\\[([^\\]]*)\\]");

    @Test
    void should_judge_every_published_proof_as_published() throws IOException {
        String folder = System.getProperty("fayline.vectors", "");
        assumeTrue(!folder.isEmpty(), "no folder of published proofs was given (-Dfayline.vectors=FOLDER)");

        List<String> other = new ArrayList<>();
        int judged = 0;
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                String json = Files.readString(file);
                if (holds(json) == "true".equals(field(WHOLE, json, "wantErr"))) {
                    other.add(file.toString());
                }
                judged++;
            }
        }
        assertThat(other)
                .as(
                        "judged otherwise; the publishers refuse any proof from size 0 on, for us every tree begins with the empty one")
                .allMatch(f -> f.endsWith("consistency/additional/size1-is-zero-and-size2-is-not-zero.json"))
                .hasSizeLessThanOrEqualTo(1);
        assertThat(judged).isGreaterThanOrEqualTo(518);
    }

    private static boolean holds(String json) {
        List<Digest> path = new ArrayList<>();
        Digest first;
        Digest root;
        try {
            Matcher proof = PROOF.matcher(json);
            if (proof.find()) {
                Matcher quoted = QUOTED.matcher(proof.group(1));
                while (quoted.find()) {
                    path.add(digest(quoted.group(1)));
                }
            }
            first = json.contains("leafHash") ? digest(field(TEXT, json, "leafHash")) : rootNamed(json, "root1");
            root = rootNamed(json, json.contains("leafHash") ? "root" : "root2");
        } catch (IllegalArgumentException notAHash) {
            return false;
        }
        long from = number(json, "start");
        if (json.contains("leafHash")) {
            long to = json.contains("treeSize") ? number(json, "treeSize") : number(json, "end");
            long leaf = number(json, "leafIdx");
            // A subtree is a tree of its own, where it is one that a tree can hold.
            return (to - from <= 1 || from % (Long.highestOneBit(to - from - 1) * 2) == 0)
                    && Proof.holdsLeafHash(leaf - from, to - from, first, path, root);
        }
        return json.contains("\"size\"")
                ? Proof.holdsWithin(from, number(json, "end"), number(json, "size"), first, path, root)
                : Proof.holdsEarlier(number(json, "size1"), number(json, "size2"), first, path, root);
    }

    /** A root; where the file has a short word in its place, some hash that stands for that word. */
    private static Digest rootNamed(String json, String name) {
        String root = field(TEXT, json, name);
        byte[] bytes = Base64.getDecoder().decode(root);
        return bytes.length == Digest.BYTES ? Digest.of(bytes) : Digest.ofLeaf(bytes);
    }

    private static Digest digest(String base64) {
        return Digest.of(Base64.getDecoder().decode(base64));
    }

    private static long number(String json, String name) {
        String n = field(WHOLE, json, name);
        return n.isEmpty() ? 0 : Long.parseUnsignedLong(n);
    }

    private static String field(Pattern form, String json, String name) {
        Matcher m = form.matcher(json);
        while (m.find()) {
            if (m.group(1).equals(name)) {
                return m.group(2);
            }
        }
        return "";
    }
}
