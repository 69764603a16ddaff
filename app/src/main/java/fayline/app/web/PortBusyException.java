package fayline.app.web;

/** The port is taken by another program. */
public final class PortBusyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PortBusyException(int port, Throwable cause) {
        super(
                "Port " + port + " is in use by another program, perhaps by Fayline itself in another window. "
                        + "Close that one, or start this one with --port and another number.",
                cause);
    }
}
