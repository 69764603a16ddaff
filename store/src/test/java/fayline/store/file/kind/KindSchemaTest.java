package fayline.store.file.kind;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.shape.Keys;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.UneditableException;
import fayline.store.file.yaml.YamlDoor;
import fayline.store.file.yaml.YamlEdit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/**
 * The schemas that editors use say the same as the reader. To write {@code schema/} and the tables of
 * {@code docs/definition.md} anew after a change, run this test with {@code -Dfayline.write=true}.
 */
class KindSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final String MARK = "<!-- The tables below are written from the reader's own description. -->\n";
    private static final boolean WRITE = Boolean.getBoolean("fayline.write");
    private static final Map<Kind, JsonSchema> SCHEMAS = new EnumMap<>(Kind.class);

    private static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo"))) {
            at = Optional.ofNullable(at.getParent()).orElseThrow();
        }
        return at;
    }

    private static boolean schemaTakes(Kind kind, String yaml) {
        JsonSchema schema = SCHEMAS.computeIfAbsent(
                kind,
                k -> JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(k.schema()));
        Load load = new Load(LoadSettings.builder().setSchema(new CoreSchema()).build());
        JsonNode node = JSON.valueToTree(load.loadFromString(yaml));
        return schema.validate(node).isEmpty();
    }

    private static boolean readerTakes(Kind kind, String yaml) {
        Problems problems = new Problems();
        Optional<Tree> tree = YamlDoor.read("f.yaml", yaml, problems);
        tree.ifPresent(t -> kind.file().check(t, problems));
        return problems.stops() == 0;
    }

    @Test
    void should_lie_in_the_schema_folder_as_the_reader_describes_it() throws IOException {
        for (Kind kind : Kind.values()) {
            Path file = root().resolve("schema").resolve(kind.key() + ".schema.json");
            String text = JSON.writeValueAsString(kind.schema()) + "\n";
            if (WRITE) {
                Files.writeString(file, text, StandardCharsets.UTF_8);
            }
            assertThat(JSON.readTree(Files.readString(file, StandardCharsets.UTF_8)))
                    .isEqualTo(JSON.readTree(text));
        }
    }

    @Test
    void should_be_described_key_by_key_on_the_page_of_the_definition() throws IOException {
        Path page = root().resolve("docs/definition.md");
        String text = Files.readString(page, StandardCharsets.UTF_8);
        String head = text.substring(0, text.indexOf(MARK) + MARK.length());
        if (WRITE) {
            Files.writeString(page, head + KeyTable.ofAllKinds(), StandardCharsets.UTF_8);
        }
        assertThat(Files.readString(page, StandardCharsets.UTF_8)).isEqualTo(head + KeyTable.ofAllKinds());
    }

    @Test
    void should_take_every_file_of_every_correct_project() throws IOException {
        int files = 0;
        for (String project : List.of(
                "demo/ousel",
                "store/src/test/resources/definition/teasel",
                "app/src/test/resources/projects/first",
                "app/src/test/resources/projects/second")) {
            DefinitionFolder folder = DefinitionFolder.from(root().resolve(project));
            for (String path : folder.paths()) {
                Optional<Kind> kind = Kind.ofPath(path);
                if (kind.isPresent()) {
                    String text = folder.text(path).orElseThrow();
                    assertThat(schemaTakes(kind.get(), text))
                            .as(project + "/" + path)
                            .isTrue();
                    assertThat(readerTakes(kind.get(), text))
                            .as(project + "/" + path)
                            .isTrue();
                    files++;
                }
            }
        }
        assertThat(files).isGreaterThan(60);
    }

    /** Every key of every mapping: taken out, misspelt, and every value replaced by things that it may or may not be. */
    @Test
    void should_agree_with_the_reader_when_any_value_or_key_is_changed() throws IOException {
        DefinitionFolder folder = DefinitionFolder.from(root().resolve("store/src/test/resources/definition/teasel"));
        List<String> differ = new ArrayList<>();
        int refused = 0;
        int taken = 0;
        for (String path : folder.paths()) {
            Optional<Kind> kind = Kind.ofPath(path);
            if (kind.isEmpty()) {
                continue;
            }
            String text = folder.text(path).orElseThrow();
            for (Changed c : changes(path, text)) {
                boolean reader = readerTakes(kind.get(), c.text());
                if (schemaTakes(kind.get(), c.text()) != reader) {
                    differ.add(path + " " + c.what() + (reader ? ": the reader takes it" : ": the schema takes it"));
                }
                refused += reader ? 0 : 1;
                taken += reader ? 1 : 0;
            }
        }
        // A word may have the form of a time zone without being one; only the reader knows them all.
        assertThat(differ).containsExactlyInAnyOrder("shop.yaml shop.zone = yes: the schema takes it");
        assertThat(refused).isGreaterThan(2000);
        assertThat(taken).isGreaterThan(300);
    }

    private record Changed(String what, String text) {}

    private static List<Changed> changes(String path, String text) {
        List<Tree> nodes = new ArrayList<>();
        collect(YamlDoor.read(path, text, new Problems()).orElseThrow(), nodes);
        List<Changed> all = new ArrayList<>();
        for (Tree t : nodes) {
            if (t.form() == Tree.Form.SCALAR) {
                for (String value : List.of(
                        "???",
                        "7",
                        "-7",
                        "0.5",
                        "7 mm",
                        "-7 mm",
                        "3/32 in",
                        "12 %",
                        "7 parsec",
                        "2026-03-02",
                        "yes",
                        "07:30",
                        "with.x",
                        "Zoë")) {
                    attempt(
                            all,
                            t.path() + " = " + value,
                            () -> YamlEdit.of(path, text).set(t.path(), value).text());
                }
            } else if (t.form() == Tree.Form.MAPPING && !t.path().isEmpty()) {
                attempt(
                        all,
                        t.path() + " with a key more",
                        () -> YamlEdit.of(path, text)
                                .set(t.path() + ".unheard-of", "x")
                                .text());
            }
            if (t.path().contains(".")) {
                attempt(
                        all,
                        t.path() + " taken out",
                        () -> YamlEdit.of(path, text).remove(t.path()).text());
            }
        }
        return all;
    }

    private interface Edit {
        String make();
    }

    private static void attempt(List<Changed> all, String what, Edit edit) {
        try {
            all.add(new Changed(what, edit.make()));
        } catch (UneditableException e) {
            // the only key of a mapping cannot be taken out line by line
        }
    }

    private static void collect(Tree t, List<Tree> into) {
        into.add(t);
        t.entries().values().forEach(c -> collect(c, into));
        t.items().forEach(c -> collect(c, into));
    }

    @Test
    void should_know_the_same_keys_as_the_reader_and_no_others() throws JsonProcessingException {
        for (Kind kind : Kind.values()) {
            JsonNode properties = kind.schema().at("/properties/" + kind.key());
            JsonNode item = kind.isList() ? properties.get("items") : properties;
            Keys keys = (Keys) (kind.isList() ? ((fayline.store.file.shape.Listed) kind.shape()).item() : kind.shape());
            List<String> known = new ArrayList<>();
            item.get("properties").fieldNames().forEachRemaining(known::add);
            known.removeIf(k -> k.equals("mold"));
            assertThat(known).containsExactlyElementsOf(keys.names());
            assertThat(item.get("additionalProperties").booleanValue()).isFalse();
        }
    }

    @Test
    void should_understand_the_other_spelling_of_mould_when_it_is_used() {
        String molds = "molds:\n  - {id: m, name: M, pulls: 0, since-touch-up: 0, since-full: 0, touch-up-every: 1, "
                + "full-every: 1}\n";
        assertThat(readerTakes(Kind.MOULDS, molds)).isTrue();
        assertThat(schemaTakes(Kind.MOULDS, molds)).isTrue();
        String recipe = """
                recipes:
                  - id: r
                    name: R
                    source: test
                    holds: [{what: mold, from: a, to: a}]
                    steps: [{id: a, kind: demold, title: A}]
                """;
        assertThat(readerTakes(Kind.RECIPES, recipe)).isTrue();
        assertThat(schemaTakes(Kind.RECIPES, recipe)).isTrue();
        assertThat(RecipeKind.read(new Fields(YamlDoor.read("r.yaml", recipe, new Problems())
                                .orElseThrow()
                                .down("recipes", 0)))
                        .steps()
                        .get(0)
                        .kind()
                        .key())
                .isEqualTo("demould");
    }
}
