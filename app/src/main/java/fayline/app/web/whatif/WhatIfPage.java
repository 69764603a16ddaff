package fayline.app.web.whatif;

import fayline.app.usecase.view.WhatIf;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.whatif.Asked.UnreadableQuestionException;
import fayline.app.web.whatif.WhatIfView.Choice;
import fayline.app.web.whatif.WhatIfView.Column;
import fayline.flow.whatif.Change;
import io.javalin.config.RoutesConfig;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What if somebody is away, a mould more, another air, a late delivery, one more day, one more in the crew. */
public final class WhatIfPage implements Page {
    private static final int MOST = 4;
    private static final String BETWEEN = ";";
    private final Sights sights;
    private final WhatIf whatIf;

    /** Makes the page. */
    public WhatIfPage(Sights sights, WhatIf whatIf) {
        this.sights = sights;
        this.whatIf = whatIf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/what-if", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "whatif/what-if.jte",
                            sights.frame(visit, sight, "What if?", "/weeks"),
                            view(sight, visit)));
        });
    }

    /** The question that a form adds, as it stands in the address. */
    private static String added(Visit visit) {
        return switch (visit.query("ask")) {
            case "away" -> "away/" + visit.query("person") + "/" + visit.query("from") + "/" + visit.query("to");
            case "mould" -> "mould/" + visit.query("mould");
            case "air" -> "air/" + visit.query("air") + "/" + visit.query("from") + "/" + visit.query("days");
            case "late" -> "late/" + visit.query("delivery") + "/" + visit.query("days");
            case "day" -> "day/" + visit.query("day");
            case "long" -> "long/" + visit.query("day") + "/" + visit.query("until");
            case "more" -> "more/" + visit.query("person");
            default -> "";
        };
    }

    private WhatIfView view(Sight sight, Visit visit) {
        List<String> texts = new ArrayList<>();
        for (String t : (visit.query("w") + BETWEEN + added(visit)).split(BETWEEN)) {
            if (!t.isBlank() && !texts.contains(t)) {
                texts.add(t);
            }
        }
        String trouble = "";
        if (!visit.query("ways").isEmpty()) {
            texts.clear();
            texts.addAll(LongWorkViews.questions(sight, visit.query("ways")));
            trouble = texts.isEmpty()
                    ? "No split into six, no crew of this shop and no longer day soon lets this step be done. Change the step or the hours."
                    : "";
        }
        List<Asked> asked = new ArrayList<>();
        for (String t : texts) {
            try {
                if (asked.size() < MOST) {
                    asked.add(Asked.read(sight, t));
                } else {
                    trouble = "Only " + MOST + " questions stand side by side; take one out first.";
                }
            } catch (UnreadableQuestionException e) {
                trouble = String.valueOf(e.getMessage());
            }
        }
        List<Column> columns = new ArrayList<>(List.of(new Column("As it is", "")));
        List<List<Change>> questions = new ArrayList<>(List.of(List.of()));
        for (Asked a : asked) {
            questions.add(List.of(a.change()));
            columns.add(new Column(
                    a.words(), link(asked.stream().filter(x -> !x.equals(a)).toList())));
        }
        if (asked.size() > 1) {
            questions.add(asked.stream().map(Asked::change).toList());
            columns.add(new Column("All of these together", ""));
        }
        LocalDate tomorrow = sight.time().today().plusDays(1);
        return new WhatIfView(
                trouble,
                asked.stream().map(Asked::text).collect(Collectors.joining(BETWEEN)),
                columns,
                new Comparison(
                                sight,
                                whatIf.ask(questions),
                                asked.stream().flatMap(a -> a.step().stream()).collect(Collectors.toSet()))
                        .rows(),
                LongWorkViews.of(sight),
                sight.definition().shop().people().stream()
                        .filter(p -> !p.volunteer())
                        .map(p -> new Choice(p.id(), p.name()))
                        .toList(),
                sight.definition().shop().moulds().stream()
                        .map(m -> new Choice(m.id(), m.name()))
                        .toList(),
                sight.work().deliveries().stream()
                        .map(d -> new Choice(d.id(), sight.stuffName(d.what())))
                        .toList(),
                tomorrow.toString(),
                tomorrow.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY)).toString());
    }

    private static String link(List<Asked> asked) {
        return "/what-if?w=" + Visit.encoded(asked.stream().map(Asked::text).collect(Collectors.joining(BETWEEN)));
    }
}
