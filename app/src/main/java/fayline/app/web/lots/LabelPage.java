package fayline.app.web.lots;

import fayline.app.pdf.QrReader;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.stores.LabelPhoto;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Optional;

/** Reads the photo of a label for phones whose browser cannot. Nothing is kept of it. */
public final class LabelPage implements Page {
    private static final int MOST_LETTERS = 400;

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/stores/label", ctx -> read(new Visit(ctx)), Asks.to(Act.WORK));
    }

    private static void read(Visit visit) {
        List<Typed.Parcel> photos = visit.parcels("photo");
        if (photos.isEmpty()) {
            answer(visit, 422, "No photo came. Expected one of the label.");
            return;
        }
        LabelPhoto photo = LabelPhoto.of(photos.get(0).bytes());
        if (!photo.refused().isEmpty()) {
            answer(visit, 422, "Found " + photo.refused() + ", expected a photo. Type the number instead.");
            return;
        }
        Optional<String> code =
                QrReader.read(photo.widthPx(), photo.heightPx(), photo.rgb()).filter(c -> c.length() <= MOST_LETTERS);
        answer(
                visit,
                code.isPresent() ? 200 : 422,
                code.map(LotCode::number)
                        .orElse(
                                "No square code was found in the photo. Go nearer, without shine, or type the number."));
    }

    private static void answer(Visit visit, int status, String text) {
        visit.status(status);
        visit.context().contentType("text/plain; charset=utf-8").result(text);
    }
}
