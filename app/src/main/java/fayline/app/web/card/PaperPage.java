package fayline.app.web.card;

import fayline.app.pdf.CardSheet;
import fayline.app.pdf.CardWords;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.DayCards;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;

/** The cards of a day as PDF, ordered by person and time. */
public final class PaperPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public PaperPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/cards.pdf", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                LocalDate day = day(visit.query("day"), sight.time().today());
                CardWords words = CardWords.of(sight.definition(), sight.result(), sight.format());
                List<CardSheet> cards =
                        DayCards.of(
                                        sight.definition(),
                                        sight.result(),
                                        sight.plan(),
                                        sight.time().zone(),
                                        day)
                                .stream()
                                .map(words::sheet)
                                .toList();
                byte[] pdf = CardsPdf.print(cards, Printing.setting(visit, sight, day));
                visit.send(pdf, "application/pdf", "cards-" + day + ".pdf");
            });
        });
    }

    private static LocalDate day(String asked, LocalDate today) {
        try {
            return asked.isEmpty() ? today : LocalDate.parse(asked);
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + asked + "\" is no day. Expected one such as 2026-03-02.");
        }
    }
}
