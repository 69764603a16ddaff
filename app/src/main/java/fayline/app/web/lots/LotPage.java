package fayline.app.web.lots;

import fayline.app.pdf.LotLabelPdf;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.Certificate;
import fayline.app.usecase.stores.MoveLot;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.usecase.view.StoresByPlan;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.stock.Receipt;
import fayline.flow.result.stock.LotStanding;
import fayline.flow.result.stock.OutOfCold;
import fayline.flow.result.trace.LotTrace;
import fayline.flow.result.trace.TracedUse;
import io.javalin.config.RoutesConfig;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** One lot: what is left and why, where it went, its label and certificate; carried into the cold and out of it. */
public final class LotPage implements Page, TakesKept {
    private static final String HERE = "/stores/lot";
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public LotPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> with(new Visit(ctx), this::show));
        routes.get(HERE + "/label.pdf", ctx -> with(new Visit(ctx), this::label));
        routes.get(HERE + "/certificate", ctx -> certificate(new Visit(ctx)));
        routes.post(HERE + "/move", ctx -> with(new Visit(ctx), this::move), Asks.to(Act.WORK));
        routes.get("/stores/in", ctx -> with(new Visit(ctx), this::backward));
    }

    private void with(Visit visit, BiConsumer<Visit, Sight> then) {
        sights.with(visit, sight -> then.accept(visit, sight));
    }

    private void show(Visit visit, Sight sight) {
        LotStanding standing = lot(visit, sight);
        sights.show(
                visit,
                "lots/lot.jte",
                sights.frame(visit, sight, "Lot " + standing.lot().id(), "/stores"),
                view(sight, standing));
    }

    private static LotStanding lot(Visit visit, Sight sight) {
        return StoresByPlan.of(sight.view()).lots().stream()
                .filter(l -> l.lot().id().equals(visit.query("lot")))
                .findFirst()
                .orElseThrow(() -> Refusal.absent("lot of that number"));
    }

    private LotView view(Sight sight, LotStanding standing) {
        Lot lot = standing.lot();
        List<TracedUse> uses = new LotTrace(sight.view().record()).forward(lot.id());
        Optional<Receipt> receipt = sight.view().record().stock().receipt(lot.id());
        return new LotView(
                lot.id(),
                LotWords.what(sight, lot),
                sight.amount(standing.left()),
                standing.lastDay().filter(d -> d.isBefore(sight.time().today())).isPresent(),
                facts(sight, standing, receipt),
                standing.out().map(o -> cold(sight, o)).orElse(""),
                standing.out().filter(OutOfCold::inRoom).isPresent(),
                standing.moves().stream().map(m -> move(sight, m)).toList(),
                uses.stream().map(u -> LotWords.use(sight, u)).toList(),
                uses.stream()
                        .map(TracedUse::made)
                        .distinct()
                        .map(m -> LotWords.made(sight, m))
                        .toList(),
                bench(sight, lot),
                HERE + "/label.pdf?lot=" + Visit.encoded(lot.id()),
                receipt.filter(r -> !r.certificate().isEmpty()).isPresent()
                        ? HERE + "/certificate?lot=" + Visit.encoded(lot.id())
                        : "");
    }

    /** Who scans a label with the phone's own camera stands at a bench, most likely. */
    private static List<LotView.Link> bench(Sight sight, Lot lot) {
        return sight.work().steps().stream()
                .filter(w -> w.state() == WorkStep.State.RUNNING)
                .filter(w -> sight.step(w.id())
                        .map(s -> StepAsks.of(sight.definition(), s))
                        .filter(a -> a.materials().contains(lot.of()))
                        .isPresent())
                .map(w -> new LotView.Link(
                        sight.stepName(w.id()), Sight.cardLink(w.id()) + "&lot=" + Visit.encoded(lot.id())))
                .toList();
    }

    private static List<LotView.Fact> facts(Sight sight, LotStanding s, Optional<Receipt> receipt) {
        Lot lot = s.lot();
        List<LotView.Fact> facts = new ArrayList<>();
        facts.add(new LotView.Fact(
                "Received",
                sight.time().day(lot.received()) + ", " + lot.quantity().asTyped()
                        + (lot.weighed() ? ", weighed" : ", by its label")
                        + receipt.map(r -> ", by " + sight.personName(r.by())).orElse("")));
        facts.add(new LotView.Fact(
                "Date on it", lot.expires().map(LocalDate::toString).orElse("none")));
        lot.openedLife()
                .ifPresent(life -> facts.add(new LotView.Fact(
                        "Opened",
                        lot.opened().map(LocalDate::toString).orElse("not yet") + ", keeps "
                                + sight.format().span(life))));
        s.lastDay()
                .ifPresent(d -> facts.add(
                        new LotView.Fact("Last day of use", sight.time().day(d))));
        receipt.filter(r -> !r.order().isEmpty()).ifPresent(r -> facts.add(new LotView.Fact("By order", r.order())));
        return facts;
    }

    private static String cold(Sight sight, OutOfCold out) {
        TimeSpan left = TimeSpan.ofMinutes(
                Math.max(0, out.limit().minutes() - out.spent().minutes()));
        return (out.inRoom() ? "In the room now. " : "In the cold. ") + "Out for "
                + sight.format().span(out.spent()) + " in all, of "
                + sight.format().span(out.limit()) + "; "
                + (left.minutes() > 0
                        ? sight.format().span(left) + " left"
                                + (out.inRoom()
                                        ? ", until "
                                                + sight.time().at(out.ends().orElseThrow()) + " if it stays there."
                                        : ".")
                        : "used up: it may not be used.");
    }

    private static LotView.Move move(Sight sight, LotStanding.Move m) {
        String sign = m.change().si() > 0 ? "+" : "";
        return new LotView.Move(
                sight.time().at(m.at()),
                m.sort().words(),
                LotWords.step(sight, m.step()),
                sign + sight.amount(m.change()),
                sight.amount(m.left()));
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        return address.equals(HERE + "/move") ? Optional.of(moved(sight, typed, sent)) : Optional.empty();
    }

    private Outcome moved(Sight sight, Typed typed, Sent sent) {
        return new MoveLot(shop)
                .move(
                        sent,
                        sight.view().project(),
                        typed.field("lot"),
                        typed.field("to").equals("cold"),
                        typed.moment());
    }

    private void move(Visit visit, Sight sight) {
        String lot = visit.needed("lot", "The lot");
        Outcome outcome = moved(sight, visit, Sent.live(visit.once(), sight.sender(visit)));
        if (!outcome.stands()) {
            throw new Refusal(422, outcome.sentence(), Answers.refused(outcome));
        }
        visit.say(Answers.said(outcome));
        visit.lead(LotWords.address(lot));
    }

    private void label(Visit visit, Sight sight) {
        LotStanding s = lot(visit, sight);
        Lot lot = s.lot();
        visit.send(
                LotLabelPdf.print(
                        List.of(new LotLabelPdf.Label(
                                lot.id(),
                                LotWords.what(sight, lot),
                                lot.quantity().asTyped() + ", received " + lot.received(),
                                s.lastDay().map(d -> "use by " + d).orElse("no date"),
                                visit.home() + LotWords.address(lot.id()).substring(1))),
                        Printing.paper(visit)),
                "application/pdf",
                "label-" + lot.id() + ".pdf");
    }

    private void certificate(Visit visit) {
        Certificate kept = shop.state()
                .stock()
                .receipt(visit.query("lot"))
                .flatMap(r -> shop.files().get(r.certificate()))
                .map(Certificate::new)
                .orElseThrow(() -> Refusal.absent("certificate of that lot"));
        // What is sent can be nothing but one of three kinds, and opened alone it stands in a sandbox.
        visit.context().header("Content-Security-Policy", "default-src 'none'; sandbox");
        visit.send(kept.bytes(), kept.type().orElse("application/octet-stream"), "certificate-" + visit.query("lot"));
    }

    private void backward(Visit visit, Sight sight) {
        String made = visit.query("made");
        if (sight.made(made).isEmpty()) {
            throw Refusal.absent("part or joint of that name");
        }
        List<TracedUse> uses =
                new LotTrace(sight.view().record()).backward(sight.view().project() + "/" + made);
        sights.show(
                visit,
                "lots/in.jte",
                sights.frame(visit, sight, "Lots in " + sight.madeName(made), "/stores"),
                LotsInView.of(sight, made, uses));
    }
}
