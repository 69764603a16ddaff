package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** A text, free or of a stated form. */
public final class Text implements Shape {
    private final String words;
    private final String pattern;
    private final Pattern compiled;
    private final Consumer<String> reader;

    /**
     * Makes a shape.
     *
     * @param words what is expected
     * @param pattern the form as a pattern that Java and ECMA-262 read alike; empty for free text
     * @param reader throws {@link RuntimeException} for a text that has the form and yet means nothing
     */
    public Text(String words, String pattern, Consumer<String> reader) {
        this.words = words;
        this.pattern = pattern;
        this.compiled = Pattern.compile(pattern);
        this.reader = reader;
    }

    /** Makes such a shape. */
    public static Text free(String words) {
        return new Text(words, "", t -> {});
    }

    /** Makes such a shape. */
    public static Text of(String words, String pattern) {
        return new Text(words, pattern, t -> {});
    }

    /** The pattern; empty for free text. */
    String pattern() {
        return pattern;
    }

    @Override
    public String words() {
        return words;
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.SCALAR;
    }

    /** What is wrong with a text; empty if nothing is. */
    String fault(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isISOControl(c) && c != '\n' && c != '\t') {
                return "a control character";
            }
            if (Character.isSurrogate(c)
                    && (i + 1 >= text.length() || !Character.isSurrogatePair(c, text.charAt(i + 1)))
                    && (i == 0 || !Character.isSurrogatePair(text.charAt(i - 1), c))) {
                return "half a character";
            }
        }
        if (!pattern.isEmpty() && !compiled.matcher(text).matches()) {
            return "form";
        }
        try {
            reader.accept(text);
            return "";
        } catch (RuntimeException e) {
            return "value";
        }
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (at.form() == Tree.Form.MAPPING) {
            problems.stop(at, Problems.found(at), words, "put a text that holds a colon into quotation marks");
            return;
        }
        if (!fits(at, problems)) {
            return;
        }
        String fault = fault(at.text());
        if (!fault.isEmpty()) {
            String simpler =
                    at.text().strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
            boolean idLike = words.startsWith("an id") && fault(simpler).isEmpty();
            problems.stop(at, Problems.quote(at.text()), words, idLike ? "write " + simpler : "");
        }
    }

    @Override
    public ObjectNode schema() {
        ObjectNode s = Shape.node();
        if (pattern.isEmpty()) {
            s.putArray("type").add("string").add("number").add("boolean");
        } else {
            // An editor takes plain digits for a number where we take them as typed.
            if (compiled.matcher("1.5").matches()) {
                s.putArray("type").add("string").add("number");
                s.put("minimum", 0);
            } else if (compiled.matcher("12").matches()
                    || compiled.matcher("2412").matches()) {
                s.putArray("type").add("string").add("integer");
                s.put("minimum", 0);
            } else {
                s.put("type", "string");
            }
            s.put("pattern", "^(?:" + pattern + ")$");
        }
        return s;
    }
}
