package fayline.store.file.trust;

/** A certificate or key that cannot be used; the message names the file, what was found and what was expected. */
public final class UnusableCertificateException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnusableCertificateException(String sentence) {
        super(sentence);
    }

    UnusableCertificateException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
