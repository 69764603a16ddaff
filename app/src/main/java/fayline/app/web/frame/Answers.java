package fayline.app.web.frame;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.basis.finding.Finding;
import fayline.basis.finding.InputProblem;
import java.util.ArrayList;
import java.util.List;

/** What became of something that was sent, in words for a page. */
public final class Answers {
    private Answers() {}

    /** What was done, with the cautions that go with it. */
    public static String said(Outcome outcome) {
        StringBuilder s = new StringBuilder(outcome.sentence());
        for (Finding f : outcome.cautions()) {
            s.append(" Caution: ").append(f.sentence());
        }
        return s.toString();
    }

    /** Why nothing was done, a sentence each. */
    public static List<String> refused(Outcome outcome) {
        List<String> all = new ArrayList<>();
        all.add(outcome.sentence());
        for (Meanwhile m : outcome.meanwhile()) {
            all.add("Of " + m.what() + ": you saw \"" + m.seen() + "\"; now it is \"" + m.now() + "\""
                    + (m.by().isEmpty() ? "" : ", by " + m.by()) + ", entry " + m.seq() + ".");
        }
        for (InputProblem p : outcome.problems()) {
            all.add(p.sentence());
        }
        if (outcome.kind() == Outcome.Kind.UNKNOWN) {
            all.add("It is not known whether it was kept. Send it again: it will not be kept twice.");
        }
        return all;
    }
}
