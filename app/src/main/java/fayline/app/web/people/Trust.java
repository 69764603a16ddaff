package fayline.app.web.people;

import java.util.Arrays;

/**
 * What a phone needs to trust the server.
 *
 * @param file the authority's certificate; empty where the owner supplied a certificate that phones trust already
 * @param fingerprint SHA-256 of it in pairs of digits; empty likewise
 */
public record Trust(byte[] file, String fingerprint) {
    /** Copies the bytes. */
    public Trust {
        file = file.clone();
    }

    /** A copy of the bytes. */
    @Override
    public byte[] file() {
        return file.clone();
    }

    /** A certificate that the owner supplied: nothing to install. */
    public static Trust supplied() {
        return new Trust(new byte[0], "");
    }

    /** Whether there is an authority of the shop's own to trust. */
    public boolean isOwn() {
        return file.length > 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Trust t && Arrays.equals(file, t.file) && fingerprint.equals(t.fingerprint);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(file) + fingerprint.hashCode();
    }

    @Override
    public String toString() {
        return "Trust[" + fingerprint + "]";
    }
}
