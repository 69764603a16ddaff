package fayline.app.usecase.stores;

import java.util.Optional;

/**
 * The file of a certificate, kept as it came.
 *
 * @param bytes the file
 */
@SuppressWarnings("ArrayRecordComponent") // copied on the way in and out
public record Certificate(byte[] bytes) {
    private static final int MOST = 20 << 20;

    /** Copies the bytes. */
    public Certificate {
        bytes = bytes.clone();
    }

    @Override
    public byte[] bytes() {
        return bytes.clone();
    }

    /** What it is by its first bytes, as a type for browsers; empty where it is none of those that are kept, or too large. */
    public Optional<String> type() {
        if (bytes.length > MOST) {
            return Optional.empty();
        }
        if (begins(0x25, 0x50, 0x44, 0x46, 0x2d)) {
            return Optional.of("application/pdf");
        }
        if (begins(0xff, 0xd8, 0xff)) {
            return Optional.of("image/jpeg");
        }
        return begins(0x89, 0x50, 0x4e, 0x47) ? Optional.of("image/png") : Optional.empty();
    }

    private boolean begins(int... with) {
        for (int i = 0; i < with.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xff) != with[i]) {
                return false;
            }
        }
        return true;
    }
}
