package fayline.app.web.change;

import fayline.app.usecase.change.CheckPrint;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Sight;
import fayline.flow.card.PrintMark;
import fayline.flow.record.change.Change;
import java.util.Optional;

/** Says of something printed whether it still holds. */
public final class PrintWords {
    private final Sight sight;
    private final ShopRecord shop;

    /** Of prints of the project that is seen. */
    public PrintWords(Sight sight, ShopRecord shop) {
        this.sight = sight;
        this.shop = shop;
    }

    /** What is to be said of a mark as it was typed or scanned. */
    public ChangesPage.Printed of(String typed) {
        Optional<PrintMark> mark = PrintMark.parse(typed);
        if (mark.isEmpty()) {
            return new ChangesPage.Printed(
                    typed,
                    "That is no mark. Expected the line at the foot of a card or template, such as "
                            + "hull-bottom | OU-110 rev B | 9f2c44d1a7b3. Do not use it until its mark is read.",
                    true,
                    "");
        }
        CheckPrint.Answer answer = new CheckPrint(shop).of(sight.definition(), mark.get());
        return new ChangesPage.Printed(
                typed,
                words(mark.get(), answer),
                answer.standing() == CheckPrint.Standing.WITHDRAWN
                        || answer.standing() == CheckPrint.Standing.NOT_OURS
                        || answer.standing() == CheckPrint.Standing.NO_SUCH_PART,
                answer.change().map(c -> ChangeViews.link(c.seq(), c.project())).orElse(""));
    }

    private String words(PrintMark mark, CheckPrint.Answer answer) {
        String name = sight.madeName(mark.made());
        String instead = answer.drawing().isEmpty() || answer.drawing().equals(mark.drawing())
                ? ""
                : " The drawing is now " + answer.drawing() + ".";
        return switch (answer.standing()) {
            case HOLDS -> name + ": it holds. It was printed from the definition as it is now.";
            case OLDER ->
                name
                        + ": no change withdrew it. The definition was edited since it was printed; where in doubt, print it "
                        + "anew." + instead;
            case WITHDRAWN ->
                name + ": withdrawn by change "
                        + answer.change().map(Change::name).orElse("") + ". Do not use it." + instead;
            case NO_SUCH_PART -> "The definition holds no part or joint \"" + mark.made() + "\". Do not use it.";
            case NOT_OURS -> name + ": this record never held the definition that it was printed from. Do not use it.";
        };
    }
}
