package fayline.app.web.live;

import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One open stream. It is written to only as far as its reader takes it, so that nobody waits; of what a slow reader has not taken
 * yet only the newest is kept.
 */
final class Reader implements WriteListener {
    /** After a broken connection the browser asks again so soon. */
    private static final String AGAIN = "retry: 2000\n\n";

    private final String signIn;
    private final BooleanSupplier stays;
    private final ServletOutputStream out;
    private final CompletableFuture<Void> ended = new CompletableFuture<>();
    private final long began = System.nanoTime();
    private String told = "";
    private @Nullable String next = AGAIN;
    /** Whether the connection waits to be emptied; then it calls us. */
    private boolean full = true;

    private boolean flush;
    private boolean last;
    private long spoke = began;
    private long asked = began;
    private long waits = began;

    private Reader(String signIn, BooleanSupplier stays, ServletOutputStream out) {
        this.signIn = signIn;
        this.stays = stays;
        this.out = out;
    }

    /**
     * Begins a stream.
     *
     * @param signIn whose it is; empty where nobody signs in
     * @param stays whether who asked is still known
     * @param out where it goes
     */
    static Reader of(String signIn, BooleanSupplier stays, ServletOutputStream out) {
        Reader reader = new Reader(signIn, stays, out);
        out.setWriteListener(reader);
        return reader;
    }

    boolean isOf(String one) {
        return signIn.equals(one);
    }

    CompletableFuture<Void> ended() {
        return ended;
    }

    synchronized boolean knows(String data) {
        return told.equals(data);
    }

    /** Whether the sign-in was asked about longer ago; then it counts as asked now. */
    synchronized boolean wasAsked(Duration ago) {
        boolean due = since(asked, ago);
        if (due) {
            asked = System.nanoTime();
        }
        return due;
    }

    boolean stays() {
        return stays.getAsBoolean();
    }

    synchronized boolean isQuiet(Duration longer) {
        return since(spoke, longer);
    }

    synchronized boolean isSlow(Duration longer) {
        return full && since(waits, longer);
    }

    boolean isOld(Duration longer) {
        return since(began, longer);
    }

    private static boolean since(long then, Duration longer) {
        return System.nanoTime() - then >= longer.toNanos();
    }

    /** Says something, as soon as the reader takes it. */
    synchronized void tell(String event, String data) {
        if (ended.isDone()) {
            return;
        }
        told = data;
        spoke = System.nanoTime();
        String before = AGAIN.equals(next) ? AGAIN : "";
        next = before + "event: " + event + "\ndata: " + data + "\n\n";
        write();
    }

    /** Ends once what was said last has gone out. */
    synchronized void endWhenTold() {
        last = true;
        write();
    }

    void end() {
        ended.complete(null);
    }

    @Override
    public synchronized void onWritePossible() {
        full = false;
        write();
    }

    @Override
    public void onError(Throwable t) {
        // the reader has gone
        end();
    }

    /** Writes as long as the connection takes it at once. */
    private void write() {
        try {
            while (!full && !ended.isDone() && (next != null || flush || last)) {
                if (!out.isReady()) {
                    full = true;
                    waits = System.nanoTime();
                } else if (next != null) {
                    out.write(next.getBytes(StandardCharsets.UTF_8));
                    next = null;
                    flush = true;
                } else if (flush) {
                    flush = false;
                    out.flush();
                } else {
                    end();
                }
            }
        } catch (IOException e) {
            end();
        }
    }
}
