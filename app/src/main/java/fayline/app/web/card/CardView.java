package fayline.app.web.card;

import fayline.app.pdf.CardSheet;
import fayline.app.web.fit.FitLinks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.PhotoView;
import fayline.app.web.frame.StateWord;
import fayline.app.web.traveller.TravellerView;
import fayline.app.web.trouble.DeviationView;
import java.util.List;

/**
 * What a card shows at the bench.
 *
 * @param sheet the card in words
 * @param findings what the computation says, with names for ids
 * @param madeLink the page of the part or joint
 * @param state how far the step is
 * @param mayStart whether it can be started
 * @param mayFinish whether it can be finished
 * @param started when it was started, for the clock; empty where it was not
 * @param crew who may work on it, those planned ticked
 * @param signers who may sign
 * @param places ids of the planned places
 * @param record what is recorded of it
 * @param twice what was recorded twice: which entry holds, which stands beside it without effect, and whose they are
 * @param answered the answer to which way round; empty where none was given
 * @param figures figures that can be asked why
 * @param fits what of a fit is read or seen at this step
 * @param refused why what was just sent was not taken
 * @param why why the plan has it there and by how much it may slip; empty for what is begun
 * @param wished what the lead wishes of it, in words; empty for nothing
 * @param decide where that is decided; empty for what is begun
 * @param nowField the shop's minute, for fields of time
 * @param traveller what goes into the step
 * @param troubles deviations seen at it
 * @param held what it waits for and may not begin before; empty for nothing
 * @param barred what a change of the design says against it, which the lead may set aside; empty for nothing
 * @param paper what is to be said of the printed card whose square was scanned; empty where none was
 * @param paperBad whether that print must not be used
 * @param seen how far the record was when this card was made
 */
public record CardView(
        CardSheet sheet,
        List<String> findings,
        String madeLink,
        StateWord state,
        boolean mayStart,
        boolean mayFinish,
        String started,
        List<Frame.Choice> crew,
        List<Frame.Choice> signers,
        List<String> places,
        List<Recorded> record,
        List<String> twice,
        String answered,
        List<Asked> figures,
        List<FitLinks.Link> fits,
        List<String> refused,
        String why,
        String wished,
        String decide,
        String nowField,
        TravellerView traveller,
        List<DeviationView> troubles,
        String held,
        String barred,
        String paper,
        boolean paperBad,
        long seen) {
    /** Copies the lists. */
    public CardView {
        findings = List.copyOf(findings);
        crew = List.copyOf(crew);
        signers = List.copyOf(signers);
        places = List.copyOf(places);
        record = List.copyOf(record);
        twice = List.copyOf(twice);
        figures = List.copyOf(figures);
        fits = List.copyOf(fits);
        refused = List.copyOf(refused);
        troubles = List.copyOf(troubles);
    }

    /** The address that the card's forms are sent to, without what they do. */
    public String base() {
        String path = sheet.path();
        int cut = path.indexOf('?');
        return cut < 0 ? path : path.substring(0, cut);
    }

    /** The address of a form of this card. */
    public String action(String what) {
        String path = sheet.path();
        int cut = path.indexOf('?');
        return base() + "/" + what + (cut < 0 ? "" : path.substring(cut));
    }

    /**
     * Something recorded.
     *
     * @param entry the entry's number
     * @param what what it was, in a sentence
     * @param kind {@code start}, {@code finish}, {@code note} or {@code reading}
     * @param text the text or value as typed, to be mended; empty for times
     * @param photos pictures that go with it
     */
    public record Recorded(long entry, String what, String kind, String text, List<PhotoView> photos) {
        /** Copies the list. */
        public Recorded {
            photos = List.copyOf(photos);
        }

        /** Something recorded without pictures. */
        static Recorded plain(long entry, String what, String kind, String text) {
            return new Recorded(entry, what, kind, text, List.of());
        }
    }

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     * @param link where it says why
     */
    public record Asked(String name, String value, String link) {}
}
