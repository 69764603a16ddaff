package fayline.app.cli;

import java.nio.file.Path;
import java.util.Optional;

/**
 * How the shop's network is let in.
 *
 * @param supplied a certificate and its key that the owner has; empty for an authority of the shop's own
 * @param setUp whether a code is made with which a lead gets a new password, though there is a lead
 */
public record LanOptions(Optional<Supplied> supplied, boolean setUp) {
    /**
     * Files of the owner's.
     *
     * @param certificate the certificate with those that signed it, PEM
     * @param key its key, PEM
     */
    public record Supplied(Path certificate, Path key) {}
}
