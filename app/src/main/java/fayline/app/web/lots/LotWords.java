package fayline.app.web.lots;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.lots.LotView.Link;
import fayline.flow.project.stock.Lot;
import fayline.flow.result.trace.TracedUse;

/** Lots and their uses in words and addresses. */
public final class LotWords {
    private LotWords() {}

    /** The page of a lot. A number may hold a stroke, so it stands after the question mark. */
    public static String address(String lot) {
        return "/stores/lot?lot=" + Visit.encoded(lot);
    }

    static Link link(String lot) {
        return lot.isEmpty() ? new Link("", "") : new Link("lot " + lot, address(lot));
    }

    static String what(Sight sight, Lot lot) {
        return sight.stuffName(lot.of()) + (lot.component().isEmpty() ? "" : ", " + lot.component());
    }

    /** A step of this project or another: {@code made/number/key}, with the project before it where it is another's. */
    static Link step(Sight sight, String within) {
        if (within.isEmpty()) {
            return new Link("", "");
        }
        String full = within.split("/", -1).length == 3 ? sight.view().project() + "/" + within : within;
        return new Link(sight.stepName(full), Sight.cardLink(full));
    }

    static Link made(Sight sight, String made) {
        String[] bits = made.split("/", -1);
        boolean own = bits[0].equals(sight.view().project());
        return new Link(own ? sight.madeName(bits[1]) : made, own ? "/stores/in?made=" + Visit.encoded(bits[1]) : "");
    }

    static LotView.Use use(Sight sight, TracedUse u) {
        String what = u.sort().words() + (u.what().isEmpty() ? "" : " " + u.what());
        return new LotView.Use(
                sight.time().at(u.at()),
                step(sight, u.step()),
                what + (u.component().isEmpty() ? "" : ", " + u.component()),
                u.amount().isEmpty() ? "no reading" : u.amount(),
                link(u.with()),
                sight.personName(u.by()),
                "/record/entry/" + u.seq());
    }
}
