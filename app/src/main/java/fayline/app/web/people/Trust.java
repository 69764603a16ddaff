package fayline.app.web.people;

/** What a phone needs to trust the server. Immutable. */
public final class Trust {
    private final byte[] file;
    private final String fingerprint;

    /**
     * An authority of the shop's own.
     *
     * @param file its certificate
     * @param fingerprint SHA-256 of it in pairs of digits
     */
    public Trust(byte[] file, String fingerprint) {
        this.file = file.clone();
        this.fingerprint = fingerprint;
    }

    /** A certificate that the owner supplied: nothing to install. */
    public static Trust supplied() {
        return new Trust(new byte[0], "");
    }

    /** The certificate; a copy. */
    public byte[] file() {
        return file.clone();
    }

    /** SHA-256 of it in pairs of digits; empty where there is none. */
    public String fingerprint() {
        return fingerprint;
    }

    /** Whether there is an authority of the shop's own to trust. */
    public boolean isOwn() {
        return file.length > 0;
    }
}
