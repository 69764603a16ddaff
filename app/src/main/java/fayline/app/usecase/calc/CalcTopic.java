package fayline.app.usecase.calc;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** One subject that a script can ask about. */
public interface CalcTopic {
    /** The topic's name, as {@code cure}. */
    String name();

    /** What it answers, in one sentence. */
    String about();

    /** The JSON Schema (2020-12) of its inputs. */
    ObjectNode schema();

    /**
     * Answers one question.
     *
     * @param inputs one JSON object after {@link #schema()}
     * @return outputs with units, method, source and cautions
     * @throws CalcInputException if the inputs are not as the schema asks; names every field at fault
     */
    CalcAnswer answer(JsonNode inputs);
}
