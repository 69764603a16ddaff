package fayline.app.usecase.calc;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** Reads and writes the JSON of questions and answers; a key given twice is refused. */
public final class Json {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final int SHOWN = 80;

    private Json() {}

    /** A new empty object. */
    public static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    /** A new empty list. */
    public static ArrayNode array() {
        return MAPPER.createArrayNode();
    }

    /**
     * Reads one JSON value.
     *
     * @param text the text
     * @return the value
     * @throws CalcInputException if the text is no JSON; says where
     */
    public static JsonNode read(String text) {
        try {
            JsonNode n = MAPPER.readTree(text);
            if (n == null || n.isMissingNode()) {
                throw CalcInputException.of("", "nothing", "one JSON object");
            }
            return n;
        } catch (JsonProcessingException e) {
            throw CalcInputException.of(
                    e.getLocation() == null
                            ? ""
                            : String.format(
                                    Locale.ROOT,
                                    "line %d, column %d",
                                    e.getLocation().getLineNr(),
                                    e.getLocation().getColumnNr()),
                    String.valueOf(e.getOriginalMessage()),
                    "one JSON value");
        }
    }

    /** One line of JSON. */
    public static String line(JsonNode n) {
        return n.toString();
    }

    /** JSON for people to read. */
    public static String pretty(JsonNode n) {
        return n.toPrettyString();
    }

    /** A value as messages show it, cut where it is long. */
    public static String shown(JsonNode n) {
        String s = n.toString();
        return s.length() <= SHOWN ? s : s.substring(0, SHOWN) + "...";
    }
}
