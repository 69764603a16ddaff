package fayline.store.file.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keys and positions from the top of a file.
 *
 * @param steps a key as {@link String}, a position as {@link Integer}, an item's id as {@link ById}
 */
record YamlPath(List<Object> steps) {
    private static final Pattern STEP = Pattern.compile("\\.?([^.\\[\\]]+)|\\[([^\\]]+)\\]");

    YamlPath {
        steps = List.copyOf(steps);
    }

    record ById(String id) {}

    static YamlPath parse(String path) {
        List<Object> steps = new ArrayList<>();
        Matcher m = STEP.matcher(path);
        int at = 0;
        while (at < path.length() && m.find(at) && m.start() == at) {
            if (m.group(1) != null) {
                steps.add(m.group(1));
            } else {
                String inside = m.group(2);
                steps.add(inside.matches("[0-9]{1,6}") ? (Object) Integer.valueOf(inside) : new ById(inside));
            }
            at = m.end();
        }
        if (at != path.length() || steps.isEmpty()) {
            throw new UneditableException("no path: " + Problems.quote(path));
        }
        return new YamlPath(steps);
    }

    YamlPath parent() {
        return new YamlPath(steps.subList(0, steps.size() - 1));
    }

    /** The last step if it is a key; else empty. */
    String lastKey() {
        return !steps.isEmpty() && steps.get(steps.size() - 1) instanceof String s ? s : "";
    }

    Optional<Tree> in(Tree root) {
        Tree at = root;
        for (Object step : steps) {
            Optional<Tree> next = Optional.empty();
            if (step instanceof String key) {
                next = at.get(key);
            } else {
                int i = position(at, step);
                next = i >= 0 && i < at.items().size() ? Optional.of(at.items().get(i)) : next;
            }
            if (next.isEmpty()) {
                return next;
            }
            at = next.get();
        }
        return Optional.of(at);
    }

    private static int position(Tree list, Object step) {
        if (step instanceof Integer i) {
            return i;
        }
        String id = step instanceof ById b ? b.id() : "";
        for (int i = 0; i < list.items().size(); i++) {
            if (list.items().get(i).get("id").map(Tree::text).filter(id::equals).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public String toString() {
        StringBuilder s = new StringBuilder();
        for (Object step : steps) {
            if (step instanceof String key) {
                s.append(s.length() > 0 ? "." : "").append(key);
            } else {
                s.append('[').append(step instanceof ById b ? b.id() : step).append(']');
            }
        }
        return s.toString();
    }
}
