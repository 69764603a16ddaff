package fayline.flow.record.payload;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;

/** Writes values as RFC 8785 [rfc8785] section 3.2 does, and hashes texts. */
public final class CanonicalText {
    private static final String HEX = "0123456789abcdef";

    private CanonicalText() {}

    static void write(Value value, StringBuilder out) {
        if (value instanceof Value.Text t) {
            writeText(t.text(), out);
        } else if (value instanceof Value.Whole w) {
            out.append(w.number());
        } else if (value instanceof Value.Many m) {
            out.append('[');
            String comma = "";
            for (Value item : m.items()) {
                out.append(comma);
                write(item, out);
                comma = ",";
            }
            out.append(']');
        } else if (value instanceof Value.Fields f) {
            out.append('{');
            String comma = "";
            for (Map.Entry<String, Value> field : f.fields().entrySet()) {
                out.append(comma);
                writeText(field.getKey(), out);
                out.append(':');
                write(field.getValue(), out);
                comma = ",";
            }
            out.append('}');
        } else {
            throw new IllegalStateException("no canonical form for " + value.getClass());
        }
    }

    private static void writeText(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\t' -> out.append("\\t");
                case '\n' -> out.append("\\n");
                case '\f' -> out.append("\\f");
                case '\r' -> out.append("\\r");
                default -> {
                    if (c < 0x20) {
                        out.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }

    /** Refuses a text with half of a surrogate pair alone. */
    static void requireWhole(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(c)) {
                throw new IllegalArgumentException("character " + (i + 1) + " is half of a surrogate pair");
            }
        }
    }

    /** SHA-256 of the UTF-8 bytes of a text, 64 hexadecimal digits. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 of bytes, 64 hexadecimal digits. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
