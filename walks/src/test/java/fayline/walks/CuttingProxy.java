package fayline.walks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** A wire before a server that is cut where a test says: after any number of bytes, either way, in several manners. */
final class CuttingProxy implements AutoCloseable {
    /** Which way bytes go. */
    enum Way {
        TO_SERVER,
        TO_PHONE
    }

    /** What becomes of the connection at the cut. */
    enum How {
        /** Both ends are told at once that it is gone. */
        RESET,
        /** The side that was being sent to hears an ordinary end; the other way goes on. */
        HALF_CLOSE,
        /** Nobody is told anything; what is sent that way vanishes. */
        BLACK_HOLE
    }

    /** Where the next connection is cut, counted in bytes that still pass. */
    record Cut(Way way, How how, int after) {}

    private static final int NEVER = Integer.MAX_VALUE;
    private static final String FORM = "POST ";

    private final ServerSocket door;
    private final int server;
    private final AtomicReference<@Nullable Cut> next = new AtomicReference<>();
    private final AtomicReference<@Nullable Cut> atPost = new AtomicReference<>();

    private final Set<Socket> phones = ConcurrentHashMap.newKeySet();
    private volatile boolean isLost;

    /** Before a server of this machine. */
    CuttingProxy(int server) throws IOException {
        this.server = server;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        run("proxy", this::welcome);
    }

    int port() {
        return door.getLocalPort();
    }

    /** Cuts the next connection; those after it are whole. */
    void cutNext(Cut cut) {
        next.set(cut);
    }

    /** Cuts the connection on which the next form comes, counted from that form's first byte; all others are whole. */
    void cutNextPost(Cut cut) {
        atPost.set(cut);
    }

    /** The network is gone: whatever is open breaks, and nothing more gets through until it is back. */
    void lose() {
        isLost = true;
        for (Socket phone : phones) {
            try {
                phone.setSoLinger(true, 0);
            } catch (SocketException e) {
                // it closed by itself meanwhile
                continue;
            }
            close(phone);
        }
    }

    /** The network is back. */
    void restore() {
        isLost = false;
    }

    /** Whether the form that was to be cut has come. */
    boolean hasCut() {
        return atPost.get() == null;
    }

    /** One connection: how many bytes still pass each way, and what then. */
    private static final class Wire {
        private final Map<Way, AtomicInteger> left =
                Map.of(Way.TO_SERVER, new AtomicInteger(NEVER), Way.TO_PHONE, new AtomicInteger(NEVER));
        private volatile How how = How.RESET;

        private void cut(Cut cut) {
            how = cut.how();
            of(cut.way()).set(cut.after());
        }

        private AtomicInteger of(Way way) {
            return Objects.requireNonNull(left.get(way));
        }

        private int left(Way way) {
            return of(way).get();
        }

        private void passed(Way way, int bytes) {
            of(way).getAndUpdate(l -> l == NEVER ? NEVER : l - bytes);
        }
    }

    private void welcome() {
        while (!door.isClosed()) {
            try {
                Socket phone = door.accept();
                Wire wire = new Wire();
                Optional.ofNullable(next.getAndSet(null)).ifPresent(wire::cut);
                run("proxy wire", () -> connect(phone, wire));
            } catch (IOException e) {
                if (!door.isClosed()) {
                    throw new UncheckedIOException(e);
                }
            }
        }
    }

    private void connect(Socket phone, Wire wire) {
        phones.add(phone);
        if (isLost) {
            close(phone);
            phones.remove(phone);
            return;
        }
        try (phone;
                Socket behind = new Socket(InetAddress.getLoopbackAddress(), server)) {
            Thread up = run("proxy up", () -> pass(phone, behind, Way.TO_SERVER, wire));
            pass(behind, phone, Way.TO_PHONE, wire);
            up.join();
        } catch (IOException e) {
            // the server is not there: the phone sees its connection close, as it would
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            phones.remove(phone);
        }
    }

    private void pass(Socket from, Socket to, Way way, Wire wire) {
        try {
            InputStream in = from.getInputStream();
            if (passUpTo(in, to.getOutputStream(), way, wire)) {
                to.shutdownOutput();
            } else {
                cut(wire.how, from, to);
            }
        } catch (IOException e) {
            // one end is gone: so is the wire
            close(from);
            close(to);
        }
    }

    /** Passes bytes on; whether they ended before the cut. */
    private boolean passUpTo(InputStream in, OutputStream out, Way way, Wire wire) throws IOException {
        byte[] some = new byte[4096];
        while (wire.left(way) > 0) {
            int read = in.read(some);
            if (read < 0) {
                return true;
            }
            if (way == Way.TO_SERVER && new String(some, 0, read, StandardCharsets.ISO_8859_1).startsWith(FORM)) {
                Optional.ofNullable(atPost.getAndSet(null)).ifPresent(wire::cut);
            }
            int passes = Math.min(read, wire.left(way));
            out.write(some, 0, passes);
            out.flush();
            wire.passed(way, passes);
        }
        return false;
    }

    private static void cut(How how, Socket from, Socket to) throws IOException {
        if (how == How.RESET) {
            from.setSoLinger(true, 0);
            to.setSoLinger(true, 0);
            close(from);
            close(to);
            return;
        }
        if (how == How.HALF_CLOSE) {
            to.shutdownOutput();
        }
        from.getInputStream().transferTo(OutputStream.nullOutputStream());
        close(to);
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Thread run(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    @Override
    public void close() throws IOException {
        door.close();
    }
}
