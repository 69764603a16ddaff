package fayline.app.usecase.net;

/** A folder of nets, or a net in it, that cannot be read; the message says where and why. */
public final class UnreadableNetsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableNetsException(String message, Throwable cause) {
        super(message, cause);
    }
}
