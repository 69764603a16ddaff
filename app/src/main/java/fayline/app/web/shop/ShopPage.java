package fayline.app.web.shop;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.act.ChangeLines.Add;
import fayline.app.usecase.act.ChangeLines.Change;
import fayline.app.usecase.act.ChangeLines.Put;
import fayline.app.usecase.act.ChangeLines.TakeOut;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The shop: forms for what changes weekly. Each changes only its own lines of the definition and is checked whole. */
public final class ShopPage implements Page {
    private static final String AIR = "air";
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._/-]{0,63}");
    private static final Pattern PLACE = Pattern.compile("[0-9]{1,4}");
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public ShopPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/shop", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, List.of()));
        });
        routes.post("/shop/air", ctx -> take(new Visit(ctx), AIR), Asks.to(Act.WORK));
        routes.post(
                "/shop/{what}",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    take(visit, visit.inPath("what"));
                },
                Asks.to(Act.CHANGE_DEFINITION));
    }

    private void show(Visit visit, Sight sight, List<String> refused) {
        sights.show(
                visit,
                "shop.jte",
                sights.frame(visit, sight, "Shop", "/shop"),
                ShopForms.of(sight.view(), sight.time(), refused));
    }

    private void take(Visit visit, String what) {
        sights.with(visit, sight -> take(visit, sight, what));
    }

    private void take(Visit visit, Sight sight, String what) {
        String by = sight.sender(visit);
        Sent sent = Sent.live(visit.once(), by).seeing(visit.seenHead());
        String project = sight.view().project();
        Outcome outcome = switch (what) {
            case "absence" -> change(sent, project, "people", id(visit), absence(visit));
            case "back" -> back(sent, project, visit, sight);
            case "hours" -> change(sent, project, "people", id(visit), hours(visit));
            case "lot" -> change(sent, project, "lots", id(visit), lot(visit));
            case "new-lot" -> newLot(sent, project, visit, sight);
            case "delivery" -> change(sent, project, "deliveries", id(visit), delivery(visit));
            case "goal" -> goal(sent, project, visit);
            case AIR -> new TakeReading(shop).take(sent, project, air(visit));
            case "day" -> day(sent, project, visit);
            default -> throw Refusal.input("There is no form \"" + what + "\" here.");
        };
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.say(Answers.said(outcome), "shop-" + what);
            visit.lead("/shop#" + section(what));
            return;
        }
        if (Overtaken.show(sights, visit, sight, outcome, "/shop#" + section(what))) {
            return;
        }
        visit.status(422);
        show(visit, sight, Answers.refused(outcome));
    }

    private static String section(String what) {
        return switch (what) {
            case "absence", "back", "hours" -> "people";
            case "lot", "new-lot" -> "lots";
            case "delivery" -> "deliveries";
            case "goal" -> "dates";
            default -> "climate";
        };
    }

    private Outcome change(Sent sent, String project, String kind, String id, List<Change> changes) {
        ChangeLines lines = new ChangeLines(shop);
        return lines.fileOf(project, kind, id)
                .map(path -> lines.change(sent, project, path, changes))
                .orElse(Outcome.refused("There is no \"" + id + "\" among the " + kind + "."));
    }

    private static String id(Visit visit) {
        String id = visit.needed("id", "Which one");
        if (!ID.matcher(id).matches()) {
            throw Refusal.input("\"" + id + "\" is no id.");
        }
        return id;
    }

    private static String place(Visit visit) {
        String place = visit.needed("place", "Which one");
        if (!PLACE.matcher(place).matches()) {
            throw Refusal.input("\"" + place + "\" is no place in a list.");
        }
        return place;
    }

    private static String at(String kind, Visit visit) {
        return kind + "[" + id(visit) + "]";
    }

    private static List<Change> absence(Visit visit) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("from", visit.needed("from", "First day away"));
        String to = visit.field("to");
        fields.put("to", to.isEmpty() ? visit.field("from") : to);
        if (!visit.field("why").isEmpty()) {
            fields.put("why", visit.field("why"));
        }
        return List.of(new Add(at("people", visit) + ".absences", fields));
    }

    private static List<Change> hours(Visit visit) {
        String row = at("people", visit) + ".hours[" + place(visit) + "]";
        return List.of(
                new Put(row + ".from", visit.needed("from", "Start of work")),
                new Put(row + ".to", visit.needed("to", "End of work")));
    }

    private static List<Change> lot(Visit visit) {
        List<Change> changes = new ArrayList<>();
        changes.add(new Put(at("lots", visit) + ".quantity", visit.needed("quantity", "Quantity")));
        date(visit, at("lots", visit), "opened").ifPresent(changes::add);
        return changes;
    }

    /** Takes an absence out, if it still stands where the page saw it. */
    private Outcome back(Sent sent, String project, Visit visit, Sight sight) {
        int place = Integer.parseInt(place(visit));
        boolean there = sight.definition().shop().people().find(id(visit)).stream()
                .flatMap(p -> p.absences().stream().skip(place).limit(1))
                .anyMatch(a -> a.from().toString().equals(visit.field("from")));
        if (!there && !shop.knows(sent.client())) {
            return Outcome.refused("That absence has been changed meanwhile. Look again at what stands here now.");
        }
        return change(
                sent,
                project,
                "people",
                id(visit),
                List.of(new TakeOut(at("people", visit) + ".absences[" + place + "]")));
    }

    private Outcome newLot(Sent sent, String project, Visit visit, Sight sight) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("id", visit.needed("id", "The lot's number"));
        fields.put("of", visit.needed("of", "What it is"));
        fields.put("component", visit.field("component"));
        fields.put("quantity", visit.needed("quantity", "Quantity"));
        fields.put("received", visit.needed("received", "The day it came"));
        fields.put("expires", visit.field("expires"));
        fields.values().removeIf(String::isEmpty);
        ChangeLines lines = new ChangeLines(shop);
        String path = sight.definition().lots().stream()
                .findFirst()
                .flatMap(l -> lines.fileOf(project, "lots", l.id()))
                .orElse("lots.yaml");
        return lines.change(sent, project, path, List.of(new Add("lots", fields)));
    }

    private static List<Change> delivery(Visit visit) {
        List<Change> changes = new ArrayList<>();
        changes.add(new Put(at("deliveries", visit) + ".due", visit.needed("due", "Promised day")));
        date(visit, at("deliveries", visit), "latest").ifPresent(changes::add);
        date(visit, at("deliveries", visit), "arrived").ifPresent(changes::add);
        return changes;
    }

    /** A date that may be left empty: written, taken out again, or left as it is. */
    private static Optional<Change> date(Visit visit, String thing, String key) {
        String now = visit.field(key);
        String before = visit.field("was-" + key);
        if (now.equals(before)) {
            return Optional.empty();
        }
        return Optional.of(now.isEmpty() ? new TakeOut(thing + "." + key) : new Put(thing + "." + key, now));
    }

    private Outcome goal(Sent sent, String project, Visit visit) {
        String due = visit.needed("due", "Day");
        return new ChangeLines(shop)
                .change(
                        sent,
                        project,
                        "project.yaml",
                        List.of(new Put("project.milestones[" + id(visit) + "].due", due)));
    }

    private static Measured air(Visit visit) {
        Map<String, String> values = new TreeMap<>();
        for (String key : List.of("air", "humidity", "surface", "probe")) {
            if (!visit.field(key).isEmpty()) {
                values.put(key, visit.field(key));
            }
        }
        return new Measured("climate", "", "", "", values, Optional.empty());
    }

    private Outcome day(Sent sent, String project, Visit visit) {
        List<Change> changes = new ArrayList<>();
        if (visit.field("place").isEmpty()) {
            Map<String, String> fields = new LinkedHashMap<>();
            fields.put("date", visit.needed("date", "Day"));
            fields.put("day", visit.needed("day", "Air by day"));
            fields.put("night", visit.needed("night", "Air by night"));
            fields.put("humidity", visit.needed("humidity", "Humidity"));
            changes.add(new Add("climate.forecast", fields));
        } else {
            String row = "climate.forecast[" + place(visit) + "]";
            changes.add(new Put(row + ".day", visit.needed("day", "Air by day")));
            changes.add(new Put(row + ".night", visit.needed("night", "Air by night")));
            changes.add(new Put(row + ".humidity", visit.needed("humidity", "Humidity")));
        }
        return new ChangeLines(shop).change(sent, project, "climate.yaml", changes);
    }
}
