package fayline.app.pdf.book;

import fayline.app.pdf.CardStyle;
import fayline.app.pdf.Markup;
import fayline.app.pdf.Paper;
import fayline.app.pdf.PdfPrinter;
import fayline.app.usecase.view.ShopView;
import fayline.flow.record.StepRecord;
import fayline.flow.result.hours.BookedTime;
import fayline.flow.result.hours.HoursResult;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Prints the builder's log: day after day what was worked on, by whom, how long, with what was noted. */
public final class BuilderLogPdf {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final double MINUTES = 60;
    private final Markup m = new Markup();
    private final ShopView view;
    private final HoursResult hours;

    private BuilderLogPdf(ShopView view, HoursResult hours) {
        this.view = view;
        this.hours = hours;
    }

    /**
     * Prints.
     *
     * @param view the shop
     * @param hours what is told of
     * @param paper the paper
     * @param printed when it is printed, in words
     * @return a PDF/A-2a
     */
    public static byte[] print(ShopView view, HoursResult hours, Paper paper, String printed) {
        return PdfPrinter.archive(new BuilderLogPdf(view, hours).document(paper, printed), name -> Optional.empty());
    }

    private String document(Paper paper, String printed) {
        String project = (view.definition().facts().name() + " "
                        + view.definition().facts().serial())
                .strip();
        String title = "Builder's log, " + project;
        m.openWith("html", "lang", "en").open("head").element("title", title);
        m.empty("meta", "name", "description", "content", "Who worked on what, day by day");
        m.element(
                        "style",
                        CardStyle.css(paper)
                                + ".day td { border-top: 0.4mm solid #000; font-weight: 700; } .below td { border-top: none; color: #333; }")
                .close();
        m.open("body").element("div", "foot", title + " \u00b7 printed " + printed);
        m.element("h1", title).element("p", "made", view.definition().shop().name());
        m.element(
                "p",
                hours(hours.minutes()) + " from starts and finishes in the shop's record, which ends at entry "
                        + view.record().head().seq()
                        + ". Hours support a log; they are no proof of who built what. No licensed signature.");
        days();
        totals();
        m.open("table", "done").open("tr");
        for (String s : List.of("Date", "Name", "Signed by hand")) {
            m.element("td", s);
        }
        return m.close().close().close().close().toString();
    }

    private void days() {
        Map<LocalDate, List<BookedTime>> byDay = new TreeMap<>();
        hours.booked()
                .forEach(b ->
                        byDay.computeIfAbsent(b.day(), d -> new ArrayList<>()).add(b));
        BookPdf.head(m, "What", "Who", "Hours together");
        byDay.forEach((day, booked) -> {
            m.open("tr", "day").element("td", DAY.format(day)).element("td", "");
            m.element(
                            "td",
                            hours(booked.stream()
                                    .mapToDouble(BookedTime::minutes)
                                    .sum()))
                    .close();
            Map<String, List<BookedTime>> bySteps = new LinkedHashMap<>();
            booked.forEach(b ->
                    bySteps.computeIfAbsent(b.step(), s -> new ArrayList<>()).add(b));
            bySteps.forEach((step, some) -> step(day, step, some));
        });
        m.close().close();
    }

    private void step(LocalDate day, String step, List<BookedTime> booked) {
        BookedTime first = booked.get(0);
        m.open("tr").element("td", first.title() + ", " + made(first.made()));
        m.element(
                "td",
                String.join(
                        ", ",
                        booked.stream()
                                .map(b -> person(b.person()) + (b.paid() ? " (paid)" : ""))
                                .toList()));
        m.element("td", hours(booked.stream().mapToDouble(BookedTime::minutes).sum()))
                .close();
        for (StepRecord.Note n : view.record().step(step).notes()) {
            String text = n.shown(view.zone());
            if (!text.isEmpty() && n.at().atZone(view.zone()).toLocalDate().equals(day)) {
                m.open("tr", "below")
                        .openWith("td", "colspan", "3")
                        .text(person(n.by()) + ": " + text)
                        .close()
                        .close();
            }
        }
    }

    private void totals() {
        m.element("h2", "Together, by person");
        m.open("table", "facts");
        hours.by(BookedTime::person)
                .forEach((person, minutes) -> m.open("tr")
                        .element("th", person(person))
                        .element("td", hours(minutes))
                        .close());
        m.close();
    }

    private String person(String id) {
        return view.definition().shop().people().find(id).map(p -> p.name()).orElse(id);
    }

    private String made(String id) {
        return view.definition()
                .parts()
                .find(id)
                .map(p -> p.name())
                .or(() -> view.definition().joints().find(id).map(j -> j.name()))
                .orElse(id);
    }

    private static String hours(double minutes) {
        return String.format(Locale.ROOT, "%.1f h", minutes / MINUTES);
    }
}
