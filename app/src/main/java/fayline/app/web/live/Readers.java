package fayline.app.web.live;

import fayline.app.usecase.view.Latest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * All open streams. One thread looks at the record a few times a second, whoever wrote to it, this program or another on the same
 * database, and tells those who do not know yet. No thread waits for a reader. While nobody reads, nobody looks.
 */
final class Readers implements AutoCloseable {
    /** Streams at once; more are refused, and those pages ask now and then. */
    static final int MOST = 200;

    /** Streams of one sign-in; a further one ends the oldest, which may be of a phone that is gone. */
    static final int MOST_OF_ONE = 6;

    private static final Logger LOG = LoggerFactory.getLogger(Readers.class);
    private static final Duration LOOK = Duration.ofMillis(200);
    /** So often a sign-in is asked about though there is nothing to tell. */
    private static final Duration ASK = Duration.ofSeconds(2);
    /** So often something is said though nothing is new, so that both sides notice who is gone. */
    private static final Duration SPEAK = Duration.ofSeconds(10);
    /** A reader who takes nothing for so long is dropped. */
    private static final Duration SLOW = Duration.ofSeconds(20);
    /** After so long a stream ends and the browser asks for another: what nobody noticed ends with it. */
    private static final Duration LIFE = Duration.ofMinutes(15);

    private final Supplier<Latest> latest;
    /** Each change makes another list, so that whoever goes through it is in nobody's way. */
    private final List<Reader> open = new CopyOnWriteArrayList<>();

    private final ScheduledExecutorService looking = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "live");
        thread.setDaemon(true);
        return thread;
    });
    private boolean begun;

    Readers(Supplier<Latest> latest) {
        this.latest = latest;
    }

    /** Whether one more may follow. */
    boolean haveRoom() {
        return open.size() < MOST;
    }

    /**
     * Begins a stream.
     *
     * @param signIn whose it is; empty where nobody signs in
     * @param stays whether who asked is still known
     * @param response where it goes, in an answer that goes on
     * @return ends when the stream has ended
     */
    @SuppressWarnings(
            "FutureReturnValueIgnored") // the look ends with the program, the reader's end is what is returned
    synchronized CompletableFuture<Void> add(String signIn, BooleanSupplier stays, HttpServletResponse response) {
        // before there is a reader: where the record cannot be looked at, none stays behind
        String now = latest.get().line();
        if (!signIn.isEmpty()) {
            List<Reader> same = open.stream().filter(r -> r.isOf(signIn)).toList();
            same.stream().limit(Math.max(0, same.size() - MOST_OF_ONE + 1L)).forEach(r -> {
                r.tell("enough", "");
                r.endWhenTold();
            });
        }
        try {
            Reader reader = Reader.of(signIn, stays, response.getOutputStream());
            reader.tell("head", now);
            open.add(reader);
            reader.ended().whenComplete((gone, why) -> open.remove(reader));
            if (!begun) {
                begun = true;
                looking.scheduleWithFixedDelay(this::look, LOOK.toMillis(), LOOK.toMillis(), TimeUnit.MILLISECONDS);
            }
            return reader.ended();
        } catch (IOException e) {
            throw new UncheckedIOException("the reader has gone", e);
        }
    }

    private void look() {
        if (open.isEmpty()) {
            return;
        }
        try {
            String now = latest.get().line();
            open.forEach(r -> look(r, now));
        } catch (RuntimeException e) {
            // whoever follows hears nothing and asks for itself; the next look may succeed
            LOG.debug("the record could not be looked at", e);
        }
    }

    private static void look(Reader r, String now) {
        boolean news = !r.knows(now);
        try {
            if (r.isSlow(SLOW) || r.isOld(LIFE) || ((news || r.wasAsked(ASK)) && !r.stays())) {
                r.end();
            } else if (news || r.isQuiet(SPEAK)) {
                r.tell("head", now);
            }
        } catch (RuntimeException e) {
            LOG.debug("a stream broke off", e);
            r.end();
        }
    }

    /** Ends all. */
    @Override
    public void close() {
        looking.shutdownNow();
        open.forEach(Reader::end);
    }
}
