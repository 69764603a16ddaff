package fayline.app.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.topic.Topics;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fayline calc}: one JSON object in, one out; or many, a line each, in one process. */
@Command(
        name = "calc",
        mixinStandardHelpOptions = true,
        description = {
            "Reads the inputs of one calculation as a JSON object on standard input and writes the answer as one.",
            "Exit code 1 when the answer is no. Each topic has a page with schema and example in docs/calc."
        })
final class CalcCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "TOPIC", description = "what to reckon; --list names the topics")
    private @Nullable String topic;

    @Option(names = "--list", description = "names the topics, one a line")
    private boolean list;

    @Option(
            names = "--lines",
            description =
                    "answers lines {\"topic\": ..., \"inputs\": {...}} in order, one line each; empty lines are passed"
                            + " over")
    private boolean lines;

    @Option(names = "--schema", description = "writes the JSON Schema of the topic's inputs")
    private boolean schema;

    CalcCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        PrintStream out = surroundings.out();
        if (list) {
            Topics.all().forEach(t -> out.println(t.name()));
            return ExitCode.DONE;
        }
        if (lines) {
            if (topic != null) {
                throw new CommandLine.ParameterException(
                        spec.commandLine(), "with --lines each line names its topic; found " + topic + " as well");
            }
            return answerLines();
        }
        if (topic == null) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "expected a topic, --lines or --list; topics are " + Topics.names());
        }
        CalcTopic asked = Topics.named(topic);
        if (schema) {
            out.println(Json.pretty(asked.schema()));
            return ExitCode.DONE;
        }
        CalcAnswer answer = asked.answer(Json.read(everything()));
        out.println(Json.pretty(answer.toJson(asked.name())));
        return answer.saysNo() ? ExitCode.SAYS_NO : ExitCode.DONE;
    }

    private String everything() throws IOException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(java.nio.ByteBuffer.wrap(surroundings.in().readAllBytes()))
                    .toString();
        } catch (CharacterCodingException e) {
            throw CalcInputException.of("standard input", "bytes that are not UTF-8", "one JSON object in UTF-8");
        }
    }

    private int answerLines() throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            if (!line.isBlank()) {
                surroundings.out().println(Json.line(answerLine(line)));
                surroundings.out().flush();
            }
        }
        return ExitCode.DONE;
    }

    private static ObjectNode answerLine(String line) {
        ObjectNode error = Json.object();
        error.putNull("topic");
        try {
            JsonNode question = Json.read(line);
            if (!question.path("topic").isTextual()) {
                throw CalcInputException.of("topic", Json.shown(question.path("topic")), "one of " + Topics.names());
            }
            String name = question.path("topic").asText();
            error.put("topic", name);
            CalcTopic asked = Topics.named(name);
            JsonNode inputs = question.get("inputs");
            if (inputs == null) {
                throw CalcInputException.of("inputs", "nothing", "one JSON object");
            }
            for (String key : (Iterable<String>) question::fieldNames) {
                if (!"topic".equals(key) && !"inputs".equals(key)) {
                    throw CalcInputException.of(key, "an unknown field", "only topic and inputs");
                }
            }
            return asked.answer(inputs).toJson(name);
        } catch (CalcInputException e) {
            return error.put("error", e.getMessage());
        } catch (RuntimeException e) {
            // One line that trips over a mistake of ours must not take the answers to the others with it.
            return error.put("error", "a fault of the program: " + e);
        }
    }
}
