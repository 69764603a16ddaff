package fayline.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the JSON cells of the check tables: objects, lists, numbers, texts, true and false; null is an empty object. */
final class MiniJson {
    private final String text;
    private int at;

    private MiniJson(String text) {
        this.text = text;
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> object(String text) {
        return (Map<String, Object>) new MiniJson(text).value();
    }

    private Object value() {
        blank();
        char c = text.charAt(at);
        if (c == '{') {
            return members();
        }
        if (c == '[') {
            return elements();
        }
        if (c == '"') {
            return string();
        }
        int from = at;
        while (at < text.length() && ",]} \n".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String word = text.substring(from, at);
        if (word.equals("true") || word.equals("false")) {
            return Boolean.parseBoolean(word);
        }
        return word.equals("null") ? Map.of() : Double.valueOf(word);
    }

    private Map<String, Object> members() {
        Map<String, Object> all = new LinkedHashMap<>();
        at++;
        blank();
        while (text.charAt(at) != '}') {
            blank();
            String key = string();
            blank();
            at++;
            all.put(key, value());
            separator();
        }
        at++;
        return all;
    }

    private List<Object> elements() {
        List<Object> all = new ArrayList<>();
        at++;
        blank();
        while (text.charAt(at) != ']') {
            all.add(value());
            separator();
        }
        at++;
        return all;
    }

    private void separator() {
        blank();
        if (text.charAt(at) == ',') {
            at++;
            blank();
        }
    }

    private String string() {
        StringBuilder s = new StringBuilder();
        at++;
        while (text.charAt(at) != '"') {
            if (text.charAt(at) == '\\') {
                at++;
                if (text.charAt(at) == 'u') {
                    s.append((char) Integer.parseInt(text.substring(at + 1, at + 5), 16));
                    at += 5;
                    continue;
                }
            }
            s.append(text.charAt(at++));
        }
        at++;
        return s.toString();
    }

    private void blank() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }
}
