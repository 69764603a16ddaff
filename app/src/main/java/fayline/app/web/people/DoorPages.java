package fayline.app.web.people;

import fayline.app.usecase.people.DeniedException;
import fayline.app.usecase.people.People;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** Shows pages at the door, which need nothing of the shop. */
final class DoorPages {
    /** How long a visitor's session holds without a request, in seconds. */
    private static final int VISIT_S = 10 * 60;

    /** The same once somebody signed in; the sign-in itself may end sooner. */
    private static final int STAY_S = 24 * 3600;

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final People people;
    private final Door door;

    DoorPages(People people, Door door) {
        this.people = people;
        this.door = door;
    }

    Door door() {
        return door;
    }

    /** Keeps the session of somebody who signed in for a day. */
    void stays(Visit visit) {
        visit.context().req().getSession().setMaxInactiveInterval(STAY_S);
    }

    /** Begins a session for a visitor who has none: not more of them, nor for longer, than the memory bears. */
    private void begin(Visit visit) {
        if (visit.context().req().getSession(false) == null) {
            try {
                people.requireVisit(Place.of(visit.context()));
            } catch (DeniedException e) {
                throw new Refusal(Denied.TOO_SOON, e.sentence(), List.of("Wait, then open the page again."));
            }
            visit.context().req().getSession().setMaxInactiveInterval(VISIT_S);
        }
    }

    void show(Visit visit, String template, String title, Object view, List<String> refused) {
        begin(visit);
        DoorFrame frame =
                new DoorFrame(title, door.token(visit), refused, visit.said(), visit.theme(), visit.density());
        StringOutput out = new StringOutput();
        engine.render(template, Map.of("frame", frame, "view", view), out);
        visit.show(out.toString());
    }
}
