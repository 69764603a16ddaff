package fayline.app.web.week;

import fayline.app.pdf.book.WeekPdf;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.Photos;
import fayline.app.usecase.week.DraftWeek;
import fayline.app.usecase.week.TellWeek;
import fayline.app.usecase.week.WeekDraft;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.function.Function;

/** What is told of a week to people outside: drafted from the record, edited on the page, settled, printed. */
public final class WeekPage implements Page {
    private static final String HERE = "/week-told";
    private static final String YES = "yes";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights shows pages
     * @param shop the record
     */
    public WeekPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit, "week/week.jte", sights.frame(visit, sight, "Week told", HERE), view(visit, sight)));
        });
        routes.get(HERE + "/{seq}.pdf", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> print(visit, sight));
        });
        routes.post(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> settle(visit, sight));
                },
                Asks.to(Act.TELL_WEEK));
    }

    private static LocalDate monday(String asked, Sight sight) {
        try {
            LocalDate day = asked.isEmpty() ? sight.time().today().minusDays(1) : LocalDate.parse(asked);
            return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + asked + "\" is no day. Expected one such as 2026-03-02.");
        }
    }

    private static WeekDraft.Private may(Function<String, String> asked) {
        return new WeekDraft.Private(
                asked.apply("names").equals(YES),
                asked.apply("notes").equals(YES),
                asked.apply("people").equals(YES));
    }

    private WeekView view(Visit visit, Sight sight) {
        LocalDate monday = monday(visit.query("week"), sight);
        WeekDraft.Private may = may(visit::query);
        WeekDraft draft = DraftWeek.of(sight.view(), monday, may);
        return new WeekView(
                monday.toString(),
                DAY.format(monday) + " to " + DAY.format(monday.plusDays(6)),
                monday.minusDays(7).toString(),
                monday.plusDays(7).toString(),
                may.names(),
                may.notes(),
                may.people(),
                draft.title(),
                draft.text(),
                draft.facts().stream()
                        .map(f -> new WeekView.Fact(f.shown(), f.from(), f.entry()))
                        .distinct()
                        .toList(),
                draft.pictures().stream()
                        .map(p -> new WeekView.Picture(p.photo().sha256(), p.says()))
                        .toList(),
                heldBack(draft.heldBack()),
                new TellWeek(shop)
                        .kept(sight.view().project()).stream()
                                .map(k -> new WeekView.Told(k.seq(), k.told().title(), sight.personName(k.by())))
                                .toList());
    }

    private static String heldBack(int n) {
        return n == 0
                ? ""
                : (n == 1 ? "1 picture is" : n + " pictures are")
                        + " held back: there may be people in it, and pictures with people were not asked for.";
    }

    private void settle(Visit visit, Sight sight) {
        WeekDraft.Private may = may(((Typed) visit)::field);
        WeekDraft draft = DraftWeek.of(sight.view(), monday(visit.field("week"), sight), may);
        Outcome outcome = new TellWeek(shop)
                .tell(
                        Sent.live(visit.once(), sight.sender(visit)),
                        sight.view().project(),
                        draft,
                        may,
                        new TellWeek.Told(
                                visit.field("title"), visit.text("text").strip(), visit.fields("photo")));
        if (!outcome.stands()) {
            throw new Refusal(422, outcome.sentence(), Answers.refused(outcome));
        }
        visit.say(Answers.said(outcome), "week");
        visit.lead(HERE + "?week=" + draft.monday() + "#told");
    }

    private void print(Visit visit, Sight sight) {
        String seq = visit.inPath("seq");
        TellWeek.Kept kept = new TellWeek(shop)
                .kept(sight.view().project()).stream()
                        .filter(k -> String.valueOf(k.seq()).equals(seq))
                        .findFirst()
                        .orElseThrow(() -> Refusal.absent("week told under that number"));
        byte[] pdf = WeekPdf.print(
                sight.definition().shop().name(), kept.told(), new Photos(shop)::printed, Printing.paper(visit));
        visit.send(pdf, "application/pdf", "week-" + kept.week() + ".pdf");
    }
}
