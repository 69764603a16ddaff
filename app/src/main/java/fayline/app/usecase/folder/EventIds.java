package fayline.app.usecase.folder;

import fayline.flow.record.payload.Value;
import fayline.store.file.HistoryEvent;
import fayline.store.file.HistoryPhoto;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The ids under which events of history files are recorded: the one that the record gave, where the file comes from a record;
 * otherwise one taken from the event's own id, or else from its content. So a history that is read in twice makes no second
 * entry.
 */
final class EventIds {
    private static final String GIVEN = "[0-9a-f][0-9a-f-]{15,63}|h-[0-9a-f]{40}";
    private static final int DIGITS = 40;

    private EventIds() {}

    /** The ids of events, in their order. */
    static List<String> of(String project, List<HistoryEvent> events) {
        Map<String, Integer> alike = new HashMap<>();
        List<String> ids = new ArrayList<>();
        for (HistoryEvent e : events) {
            if (!e.id().isEmpty()) {
                ids.add(named(project, e.id()));
            } else {
                String content = content(scope(project, e), e).canonical();
                int n = alike.merge(content, 1, Integer::sum);
                ids.add(hashed(new Value.Many(List.of(new Value.Text(content), new Value.Whole(n)))));
            }
        }
        return List.copyOf(ids);
    }

    /** The id of an event that has one of its own. */
    static String named(String project, String id) {
        return id.matches(GIVEN)
                ? id
                : hashed(Value.Fields.NONE.with("project", project).with("id", id));
    }

    private static String scope(String project, HistoryEvent e) {
        return e.kind().equals("climate") ? "" : project;
    }

    private static String hashed(Value value) {
        return "h-" + value.sha256().substring(0, DIGITS);
    }

    private static Value.Fields content(String project, HistoryEvent e) {
        Value.Fields values = Value.Fields.NONE;
        for (Map.Entry<String, String> v : e.values().entrySet()) {
            values = values.with(v.getKey(), v.getValue());
        }
        Value.Fields content = Value.Fields.NONE
                .with("project", project)
                .with("at", e.at().toString())
                .with("by", e.by())
                .with("do", e.act().name())
                .with("step", e.step())
                .with("with", e.with())
                .with("people", e.people())
                .with("places", e.places())
                .with("which-way", e.whichWay())
                .with("signed", e.signed())
                .withUnlessEmpty("slip", e.slip())
                .with("text", e.text())
                .with("kind", e.kind())
                .with("of", e.of())
                .with("station", e.station())
                .with("state", e.state())
                .with("values", values)
                .with("corrects", e.corrects().orElse(""))
                .with("withdrawn", e.withdrawn() ? "yes" : "no")
                .with("to", e.to().map(Object::toString).orElse(""))
                .with("instead", e.instead());
        for (Map.Entry<String, String> v : e.said().entrySet()) {
            content = content.with(v.getKey(), v.getValue());
        }
        if (!e.rows().isEmpty()) {
            content = content.with(
                    "rows", e.rows().stream().map(r -> r.toString()).toList());
        }
        // An event without photos keeps the id that it had before there were any.
        return e.photos().isEmpty()
                ? content
                : content.with(
                        "photos", e.photos().stream().map(HistoryPhoto::sha256).toList());
    }
}
