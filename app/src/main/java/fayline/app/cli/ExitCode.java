package fayline.app.cli;

/** What an exit code says to a script. */
public final class ExitCode {
    /** Done, or the answer is yes. */
    public static final int DONE = 0;

    /** The work says no: not feasible, a rule broken, a case differs. */
    public static final int SAYS_NO = 1;

    /** The input is not as it should be; the message says where and what was expected. */
    public static final int BAD_INPUT = 2;

    /** Our mistake, or the machine's. */
    public static final int FAULT = 3;

    private ExitCode() {}
}
