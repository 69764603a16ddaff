package fayline.app.web.plan;

import fayline.app.usecase.view.WritePlan;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.nio.charset.StandardCharsets;

/** A person's work as a calendar that phones can subscribe to (RFC 5545); read anew, its events move instead of adding up. */
public final class CalendarPage implements Page {
    private static final String ENDING = ".ics";
    private final Sights sights;

    /** Makes the page. */
    public CalendarPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/calendar/{file}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                String file = visit.inPath("file");
                String person = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : "";
                if (sight.definition().shop().people().find(person).isEmpty()) {
                    throw Refusal.absent("calendar " + file);
                }
                String text = WritePlan.calendar(sight.view(), person);
                visit.send(text.getBytes(StandardCharsets.UTF_8), "text/calendar; charset=utf-8", file);
            });
        });
    }
}
