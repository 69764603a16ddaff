package fayline.walks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Optional;
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

    private final ServerSocket door;
    private final int server;
    private final AtomicReference<@Nullable Cut> next = new AtomicReference<>();

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

    private void welcome() {
        while (!door.isClosed()) {
            try {
                Socket phone = door.accept();
                Optional<Cut> cut = Optional.ofNullable(next.getAndSet(null));
                run("proxy wire", () -> connect(phone, cut));
            } catch (IOException e) {
                if (!door.isClosed()) {
                    throw new UncheckedIOException(e);
                }
            }
        }
    }

    private void connect(Socket phone, Optional<Cut> cut) {
        try (phone;
                Socket behind = new Socket(InetAddress.getLoopbackAddress(), server)) {
            Thread up = run("proxy up", () -> pass(phone, behind, Way.TO_SERVER, cut));
            pass(behind, phone, Way.TO_PHONE, cut);
            up.join();
        } catch (IOException e) {
            // the server is not there: the phone sees its connection close, as it would
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void pass(Socket from, Socket to, Way way, Optional<Cut> cut) {
        Optional<Cut> mine = cut.filter(c -> c.way() == way);
        try {
            InputStream in = from.getInputStream();
            if (passUpTo(in, to.getOutputStream(), mine.map(Cut::after).orElse(Integer.MAX_VALUE))) {
                to.shutdownOutput();
            } else {
                cut(mine.orElseThrow().how(), from, to);
            }
        } catch (IOException e) {
            // one end is gone: so is the wire
            close(from);
            close(to);
        }
    }

    /** Passes bytes on; whether they ended before the cut. */
    private static boolean passUpTo(InputStream in, OutputStream out, int most) throws IOException {
        byte[] some = new byte[4096];
        int left = most;
        while (left > 0) {
            int read = in.read(some, 0, Math.min(some.length, left));
            if (read < 0) {
                return true;
            }
            out.write(some, 0, read);
            out.flush();
            left -= read;
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
