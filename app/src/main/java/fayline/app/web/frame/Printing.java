package fayline.app.web.frame;

import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.Paper;
import java.time.LocalDate;

/** What a printed sheet is printed on, and what it says of where and when. */
public final class Printing {
    private Printing() {}

    /**
     * The paper asked for, A4 where nothing is said.
     *
     * @throws Refusal if it is another than can be had
     */
    public static Paper paper(Visit visit) {
        return Paper.of(visit.query("paper").isEmpty() ? "a4" : visit.query("paper"))
                .orElseThrow(() -> Refusal.input("Paper is a4 or letter."));
    }

    /**
     * The same with the moment, and the address that the codes on it open.
     *
     * @param visit who asks
     * @param sight the shop as it is seen
     * @param day the day it is printed for
     * @throws Refusal as above
     */
    public static CardsPdf.Setting setting(Visit visit, Sight sight, LocalDate day) {
        return new CardsPdf.Setting(visit.home(), sight.time().full(), day.toString(), paper(visit));
    }
}
