package fayline.flow.result.expand;

import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.recipe.Recipe;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parameters of a recipe as one part gives them, usual values included. A field is filled in wherever it says
 * {@code with.NAME}. On a joint {@code with.adhesive} is the joint's own where nothing else is given.
 */
final class With {
    private static final Pattern USE = Pattern.compile("\\bwith\\.([a-z0-9]+(?:-[a-z0-9]+)*)");
    private static final Set<String> NO = Set.of("", "no", "0", "none", "false");

    private final Map<String, String> values = new HashMap<>();

    With(Recipe recipe, Make make, Made made) {
        if (made instanceof Joint joint) {
            values.put("adhesive", joint.adhesive());
        }
        recipe.parameters().stream().filter(p -> !p.usual().isEmpty()).forEach(p -> values.put(p.id(), p.usual()));
        values.putAll(make.with());
    }

    /** A parameter's value, where there is one. */
    Optional<String> get(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** A field with ids filled in. An unknown parameter stays as it is written: the definition was not verified. */
    String value(String text) {
        return fill(text, v -> v);
    }

    /** A text with the names of things filled in instead of their ids. */
    String words(String text, Names names) {
        return fill(text, names::of);
    }

    /** Texts with the names of things filled in. */
    List<String> words(List<String> texts, Names names) {
        return texts.stream().map(t -> words(t, names)).toList();
    }

    /**
     * A field that is a number.
     *
     * @param fallback the number where the field is empty or none
     */
    double number(String text, double fallback) {
        try {
            return Double.parseDouble(value(text).trim());
        } catch (NumberFormatException e) {
            return fallback;
        }
    }

    /** Whether a step with this condition exists. */
    boolean exists(String when) {
        if (when.isEmpty()) {
            return true;
        }
        String name = when.startsWith("with.") ? when.substring("with.".length()) : when;
        return !NO.contains(values.getOrDefault(name, ""));
    }

    private String fill(String text, UnaryOperator<String> show) {
        if (!text.contains("with.")) {
            return text;
        }
        Matcher m = USE.matcher(text);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            String value = values.get(m.group(1));
            m.appendReplacement(out, Matcher.quoteReplacement(value == null ? m.group() : show.apply(value)));
        }
        return m.appendTail(out).toString();
    }
}
