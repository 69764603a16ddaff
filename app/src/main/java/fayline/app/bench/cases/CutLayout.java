package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.cases.RawFile;
import java.util.List;
import java.util.Optional;

/** One JSON object a file with a {@code format}, {@code rolls}, {@code plies} and what to {@code expect} of the cut plan. */
final class CutLayout implements Layout {
    @Override
    public Optional<CaseFile> read(RawFile file) {
        Optional<JsonNode> json =
                file.json().filter(j -> j.path("format").asText("").startsWith("cut-check"));
        if (json.isEmpty()) {
            return Optional.empty();
        }
        JsonNode j = json.get();
        for (String part : List.of("rolls", "plies")) {
            if (!j.path(part).isArray() || j.path(part).isEmpty()) {
                throw new UnreadableCasesException(part + ": found " + Json.shown(j.path(part)) + ", expected a list");
            }
        }
        for (JsonNode ply : j.path("plies")) {
            if (!ply.path("vertices").isArray() || ply.path("vertices").size() < 3) {
                throw new UnreadableCasesException(
                        "plies: found " + Json.shown(ply) + ", expected at least three vertices");
            }
        }
        for (JsonNode roll : j.path("rolls")) {
            if (!roll.path("width").isNumber()) {
                throw new UnreadableCasesException("rolls: found " + Json.shown(roll) + ", expected a width");
            }
        }
        if (!j.path("id").isTextual() || !j.path("expect").isObject()) {
            throw new UnreadableCasesException("found " + Json.shown(j) + ", expected an id and an object expect");
        }
        CutCase c = new CutCase(j.path("id").asText(), j.path("rolls"), j.path("plies"), j.path("expect"));
        return Optional.of(new CaseFile(file.path(), file.name(), List.of(c)));
    }

    /** A cut plan with a known least length. No subject of today cuts. */
    record CutCase(String id, JsonNode rolls, JsonNode plies, JsonNode expect) implements CheckCase {
        @Override
        public Verdict judge(CaseFile file) {
            return new Verdict(
                    file.path(), id, Verdict.Outcome.NOT_COVERED, List.of(), "no subject here answers cut plans");
        }
    }
}
