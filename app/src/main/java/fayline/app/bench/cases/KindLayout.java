package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import fayline.app.usecase.cases.RawFile;
import java.util.List;
import java.util.Optional;

/** One JSON object a file with {@code id}, {@code kind}, {@code inputs}, {@code expected} and {@code tolerance}. */
final class KindLayout implements Layout {
    @Override
    public Optional<CaseFile> read(RawFile file) {
        Optional<JsonNode> json =
                file.json().filter(j -> j.path("kind").isTextual() && j.has("inputs") && j.has("expected"));
        if (json.isEmpty()) {
            return Optional.empty();
        }
        JsonNode j = json.get();
        for (String part : List.of("inputs", "expected", "tolerance")) {
            if (!j.path(part).isObject()) {
                throw new UnreadableCasesException(
                        part + ": found " + Json.shown(j.path(part)) + ", expected a JSON object");
            }
        }
        if (!j.path("id").isTextual()) {
            throw new UnreadableCasesException("id: found " + Json.shown(j.path("id")) + ", expected the case's name");
        }
        KindCase c = new KindCase(
                j.path("id").asText(),
                j.path("kind").asText(),
                j.path("inputs"),
                j.path("expected"),
                j.path("tolerance"));
        return Optional.of(new CaseFile(file.path(), file.name(), List.of(c)));
    }

    /** A case of a kind, answered by the topic that is named after it. */
    record KindCase(String id, String kind, JsonNode inputs, JsonNode expected, JsonNode tolerance)
            implements CheckCase {
        @Override
        public Verdict judge(CaseFile file) {
            Optional<CalcTopic> topic = Topics.all().stream()
                    .filter(t -> t.name().equals("fit." + kind))
                    .findFirst();
            if (topic.isEmpty()) {
                return new Verdict(
                        file.path(),
                        id,
                        Verdict.Outcome.NOT_COVERED,
                        List.of(),
                        "no subject here answers the kind " + kind);
            }
            try {
                List<Verdict.Difference> off = new NestedComparison(tolerance)
                        .of(expected, topic.get().answer(inputs).outputs());
                return new Verdict(
                        file.path(), id, off.isEmpty() ? Verdict.Outcome.HOLDS : Verdict.Outcome.DIFFERS, off, "");
            } catch (CalcInputException e) {
                return new Verdict(
                        file.path(),
                        id,
                        Verdict.Outcome.DIFFERS,
                        List.of(),
                        e.problems().get(0).sentence());
            }
        }
    }
}
