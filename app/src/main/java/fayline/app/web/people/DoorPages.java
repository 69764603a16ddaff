package fayline.app.web.people;

import fayline.app.web.frame.Door;
import fayline.app.web.frame.Visit;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** Shows pages at the door, which need nothing of the shop. */
final class DoorPages {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Door door;

    DoorPages(Door door) {
        this.door = door;
    }

    Door door() {
        return door;
    }

    void show(Visit visit, String template, String title, Object view, List<String> refused) {
        DoorFrame frame = new DoorFrame(
                title, door.token(visit), refused, visit.said(), visit.theme(), visit.density());
        StringOutput out = new StringOutput();
        engine.render(template, Map.of("frame", frame, "view", view), out);
        visit.show(out.toString());
    }
}
