package fayline.app.usecase.act;

import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is checked of everything that people send about steps: who, when, and text that can be kept. */
public final class Checks {
    private static final int LONGEST_TEXT = 20_000;
    private final Definition definition;
    private final List<InputProblem> problems = new ArrayList<>();

    /** Checks against a definition. */
    public Checks(Definition definition) {
        this.definition = definition;
    }

    /** An entry that is to be made. */
    public static NewEntry entry(ShopRecord shop, Sent sent, String project, EntryKind kind, Value.Fields payload) {
        return NewEntry.of(sent.client(), sent.by(), shop.now(), project, kind, payload);
    }

    /** What was wrong so far. */
    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    /** Something that is not as expected. */
    public void stop(String key, String found, String expected, String suggestion) {
        problems.add(new InputProblem(Severity.STOP, "", 0, key, found, expected, suggestion));
    }

    /** Somebody of the crew. */
    public void person(String key, String id) {
        if (id.isEmpty()) {
            stop(key, "nobody", "one of the crew", "pick who it is");
        } else if (definition.shop().people().find(id).isEmpty()) {
            stop(key, "\"" + id + "\"", "one of the crew: " + crew(), "");
        }
    }

    void people(String key, Collection<String> ids) {
        if (ids.isEmpty()) {
            stop(key, "nobody", "at least one of the crew", "tick who works on it");
        }
        ids.forEach(id -> person(key, id));
    }

    void places(Collection<String> ids) {
        for (String id : ids) {
            boolean known = definition.shop().moulds().find(id).isPresent()
                    || definition.shop().stands().find(id).isPresent()
                    || definition.shop().ports().find(id).isPresent();
            if (!known) {
                stop("places", "\"" + id + "\"", "a mould, stand or port of the shop", "");
            }
        }
    }

    /** What is told afterwards may lie ahead of the moment that is looked at; it has no effect before its time. */
    public void time(Sent sent, Instant at, Instant now) {
        if (sent.live() && at.isAfter(now.plusSeconds(60))) {
            stop("at", words(at), "no later than now, " + words(now), "give the time at which it happened");
        }
    }

    /** A text that can be kept. */
    public void text(String key, String text, boolean needed) {
        if (needed && text.isBlank()) {
            stop(key, "nothing", "a text", "write it down");
        }
        if (text.length() > LONGEST_TEXT) {
            stop(key, text.length() + " characters", "at most " + LONGEST_TEXT, "");
        }
        try {
            new Value.Text(text).canonical();
        } catch (IllegalArgumentException e) {
            stop(key, "a broken character", "text that can be written down", String.valueOf(e.getMessage()));
        }
    }

    /** A step of the definition. */
    public Optional<FoundStep> step(String id) {
        Optional<FoundStep> found = FoundStep.find(definition, id);
        if (found.isEmpty()) {
            stop("step", "\"" + id + "\"", "a step of the definition as project/part/number/step", "");
        }
        return found;
    }

    private String crew() {
        return String.join(
                ", ", definition.shop().people().stream().map(p -> p.id()).toList());
    }

    private String words(Instant at) {
        return words(at, definition.shop().zone());
    }

    /** A moment in the time of a place. */
    public static String words(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).format(at.atZone(zone));
    }
}
