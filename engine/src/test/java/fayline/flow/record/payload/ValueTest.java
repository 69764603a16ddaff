package fayline.flow.record.payload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ValueTest {
    /** The string rules of RFC 8785, section 3.2.2.2, and the key order of section 3.2.3 (the example there). */
    @Test
    void should_write_as_rfc_8785_when_text_needs_escapes_and_keys_need_order() {
        Value.Fields f = Value.Fields.NONE
                .with("\u20ac", "Euro Sign")
                .with("\r", "Carriage Return")
                .with("\ufb33", "Hebrew Letter Dalet With Dagesh")
                .with("1", "One")
                .with("\ud83d\ude00", "Emoji: Grinning Face")
                .with("\u0080", "Control")
                .with("\u00f6", "Latin Small Letter O With Diaeresis");
        assertThat(f.canonical())
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
        assertThat(new Value.Text("\u20ac$\u000f\nA'B\"\\\\\"/").canonical())
                .isEqualTo("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
    }

    @Test
    void should_give_the_same_value_when_canonical_text_is_read_back() {
        Random random = new Random(8785);
        for (int i = 0; i < 500; i++) {
            Value value = any(random, 0);
            assertThat(Value.parse(value.canonical())).isEqualTo(value);
        }
    }

    @Test
    void should_refuse_when_text_is_not_what_the_record_writes() {
        for (String bad : List.of(
                "",
                "{",
                "[1,]",
                "[1 ,2]",
                "{\"b\":1,\"a\":2}",
                "{\"a\":1,\"a\":1}",
                "1.5",
                "01",
                "-0",
                "true",
                "null",
                "\"\\u0041\"",
                "\"\\/\"",
                "\"a",
                "[1]x",
                "9007199254740992",
                "\"\\ud800\"",
                "[".repeat(200))) {
            assertThatThrownBy(() -> Value.parse(bad)).as(bad).isInstanceOf(NotCanonicalException.class);
        }
        assertThatThrownBy(() -> new Value.Text("half \ud83d pair")).isInstanceOf(IllegalArgumentException.class);
    }

    static Value any(Random random, int depth) {
        return switch (random.nextInt(depth > 3 ? 2 : 4)) {
            case 0 -> new Value.Text(text(random));
            case 1 -> new Value.Whole(random.nextLong() >> 12);
            case 2 -> {
                List<Value> items = new java.util.ArrayList<>();
                for (int i = random.nextInt(4); i > 0; i--) {
                    items.add(any(random, depth + 1));
                }
                yield new Value.Many(items);
            }
            default -> {
                Value.Fields f = Value.Fields.NONE;
                for (int i = random.nextInt(5); i > 0; i--) {
                    f = f.with(text(random), any(random, depth + 1));
                }
                yield f;
            }
        };
    }

    private static String text(Random random) {
        StringBuilder out = new StringBuilder();
        for (int i = random.nextInt(9); i > 0; i--) {
            int[] points = {random.nextInt(32), 34, 92, 47, 97 + random.nextInt(26), 0xe9, 0x20ac, 0xfb33, 0x1f600, 0x7f
            };
            out.appendCodePoint(points[random.nextInt(points.length)]);
        }
        return out.toString();
    }
}
