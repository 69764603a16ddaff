package fayline.app.bench;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One phone at the bench without a screen: a card lies open and follows the record as the pages' script does; now and then its person
 * looks at Today or writes a note. Each tenth note is sent twice under one number, and whatever got no answer is sent again.
 */
final class Phone {
    private static final Pattern CARD = Pattern.compile("href=\"(/card/[^\"]+)\"");
    private static final Pattern HEAD = Pattern.compile("data-latest=\"\\S+ (\\d+) ");
    private static final String NOTE = "Bench note ";
    private static final int REST_MS = 700;
    private static final int REST_FACTOR = 3;
    private static final int SHORTEST_PAUSE_MS = 2000;
    private static final int PAUSE_MS = 6000;
    private static final int TWICE = 10;
    private static final int MOST_TRIES = 5;
    private static final int SEE_OTHER = 303;
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final HttpClient client;
    private final String home;
    private final int number;
    private final Random random;
    private final Times reads;
    private final Times writes;
    private final Map<String, String> cookies = new LinkedHashMap<>();
    private final Map<String, Long> acknowledged = new LinkedHashMap<>();
    private final List<Heard> heard = Collections.synchronizedList(new ArrayList<>());
    private String card = "";
    private long shown;
    private volatile long latest;
    private CompletableFuture<HttpResponse<Void>> stream = new CompletableFuture<>();
    private int tried;
    private int unanswered;
    private int refused;

    /**
     * Something that the stream said.
     *
     * @param atNs when, by the machine's counter
     * @param head how far the record was
     */
    record Heard(long atNs, long head) {}

    Phone(HttpClient client, String home, int number, Times reads, Times writes) {
        this.client = client;
        this.home = home;
        this.number = number;
        this.random = new Random(number);
        this.reads = reads;
        this.writes = writes;
    }

    /** What was answered as kept: the words of the note, and when the answer came. */
    Map<String, Long> acknowledged() {
        return Map.copyOf(acknowledged);
    }

    /** Whether a text is one of a phone's notes. */
    static boolean isNote(String text) {
        return text.startsWith(NOTE);
    }

    /** What its stream said, in order. */
    List<Heard> heard() {
        synchronized (heard) {
            return List.copyOf(heard);
        }
    }

    /** Whether its stream still goes on. */
    boolean follows() {
        return !stream.isDone();
    }

    /** How many notes it wanted to write. */
    int tried() {
        return tried;
    }

    /** How often a note was answered otherwise than as kept. */
    int refused() {
        return refused;
    }

    /** How often a request got no answer. */
    int unanswered() {
        return unanswered;
    }

    /** Opens its card and its stream. */
    void open() throws IOException, InterruptedException {
        List<String> cards = new ArrayList<>();
        Matcher m = CARD.matcher(get("/", false));
        while (m.find()) {
            if (!cards.contains(m.group(1))) {
                cards.add(m.group(1));
            }
        }
        if (cards.isEmpty()) {
            throw new IOException("Today shows no card");
        }
        card = cards.get(number % cards.size()).replace("&amp;", "&");
        look(false);
        stream = client.sendAsync(
                request("/live").header("Accept", "text/event-stream").build(),
                HttpResponse.BodyHandlers.fromLineSubscriber(new Lines(this::hear)));
    }

    private void hear(String line) {
        if (line.startsWith("data: ")) {
            latest = Long.parseLong(line.split(" ", -1)[2]);
            heard.add(new Heard(System.nanoTime(), latest));
        }
    }

    /** Does what a phone does until a moment of the machine's counter. */
    void work(long untilNs) throws InterruptedException {
        long next = System.nanoTime() + pause();
        long rested = 0;
        while (System.nanoTime() < untilNs) {
            try {
                if (System.nanoTime() >= next) {
                    act();
                    next = System.nanoTime() + pause();
                } else if (latest > shown && System.nanoTime() >= rested) {
                    long begin = System.nanoTime();
                    look(true);
                    long took = System.nanoTime() - begin;
                    rested = System.nanoTime() + Math.max(REST_MS * 1_000_000L, REST_FACTOR * took);
                } else {
                    Thread.sleep(50);
                }
            } catch (IOException e) {
                unanswered++;
            }
        }
    }

    private long pause() {
        return (SHORTEST_PAUSE_MS + random.nextInt(PAUSE_MS)) * 1_000_000L;
    }

    private void act() throws IOException, InterruptedException {
        if (random.nextBoolean()) {
            get("/", false);
        } else {
            write(look(false));
        }
    }

    private String look(boolean byItself) throws IOException, InterruptedException {
        String html = get(card, byItself);
        Matcher m = HEAD.matcher(html);
        if (m.find()) {
            shown = Long.parseLong(m.group(1));
        }
        return html;
    }

    private void write(String html) throws InterruptedException {
        String words = NOTE + ++tried + " of phone " + number;
        String body = "csrf=" + hidden(html, "csrf") + "&once=" + UUID.randomUUID() + "&by=" + person(html) + "&text="
                + URLEncoder.encode(words, StandardCharsets.UTF_8);
        boolean twice = tried % TWICE == 0;
        for (int i = 0; i < MOST_TRIES && (!acknowledged.containsKey(words) || (twice && i < 2)); i++) {
            try {
                long begin = System.nanoTime();
                HttpResponse<String> r = client.send(
                        request(card.replaceFirst("[?]|$", "/note?"))
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
                writes.add((System.nanoTime() - begin) / 1e6);
                if (r.statusCode() == SEE_OTHER) {
                    acknowledged.putIfAbsent(words, System.nanoTime());
                } else {
                    refused++;
                }
            } catch (IOException e) {
                unanswered++;
            }
        }
    }

    private String get(String path, boolean byItself) throws IOException, InterruptedException {
        HttpRequest.Builder b = request(path);
        if (byItself) {
            b.header("Fayline-By-Itself", "yes");
        }
        long begin = System.nanoTime();
        HttpResponse<String> r = client.send(b.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        if (r.statusCode() != 200) {
            throw new IOException(path + " answered " + r.statusCode());
        }
        reads.add((System.nanoTime() - begin) / 1e6);
        r.headers().allValues("Set-Cookie").forEach(c -> {
            String pair = c.split(";", 2)[0];
            cookies.put(pair.split("=", 2)[0], pair.split("=", 2)[1]);
        });
        return r.body();
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder b =
                HttpRequest.newBuilder(URI.create(home).resolve(path)).timeout(PATIENCE);
        if (!cookies.isEmpty()) {
            StringBuilder all = new StringBuilder();
            cookies.forEach((k, v) ->
                    all.append(all.isEmpty() ? "" : "; ").append(k).append('=').append(v));
            b.header("Cookie", all.toString());
        }
        return b;
    }

    private static String hidden(String html, String name) {
        Matcher m = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(html);
        return m.find() ? m.group(1) : "";
    }

    /** Somebody of the crew, as a note's form offers them. */
    private String person(String html) {
        int from = Math.max(0, html.indexOf("id=\"note-by\""));
        int to = html.indexOf("</select>", from);
        List<String> people = new ArrayList<>();
        Matcher m = Pattern.compile("<option value=\"([a-z0-9-]+)\"").matcher(html.substring(from, Math.max(from, to)));
        while (m.find()) {
            people.add(m.group(1));
        }
        return people.isEmpty() ? "" : people.get(number % people.size());
    }
}
