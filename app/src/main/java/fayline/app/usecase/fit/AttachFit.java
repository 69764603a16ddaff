package fayline.app.usecase.fit;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names the part of a fit that was begun on the spot, or takes it off again; its readings stay where they are. */
public final class AttachFit {
    private final ShopRecord shop;

    /** In a shop's record. */
    public AttachFit(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Attaches a fit to a part. Where the part is of the other hand than the fit was begun for, a caution says so: fore and aft
     * change places.
     *
     * @param sent who sends it under which id
     * @param project the project of both
     * @param fit the fit's id
     * @param part the part's id; refused where there is none of that name
     */
    public Outcome attach(Sent sent, String project, String fit, String part) {
        return shop.deciding(() -> {
            Optional<Finding> turned = shop.definition(project).flatMap(d -> turned(d, fit, part));
            Outcome outcome = change(sent, project, fit, List.of(new ChangeLines.Put(key(fit, "part"), part)));
            return outcome.stands() && turned.isPresent() ? outcome.with(List.of(turned.get())) : outcome;
        });
    }

    /**
     * Takes the part off a fit. The hand it had from the part stays its own, so that fore and aft stay where they are.
     *
     * @param sent who sends it under which id
     * @param project the project
     * @param fit the fit's id; refused where it has no part
     */
    public Outcome detach(Sent sent, String project, String fit) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definition(project);
            Optional<String> part = definition.flatMap(d -> d.fits().find(fit)).flatMap(Fit::part);
            if (part.isEmpty() && !shop.knows(sent.client())) {
                return Outcome.refused("The fit " + fit + " has no part.");
            }
            List<ChangeLines.Change> changes = new ArrayList<>();
            part.flatMap(p -> definition.flatMap(d -> d.parts().find(p)))
                    .map(Part::hand)
                    .filter(h -> h != Hand.NONE)
                    .ifPresent(h -> changes.add(new ChangeLines.Put(key(fit, "hand"), h.key())));
            changes.add(new ChangeLines.TakeOut(key(fit, "part")));
            return change(sent, project, fit, changes);
        });
    }

    private Outcome change(Sent sent, String project, String fit, List<ChangeLines.Change> changes) {
        ChangeLines lines = new ChangeLines(shop);
        return lines.fileOf(project, "fits", fit)
                .map(file -> lines.change(sent, project, file, changes))
                .orElseGet(() -> Outcome.refused("There is no fit " + fit + "."));
    }

    private static String key(String fit, String key) {
        return "fits[" + fit + "]." + key;
    }

    private static Optional<Finding> turned(Definition d, String fit, String part) {
        Hand before = d.fits().find(fit).map(Fit::hand).orElse(Hand.NONE);
        return d.parts()
                .find(part)
                .map(Part::hand)
                .filter(h -> before != Hand.NONE && h != Hand.NONE && h != before)
                .map(h -> new Finding(
                        Severity.CAUTION,
                        fit,
                        "the fit was begun on a " + before.key() + " part and this one is a " + h.key()
                                + " part: fore and aft of its places change. Measure x towards "
                                + (h == Hand.LEFT ? "aft" : "the front") + " there.",
                        "the definition"));
    }
}
