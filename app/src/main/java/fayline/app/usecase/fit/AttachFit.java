package fayline.app.usecase.fit;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import java.util.List;
import java.util.Optional;

/** Names the part of a fit that was begun on the spot; its readings stay where they are. */
public final class AttachFit {
    private final ShopRecord shop;

    /** In a shop's record. */
    public AttachFit(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Attaches a fit to a part.
     *
     * @param sent who sends it under which id
     * @param project the project of both
     * @param fit the fit's id
     * @param part the part's id; refused where there is none of that name
     */
    public Outcome attach(Sent sent, String project, String fit, String part) {
        ChangeLines lines = new ChangeLines(shop);
        Optional<String> file = lines.fileOf(project, "fits", fit);
        return file.isEmpty()
                ? Outcome.refused("There is no fit " + fit + ".")
                : lines.change(sent, project, file.get(), List.of(new ChangeLines.Put("fits[" + fit + "].part", part)));
    }
}
