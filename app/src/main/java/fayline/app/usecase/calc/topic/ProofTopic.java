package fayline.app.usecase.calc.topic;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.flow.record.proof.Digest;
import fayline.flow.record.proof.HashTree;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** The tree beside the record's chain, for checking it from outside. */
public final class ProofTopic implements CalcTopic {
    private static final int MOST = 100_000;
    private static final Form PAIR = Form.empty()
            .needs("leaf", Kind.whole(0), "place of the leaf, from 0")
            .needs("size", Kind.whole(1), "size of the tree");
    private static final Form GROWTH = Form.empty()
            .needs("first", Kind.whole(0), "the earlier size")
            .needs("second", Kind.whole(0), "the later size");
    private static final Form FORM = Form.empty()
            .needs(
                    "leaves",
                    Kind.list(Kind.text(), 0),
                    "each leaf's bytes in order, in hexadecimal digits; may be empty")
            .takes("sizes", Kind.list(Kind.whole(0), 1), "the root at these sizes")
            .takes("inclusion", Kind.list(PAIR.asKind(), 1), "proofs that a leaf stands in the tree of some size")
            .takes("consistency", Kind.list(GROWTH.asKind(), 1), "proofs that a tree begins with an earlier one");

    @Override
    public String name() {
        return "proof";
    }

    @Override
    public String about() {
        return "Roots and proofs of a tree of hashes as it stands beside the record.";
    }

    @Override
    public ObjectNode schema() {
        return FORM.schema(name(), about());
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        Given in = FORM.read(inputs);
        HashTree tree = HashTree.over(leaves(in));
        ObjectNode out = Json.object();
        out.put("size", tree.size());
        out.put("root", tree.root().hex());
        if (in.has("sizes")) {
            ArrayNode roots = out.putArray("roots");
            for (double size : in.numbers("sizes")) {
                within("sizes", size, 0, tree.size());
                roots.add(tree.root((int) size).hex());
            }
        }
        if (in.has("inclusion")) {
            ArrayNode proofs = out.putArray("inclusion");
            for (Given p : in.objects("inclusion")) {
                within("inclusion.size", p.whole("size"), 1, tree.size());
                within("inclusion.leaf", p.whole("leaf"), 0, p.whole("size") - 1);
                path(proofs.addArray(), tree.inclusion(p.whole("leaf"), p.whole("size")));
            }
        }
        if (in.has("consistency")) {
            ArrayNode proofs = out.putArray("consistency");
            for (Given p : in.objects("consistency")) {
                within("consistency.second", p.whole("second"), 0, tree.size());
                within("consistency.first", p.whole("first"), 0, p.whole("second"));
                path(proofs.addArray(), tree.consistency(p.whole("first"), p.whole("second")));
            }
        }
        return new CalcAnswer(
                out,
                Map.of(),
                List.of(
                        "SHA-256 over a byte 0 and a leaf, over a byte 1 and two hashes; split at the largest power of two below n"),
                List.of("rfc9162"),
                List.of(
                        "A proof shows that nothing was altered since the root was kept elsewhere; not that it was true when it was"
                                + " written."),
                false);
    }

    private static void within(String field, double found, int least, int most) {
        if (found < least || found > most) {
            throw CalcInputException.of(field, String.valueOf((long) found), least + " to " + most);
        }
    }

    private static void path(ArrayNode into, List<Digest> path) {
        path.forEach(d -> into.add(d.hex()));
    }

    private static List<byte[]> leaves(Given in) {
        List<String> texts = in.texts("leaves");
        if (texts.size() > MOST) {
            throw CalcInputException.of("leaves", texts.size() + " leaves", "at most " + MOST);
        }
        List<byte[]> leaves = new ArrayList<>();
        for (String text : texts) {
            try {
                leaves.add(HexFormat.of().parseHex(text));
            } catch (IllegalArgumentException e) {
                throw CalcInputException.of(
                        "leaves[" + leaves.size() + "]", "\"" + text + "\"", "pairs of hexadecimal digits");
            }
        }
        return leaves;
    }
}
