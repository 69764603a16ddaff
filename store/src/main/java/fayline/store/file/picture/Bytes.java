package fayline.store.file.picture;

import java.nio.charset.StandardCharsets;

/** Numbers and words within bytes. */
final class Bytes {
    private Bytes() {}

    static int u8(byte[] b, int at) {
        return b[at] & 0xff;
    }

    static int u16(byte[] b, int at, boolean little) {
        return little ? u8(b, at) | (u8(b, at + 1) << 8) : (u8(b, at) << 8) | u8(b, at + 1);
    }

    static long u32(byte[] b, int at, boolean little) {
        long first = u16(b, at, little);
        long second = u16(b, at + 2, little);
        return little ? first | (second << 16) : (first << 16) | second;
    }

    /** Whether a word of Latin letters stands at a place. */
    static boolean says(byte[] b, int at, String word) {
        byte[] w = word.getBytes(StandardCharsets.ISO_8859_1);
        if (at < 0 || at + w.length > b.length) {
            return false;
        }
        for (int i = 0; i < w.length; i++) {
            if (b[at + i] != w[i]) {
                return false;
            }
        }
        return true;
    }

    /** Whether only noughts stand from a place to the end. */
    static boolean onlyNoughts(byte[] b, int from) {
        for (int i = from; i < b.length; i++) {
            if (b[i] != 0) {
                return false;
            }
        }
        return true;
    }
}
