package fayline.flow.record.proof;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** A SHA-256 hash: 32 bytes that never change. */
public final class Digest {
    /** Length of every hash, in bytes. */
    public static final int BYTES = 32;

    /** Before a leaf's bytes, RFC 9162 section 2.1.1: so that no leaf can pass for a node. */
    private static final byte LEAF = 0;

    /** Before the two hashes below a node. */
    private static final byte NODE = 1;

    private final byte[] bytes;

    private Digest(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * A hash from its bytes.
     *
     * @throws IllegalArgumentException if they are not 32
     */
    public static Digest of(byte[] bytes) {
        if (bytes.length != BYTES) {
            throw new IllegalArgumentException(
                    "found " + bytes.length + " bytes, expected the " + BYTES + " of SHA-256");
        }
        return new Digest(bytes.clone());
    }

    /**
     * A hash from its 64 hexadecimal digits.
     *
     * @throws IllegalArgumentException if it is not one
     */
    public static Digest ofHex(String hex) {
        return of(HexFormat.of().parseHex(hex));
    }

    /** The hash of a leaf: SHA-256 over a zero byte and the leaf's bytes. */
    static Digest ofLeaf(byte[] leaf) {
        MessageDigest sha = sha256();
        sha.update(LEAF);
        return new Digest(sha.digest(leaf));
    }

    /** The hash of a node: SHA-256 over a one byte and the hashes below it, left then right. */
    static Digest ofNode(Digest left, Digest right) {
        MessageDigest sha = sha256();
        sha.update(NODE);
        sha.update(left.bytes);
        return new Digest(sha.digest(right.bytes));
    }

    /** The root of a tree without leaves: SHA-256 over nothing. */
    static Digest ofNothing() {
        return new Digest(sha256().digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** A copy of the bytes. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** The 64 hexadecimal digits, in lower case. */
    public String hex() {
        return HexFormat.of().formatHex(bytes);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Digest d && Arrays.equals(bytes, d.bytes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return hex();
    }
}
