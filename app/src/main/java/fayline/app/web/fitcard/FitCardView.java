package fayline.app.web.fitcard;

import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.fitcard.FitSheet;

/**
 * What the card's page shows.
 *
 * @param sheet the card in words
 * @param assume whether uncertainties that nobody gave were replaced by the named defaults
 */
public record FitCardView(FitSheet sheet, boolean assume) {
    /** How it is set and held, drawn. */
    public String drawing() {
        return SvgRenderer.forScreen().render(sheet.drawing());
    }

    /** What follows the address of the card, to keep the same assumption. */
    public String asked() {
        return assume ? "?assume=yes" : "";
    }
}
