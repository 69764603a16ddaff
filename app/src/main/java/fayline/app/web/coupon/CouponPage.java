package fayline.app.web.coupon;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.coupon.CouponWords;
import fayline.app.usecase.coupon.LookAtCoupons;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.project.design.Part;
import fayline.flow.record.TakenReading;
import fayline.flow.result.coupon.CouponCalculator;
import fayline.flow.result.coupon.CouponResult;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The witness pieces of a part: results are entered here as readings, and their scatter is told. */
public final class CouponPage implements Page {
    private static final String HERE = "/part/{id}/coupons";
    private final Sights sights;
    private final ShopRecord shop;

    /** On a shop's record. */
    public CouponPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    /** Where the witness pieces of a part are shown. */
    public static String link(String part) {
        return "/part/" + Visit.encoded(part) + "/coupons";
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, List.of()));
        });
        routes.post(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> answer(visit, sight, take(visit, sight)));
                },
                Asks.to(Act.WORK));
        routes.post(
                HERE + "/{entry}/withdraw",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> answer(visit, sight, withdraw(visit, sight)));
                },
                Asks.to(Act.WORK));
    }

    private static Part part(Visit visit, Sight sight) {
        return sight.definition()
                .parts()
                .find(visit.inPath("id"))
                .orElseThrow(() -> Refusal.absent("part of that name"));
    }

    private Outcome take(Visit visit, Sight sight) {
        Part part = part(visit, sight);
        String instrument = visit.field("instrument");
        Map<String, String> values = instrument.isEmpty()
                ? Map.of("value", visit.field("value"))
                : Map.of("value", visit.field("value"), "instrument", instrument);
        return new TakeReading(shop)
                .take(
                        Sent.live(visit.once(), sight.sender(visit)),
                        sight.definition().facts().id(),
                        new Measured(
                                CouponCalculator.KIND,
                                part.id(),
                                visit.field("coupon"),
                                piece(visit.field("piece")),
                                values,
                                Optional.empty()));
    }

    /** The mark of a piece as the record names it; a bare number is told as such. */
    private static String piece(String typed) {
        return typed.matches("[0-9]{1,4}") ? "piece-" + typed : typed;
    }

    private Outcome withdraw(Visit visit, Sight sight) {
        Part part = part(visit, sight);
        String why = visit.field("why");
        String asked = visit.inPath("entry");
        Optional<TakenReading> reading = LookAtCoupons.of(sight.view(), part).stream()
                .flatMap(c -> c.readings().stream())
                .filter(r -> String.valueOf(r.seq()).equals(asked))
                .findFirst();
        if (reading.isEmpty()) {
            throw Refusal.absent("result of that part under that number");
        }
        return why.isEmpty()
                ? Outcome.refused("Say why, so that the record can be understood later.")
                : new CorrectStep(shop)
                        .withdraw(
                                Sent.live(visit.once(), sight.sender(visit)).seeing(visit.seenHead()),
                                reading.get().seq(),
                                why);
    }

    private void answer(Visit visit, Sight sight, Outcome outcome) {
        String page = link(part(visit, sight).id());
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.say(Answers.said(outcome), "coupon-" + visit.field("coupon"));
            visit.lead(page);
        } else if (!Overtaken.show(sights, visit, sight, outcome, page)) {
            visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
            show(visit, sight, Answers.refused(outcome));
        }
    }

    private void show(Visit visit, Sight sight, List<String> refused) {
        Part part = part(visit, sight);
        CouponView view = new CouponView(
                part.id(),
                part.name(),
                LookAtCoupons.of(sight.view(), part).stream()
                        .map(c -> row(sight, c))
                        .toList(),
                refused,
                refused.isEmpty() ? "" : visit.field("coupon"),
                refused.isEmpty() ? "" : visit.field("value"));
        sights.show(
                visit,
                "coupon/coupons.jte",
                sights.frame(visit, sight, "Witness pieces: " + part.name(), "/airframe"),
                view);
    }

    private static CouponView.Row row(Sight sight, CouponResult c) {
        CouponMeasure test = c.coupon().test();
        return new CouponView.Row(
                c.coupon().id(),
                c.coupon().name(),
                CouponWords.test(test),
                CouponWords.tested(c),
                c.missing() == 0,
                told(sight, test, c.mean()),
                told(sight, test, c.deviation()),
                CouponWords.variation(c),
                CouponWords.bound(sight.format().system(), c),
                CouponWords.boundSays(c),
                c.coupon().allowable(),
                switch (test) {
                    case BARCOL -> "a Barcol number, such as 47";
                    case BURN_OFF -> "a share by mass, such as 58.2 %";
                    case TENSILE, LAP_SHEAR -> "a stress, such as 24.1 MPa or 3500 psi";
                },
                c.readings().stream().map(r -> result(sight, r)).toList());
    }

    private static String told(Sight sight, CouponMeasure test, OptionalDouble value) {
        return CouponWords.told(sight.format().system(), test, value);
    }

    private static CouponView.Result result(Sight sight, TakenReading r) {
        String with = r.values().getOrDefault("instrument", "");
        return new CouponView.Result(
                r.value(),
                r.state().replace('-', ' '),
                sight.personName(r.by()) + ", " + sight.time().at(r.at()) + (with.isEmpty() ? "" : ", with " + with),
                r.seq());
    }
}
