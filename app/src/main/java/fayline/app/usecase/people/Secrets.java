package fayline.app.usecase.people;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;

/**
 * Makes and checks secrets by libraries' functions alone: passwords and PINs by Argon2id ([rfc9106]; 19 MiB, two passes, one
 * lane, as the OWASP password storage sheet has it, from memory), tokens and codes by the machine's secure generator. Tokens
 * and codes are long and random, so their SHA-256 is kept, not a slow hash.
 */
final class Secrets {
    private static final Argon2Function ARGON = Argon2Function.getInstance(19 * 1024, 2, 1, 32, Argon2.ID);
    private static final int TOKEN_BYTES = 32;

    /** Digits and letters that cannot be taken for one another; 32 of them, five bits each. */
    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int CODE_LETTERS = 12;
    private static final int GROUP = 4;
    private final SecureRandom random;
    private final String nobody;

    Secrets(SecureRandom random) {
        this.random = random;
        this.nobody = hash(token());
    }

    /** One at a time, so that many tries at once cost no more memory than one. */
    synchronized String hash(String secret) {
        return ARGON.hash(secret).getResult();
    }

    /** Whether a secret is the one that was hashed; takes as long where there is none to compare with. */
    synchronized boolean isRight(String secret, String hash) {
        String against = hash.isEmpty() ? nobody : hash;
        return Argon2Function.getInstanceFromHash(against).check(secret, against) && !hash.isEmpty();
    }

    /** A token of 256 random bits. */
    String token() {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A code of 60 random bits in three groups, to be read and typed. */
    String code() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < CODE_LETTERS; i++) {
            if (i > 0 && i % GROUP == 0) {
                code.append('-');
            }
            code.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    /** A code as typed, brought to the letters it was made of: o is nought, i and l are one, case and hyphens do not count. */
    static String readCode(String typed) {
        StringBuilder read = new StringBuilder();
        for (char c : typed.toUpperCase(Locale.ROOT).toCharArray()) {
            char letter = c == 'O' ? '0' : c == 'I' || c == 'L' ? '1' : c;
            if (LETTERS.indexOf(letter) >= 0) {
                read.append(letter);
            }
        }
        return read.toString();
    }

    /** What is kept of a token or code. */
    static String fingerprint(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this machine's Java has no SHA-256", e);
        }
    }
}
