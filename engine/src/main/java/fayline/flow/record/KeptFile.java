package fayline.flow.record;

import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A definition file as the record holds it.
 *
 * @param path path within the folder, with forward slashes
 * @param content its text; Base64 where the bytes are no UTF-8 text
 * @param binary whether the content is Base64
 * @param sha256 hash of the bytes
 * @param seq entry that saved it last; 0 for a file not yet saved
 */
public record KeptFile(String path, String content, boolean binary, String sha256, long seq) {
    /** A file from its bytes; what is no UTF-8 text is held as Base64. */
    public static KeptFile of(String path, byte[] bytes) {
        String hash = CanonicalText.sha256(bytes);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new KeptFile(path, text, false, hash, 0);
        } catch (CharacterCodingException e) {
            return new KeptFile(path, Base64.getEncoder().encodeToString(bytes), true, hash, 0);
        }
    }

    /** The bytes. */
    public byte[] bytes() {
        return binary ? Base64.getDecoder().decode(content) : content.getBytes(StandardCharsets.UTF_8);
    }

    /** The payload that saves this file. */
    public Value.Fields payload(boolean shop) {
        return Value.Fields.NONE
                .with("scope", shop ? "shop" : "project")
                .with("path", path)
                .with(binary ? "base64" : "text", content)
                .with("sha256", sha256);
    }
}
