package fayline.flow.record;

import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;

/**
 * A head, the time it was taken, and the shop's signature under both (Ed25519, RFC 8032). The key lies on the machine that
 * holds the record, so the signature shows which shop's machine made the head and binds nobody: what binds is the copy kept
 * elsewhere.
 *
 * @param head the head, with all 64 digits of its root
 * @param at when it was taken, ISO 8601 UTC
 * @param key the public key in X.509 form, Base64 for addresses (RFC 4648, section 5) without padding
 * @param signature the signature over {@link #signedText()}, in the same Base64
 */
public record SignedHead(TreeHead head, String at, String key, String signature) {
    private static final String FORM = "fayline-head-1";
    private static final String ALGORITHM = "Ed25519";
    private static final int SHOWN_DIGITS = 32;

    /**
     * Signs a head.
     *
     * @throws IllegalStateException if the key is of another kind
     */
    public static SignedHead sign(TreeHead head, Instant at, PublicKey open, PrivateKey secret) {
        Base64.Encoder base64 = Base64.getUrlEncoder().withoutPadding();
        SignedHead bare = new SignedHead(head, at.toString(), base64.encodeToString(open.getEncoded()), "");
        try {
            Signature signer = Signature.getInstance(ALGORITHM);
            signer.initSign(secret);
            signer.update(bare.signedText().getBytes(StandardCharsets.UTF_8));
            return new SignedHead(head, bare.at, bare.key, base64.encodeToString(signer.sign()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the key of the heads cannot sign: " + e.getMessage(), e);
        }
    }

    /** Whether the signature is that of the key over head and time. */
    public boolean holds() {
        try {
            Base64.Decoder base64 = Base64.getUrlDecoder();
            Signature judge = Signature.getInstance(ALGORITHM);
            judge.initVerify(
                    KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(base64.decode(key))));
            judge.update(signedText().getBytes(StandardCharsets.UTF_8));
            return judge.verify(base64.decode(signature));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    /** What the signature is over: canonical JSON of form, size, root and time. */
    String signedText() {
        return signed().canonical();
    }

    private Value.Fields signed() {
        return Value.Fields.NONE
                .with("at", at)
                .with("form", FORM)
                .with("root", head.root())
                .with("size", head.seq());
    }

    /** The first 32 digits of the SHA-256 of the public key, in groups of four: enough to tell one machine's key from another's. */
    public String keyFingerprint() {
        return CanonicalText.sha256(key).substring(0, SHOWN_DIGITS).replaceAll("(.{4})(?=.)", "$1 ");
    }

    /** As printed in a QR code: canonical JSON of everything. */
    public String text() {
        return fields().canonical();
    }

    /** Everything, as an entry holds it. */
    public Value.Fields fields() {
        return signed().with("key", key).with("signature", signature);
    }

    /**
     * A signed head from fields of an entry, whether its signature holds or not.
     *
     * @throws IllegalArgumentException if size or root are none
     */
    public static SignedHead of(Value.Fields f) {
        return new SignedHead(
                new TreeHead(f.whole("size").orElse(-1L), f.text("root")),
                f.text("at"),
                f.text("key"),
                f.text("signature"));
    }

    /**
     * Reads a signed head as {@link #text()} writes it.
     *
     * @throws IllegalArgumentException with what was expected, if it is none or its signature does not hold
     */
    public static SignedHead parse(String text) {
        SignedHead read;
        try {
            if (!(Value.parse(text.strip()) instanceof Value.Fields f)
                    || !f.text("form").equals(FORM)) {
                throw new NotCanonicalException("the form is not " + FORM);
            }
            Instant.parse(f.text("at"));
            read = of(f);
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new IllegalArgumentException("expected a head as its QR code holds it: " + e.getMessage(), e);
        }
        if (!read.holds()) {
            throw new IllegalArgumentException(
                    "the signature under this head does not hold: it was altered or misread");
        }
        return read;
    }
}
