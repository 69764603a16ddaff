package fayline.store.file.yaml;

import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a text as a YAML scalar: plain where nothing can mistake it, else in double quotation marks. */
final class YamlScalar {
    private static final Pattern PLAIN =
            Pattern.compile("[A-Za-z0-9.](?:[A-Za-z0-9 .%/+_²³µ°-]*[A-Za-z0-9.%/+_²³µ°-])?");
    private static final Pattern MOMENT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(?::\\d{2})?");
    private static final Pattern ZERO_FIRST = Pattern.compile("0[0-9].*");

    private YamlScalar() {}

    static String write(String value, boolean quoted) {
        boolean word =
                PLAIN.matcher(value).matches() && !ZERO_FIRST.matcher(value).matches() && !value.startsWith("...");
        boolean plain = !quoted && (word || MOMENT.matcher(value).matches());
        return plain ? value : inQuotes(value);
    }

    private static String inQuotes(String value) {
        StringBuilder b = new StringBuilder("\"");
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '"' -> b.append("\\\"");
                case '\\' -> b.append("\\\\");
                case '\n' -> b.append("\\n");
                case '\t' -> b.append("\\t");
                case '\r' -> b.append("\\r");
                default -> {
                    if (c < ' '
                            || (c >= 0x7f && c < 0xa0)
                            || c == 0x2028
                            || c == 0x2029
                            || c == 0xfeff
                            || c >= 0xfffe) {
                        b.append(String.format(Locale.ROOT, "\\u%04X", (int) c));
                    } else {
                        b.append(c);
                    }
                }
            }
        }
        return b.append('"').toString();
    }
}
