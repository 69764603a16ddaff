package fayline.app.structure;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Guesses;
import fayline.app.usecase.people.Rights;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.SignIns;
import fayline.app.usecase.people.Way;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/security.md says what is so: its rows, its numbers, its table, and what the sources must not hold. */
class AsvsTest {
    private static final Pattern ROW =
            Pattern.compile("^\\| (V\\d+\\.\\d+\\.\\d+) \\| ([^|]+) \\| ([^|]+) \\| ([^|]*)\\|$", Pattern.MULTILINE);
    private static final Pattern NAMED = Pattern.compile("`(\\w+)\\.(should_\\w+)`");
    private static final int ROWS = 70;
    private static final String PAGE = page();

    private record Row(String id, String how, String tests) {}

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("docs")) ? here : here.getParent();
    }

    private static String page() {
        try {
            return Files.readString(root().resolve("docs/security.md"), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        Matcher m = ROW.matcher(PAGE);
        while (m.find()) {
            rows.add(new Row(m.group(1), m.group(3), m.group(4)));
        }
        return rows;
    }

    private static Map<String, String> sources(String ending, String... folders) throws IOException {
        Map<String, String> all = new HashMap<>();
        for (String folder : folders) {
            try (Stream<Path> files = Files.walk(root().resolve(folder))) {
                for (Path f : files.filter(p -> p.toString().endsWith(ending)).toList()) {
                    all.put(f.getFileName().toString(), Files.readString(f, StandardCharsets.UTF_8));
                }
            }
        }
        assertThat(all).isNotEmpty();
        return all;
    }

    private static Map<String, String> program() throws IOException {
        return sources(".java", "engine/src/main", "solver/src/main", "store/src/main", "app/src/main");
    }

    private static List<String> holding(Map<String, String> sources, String pattern) {
        Pattern p = Pattern.compile(pattern);
        return sources.entrySet().stream()
                .filter(e -> p.matcher(e.getValue()).find())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    @Test
    void should_hold_every_row_once_and_name_a_test_that_is_there_for_each_that_is_met() throws IOException {
        Map<String, String> tests = sources("Test.java", "engine/src/test", "store/src/test", "app/src/test");
        tests.putAll(sources("Contract.java", "store/src/test"));
        List<Row> rows = rows();
        assertThat(rows).hasSize(ROWS);
        assertThat(rows.stream().map(Row::id).collect(Collectors.toSet())).hasSize(ROWS);
        List<String> missing = new ArrayList<>();
        int met = 0;
        int open = 0;
        for (Row row : rows) {
            boolean excused = row.how().startsWith("open:") || row.how().startsWith("not to us");
            Matcher m = NAMED.matcher(row.tests());
            int named = 0;
            while (m.find()) {
                named++;
                String source = tests.getOrDefault(m.group(1) + ".java", "");
                if (!source.contains("void " + m.group(2) + "(")) {
                    missing.add(row.id() + ": " + m.group());
                }
            }
            if (named == 0 && !excused) {
                missing.add(row.id() + " names no test");
            }
            met += excused ? 0 : 1;
            open += row.how().startsWith("open:") ? 1 : 0;
        }
        assertThat(missing).isEmpty();
        assertThat(PAGE)
                .contains("70 rows: " + met + " met with a test, " + open + " open,\n" + (ROWS - met - open)
                        + " not to us.");
    }

    @Test
    void should_state_the_table_of_rights_of_the_program() {
        for (Act act : Act.values()) {
            String cells = Arrays.stream(Role.values())
                    .map(role -> Rights.may(role, act) ? "yes" : "no")
                    .collect(Collectors.joining(" | "));
            assertThat(PAGE).contains("| " + act.words() + " | " + cells + " |");
        }
        assertThat(PAGE)
                .contains("| may | "
                        + Arrays.stream(Role.values()).map(Role::word).collect(Collectors.joining(" | ")) + " |");
    }

    @Test
    void should_state_the_numbers_of_the_program() {
        Map<Way, String> words =
                Map.of(Way.PASSWORD, "password", Way.DEVICE, "device of one's own", Way.PIN, "PIN on a shared device");
        for (Way way : Way.values()) {
            assertThat(PAGE)
                    .contains("| " + words.get(way) + " | " + told(way.idle()) + " | " + told(way.age()) + " |");
        }
        assertThat(PAGE.replace('\n', ' '))
                .contains(Guesses.TRIES_A_MINUTE + " tries a minute from one place, " + Guesses.ALL_TRIES_A_MINUTE
                        + " from all together")
                .contains("After " + Guesses.WRONG_BEFORE_WAIT + " wrong ones the place waits "
                        + told(Guesses.FIRST_WAIT))
                .contains("up to " + told(Guesses.LONGEST_WAIT))
                .contains("After " + SignIns.WRONG_PINS_BEFORE_UNPAIRING + " wrong PINs on one device");
    }

    private static String told(Duration d) {
        return d.toDays() > 0 ? d.toDays() + " d" : d.toHours() > 0 ? d.toHours() + " h" : d.toMinutes() + " min";
    }

    @Test
    void should_state_how_soon_a_weak_library_is_replaced() {
        assertThat(PAGE).contains("critical 7 days, high 30 days");
    }

    @Test
    void should_print_raw_only_what_draws() throws IOException {
        Pattern raw = Pattern.compile("\\$unsafe\\{([^}]*)}");
        TreeSet<String> printed = new TreeSet<>();
        for (String template : sources(".jte", "app/src/main/jte").values()) {
            Matcher m = raw.matcher(template);
            while (m.find()) {
                String shown = m.group(1);
                printed.add(shown.contains(".render(") ? "render" : shown.replaceAll(".*\\.(\\w+)\\(\\)", "$1"));
            }
        }
        // each of these is what a renderer of drawings made, which escapes every text it is given
        assertThat(printed).isNotEmpty().isSubsetOf(RAW_DRAWINGS);
    }

    private static final List<String> RAW_DRAWINGS = List.of(
            "bar",
            "chart",
            "code",
            "drawing",
            "ends",
            "historyDrawing",
            "massBar",
            "outline",
            "render",
            "round",
            "stack");

    @Test
    void should_have_no_script_or_style_in_a_page() throws IOException {
        Map<String, String> pages = sources(".jte", "app/src/main/jte");
        assertThat(holding(pages, "<script(?![^>]* src=)")).isEmpty();
        assertThat(holding(pages, "\\s(on[a-z]+|style)=\"")).isEmpty();
        assertThat(holding(pages, "<style|javascript:")).isEmpty();
    }

    @Test
    void should_set_text_and_no_markup_by_script() throws IOException {
        assertThat(holding(
                        sources(".js", "app/src/main/resources"),
                        "innerHTML|outerHTML|insertAdjacentHTML|document\\.write|\\beval\\(|new Function"))
                .isEmpty();
    }

    @Test
    void should_put_no_sql_together() throws IOException {
        Map<String, String> store = sources(".java", "store/src/main/java/fayline/store/sql");
        // one statement of PostgreSQL's own, with a number that is fixed in the class; and those, fixed too, by which
        // each
        // database writes its files anew after an erasure
        assertThat(holding(store, "createStatement|prepareStatement|executeQuery"))
                .containsExactly("DataFolder.java", "Engine.java");
        // the script of the reading tables, from the program's own jar
        assertThat(holding(store, "db\\.execute\\(|\\.sql\\(|DSL\\.condition|resultQuery|\\.query\\("))
                .containsExactly("ReadingTables.java");
    }

    @Test
    void should_start_no_process_from_a_page() throws IOException {
        assertThat(holding(program(), "ProcessBuilder|getRuntime\\(\\)\\.exec"))
                .containsExactly("RunningProgram.java", "Serving.java");
    }

    @Test
    void should_use_no_weak_hash_cipher_or_script_engine() throws IOException {
        Map<String, String> program = program();
        assertThat(holding(program, "\"(MD5|SHA-?1|DES|RC4|Blowfish)\"|SHA1with|MD5with"))
                .isEmpty();
        assertThat(holding(program, "javax\\.crypto|Cipher\\.getInstance")).isEmpty();
        assertThat(holding(program, "javax\\.script|ScriptEngine|groovy\\.")).isEmpty();
        assertThat(holding(program, "MessageDigest\\.getInstance\\((?!\"SHA-256\")"))
                .isEmpty();
    }

    @Test
    void should_open_no_web_socket() throws IOException {
        assertThat(holding(sources(".java", "app/src/main/java/fayline/app/web"), "routes\\.ws\\(|\\.ws\\("))
                .isEmpty();
    }

    @Test
    void should_keep_no_hint_beside_a_secret() throws IOException {
        String tables = sources(".sql", "store/src/main/resources").get("V4__people.sql");
        assertThat(tables)
                .contains("password_hash")
                .doesNotContainPattern("hint|question|password varchar|pin varchar");
    }

    @Test
    void should_bind_plain_http_to_this_machine_only() throws IOException {
        String server = program().get("WebServer.java");
        assertThat(server)
                .containsPattern(
                        "(?s)else \\{\\s+connector = new ServerConnector\\(server, 1, 1, new HttpConnectionFactory\\(http\\)\\);\\s+"
                                + "connector\\.setHost\\(LOOPBACK\\);");
        assertThat(holding(program(), "new ServerConnector\\(")).containsExactly("WebServer.java");
    }
}
