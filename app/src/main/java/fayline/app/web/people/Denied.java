package fayline.app.web.people;

import fayline.app.usecase.people.Actor;
import fayline.app.usecase.people.DeniedException;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import java.util.List;

/** How somebody who may not, or not yet, is answered. */
final class Denied {
    /** HTTP's status for tries that come too soon. */
    static final int TOO_SOON = 429;

    private static final int REFUSED = 422;
    private static final int NOT_SIGNED_IN = 401;

    private Denied() {}

    /**
     * Who is signed in here.
     *
     * @throws Refusal if nobody is
     */
    static Actor actor(Visit visit) {
        return visit.actor()
                .orElseThrow(() -> new Refusal(NOT_SIGNED_IN, "You are not signed in.", List.of("Sign in first.")));
    }

    /** Marks the answer as refused; where waiting helps, with how long. */
    static void mark(Visit visit, DeniedException e) {
        visit.status(e.waitS() > 0 ? TOO_SOON : REFUSED);
        if (e.waitS() > 0) {
            visit.context().header("Retry-After", String.valueOf(e.waitS()));
        }
    }
}
