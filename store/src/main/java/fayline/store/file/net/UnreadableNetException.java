package fayline.store.file.net;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;

/** A net or a table of known answers that cannot be read; says where and why. */
public final class UnreadableNetException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableNetException(String file, int line, String key, String found, String expected) {
        super(new InputProblem(Severity.STOP, file, line, key, found, expected, "").sentence());
    }
}
