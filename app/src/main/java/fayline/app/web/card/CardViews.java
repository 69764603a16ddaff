package fayline.app.web.card;

import fayline.app.pdf.CardSheet;
import fayline.app.pdf.CardWords;
import fayline.app.usecase.act.ChangeGate;
import fayline.app.usecase.act.FoundStep;
import fayline.app.usecase.act.Held;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Rights;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.StandingWishes;
import fayline.app.web.change.ChangesPage;
import fayline.app.web.change.PrintWords;
import fayline.app.web.fit.FitLinks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.StateWord;
import fayline.app.web.frame.Visit;
import fayline.app.web.traveller.TravellerViews;
import fayline.app.web.trouble.DeviationView;
import fayline.app.web.trouble.DeviationViews;
import fayline.basis.finding.Figure;
import fayline.flow.card.Card;
import fayline.flow.card.CardMaker;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes what a card shows. */
final class CardViews {
    private CardViews() {}

    static CardView of(Sight sight, ShopRecord shop, String step, Visit visit, List<String> refused, String why) {
        String person = visit.person();
        RecordState state = shop.state();
        StepResult result = sight.step(step).orElseThrow();
        Card card = CardMaker.make(sight.definition(), sight.result(), sight.plan(), step);
        CardSheet sheet =
                CardWords.of(sight.definition(), sight.result(), sight.format()).sheet(card);
        StepRecord kept = state.step(step);
        Optional<Plan.PlannedStep> planned = sight.planned(step);
        List<String> planners = planned.map(Plan.PlannedStep::people).orElse(List.of());
        List<Frame.Choice> crew = new ArrayList<>();
        List<Frame.Choice> signers = new ArrayList<>();
        for (Person p : sight.definition().shop().people()) {
            boolean ticked = planners.contains(p.id()) || (planners.isEmpty() && p.id().equals(person));
            crew.add(new Frame.Choice(p.id(), p.name(), ticked));
            if (p.skills().contains(Skill.SIGN)) {
                signers.add(new Frame.Choice(p.id(), p.name(), p.id().equals(person)));
            }
        }
        String scanned = visit.query("printed");
        ChangesPage.Printed printed = scanned.isEmpty()
                ? new ChangesPage.Printed("", "", false, "")
                : new PrintWords(sight, shop).of(scanned);
        return new CardView(
                sheet,
                sheet.findings().stream().map(sight::named).toList(),
                sight.madeLink(result.made()),
                StateWord.of(result, sight),
                kept.started().isEmpty() && kept.finished().isEmpty(),
                kept.started().isPresent() && kept.finished().isEmpty(),
                kept.started().map(Instant::toString).orElse(""),
                crew,
                signers,
                planned.map(Plan.PlannedStep::places).orElse(List.of()),
                CardRecord.of(sight, state, step),
                CardRecord.twice(sight, shop, step),
                kept.whichWay(),
                figures(card),
                FitLinks.of(sight, step),
                refused,
                why,
                StandingWishes.byStep(sight.view()).getOrDefault(step, ""),
                sight.work(step)
                        .filter(w -> w.state() == WorkStep.State.TODO)
                        .map(w -> Sight.wishLink(step))
                        .orElse(""),
                sight.time().field(sight.time().now()),
                TravellerViews.of(
                        sight,
                        shop,
                        step,
                        card.mixes().stream().map(Card.MixLine::list).toList(),
                        visit.actor().map(a -> Rights.may(a, Act.OVERRIDE_LOT)).orElse(true),
                        visit.query("lot")),
                troubles(sight, shop, step),
                kept.started().isPresent() ? "" : held(shop, step),
                kept.started().isPresent() ? "" : barred(shop, step),
                printed.says(),
                printed.bad(),
                state.head().seq());
    }

    private static String barred(ShopRecord shop, String step) {
        return shop.definitionWith(StartStep.project(step), StartStep.made(step))
                .flatMap(d -> FoundStep.find(d, step).flatMap(f -> ChangeGate.before(d, shop.state(), f)))
                .map(ChangeGate.Bar::sentence)
                .orElse("");
    }

    private static List<DeviationView> troubles(Sight sight, ShopRecord shop, String step) {
        DeviationViews views = new DeviationViews(sight, shop);
        return shop.state().trouble().ofMade(step.substring(0, step.indexOf('/', step.indexOf('/') + 1))).stream()
                .filter(d -> d.about().equals(step) || (!d.isOfStep() && d.isOpen()))
                .map(views::of)
                .toList();
    }

    private static String held(ShopRecord shop, String step) {
        return shop.definitionWith(StartStep.project(step), StartStep.made(step))
                .flatMap(d -> FoundStep.find(d, step).flatMap(f -> Held.by(d, shop.state(), f, shop.now())))
                .orElse("");
    }

    private static List<CardView.Asked> figures(Card card) {
        List<CardView.Asked> all = new ArrayList<>();
        List<Figure> figures = card.figures();
        for (int i = 0; i < figures.size(); i++) {
            all.add(new CardView.Asked(
                    figures.get(i).name(),
                    figures.get(i).value(),
                    "/why?of=card&step=" + Visit.encoded(card.step()) + "&n=" + i));
        }
        return all;
    }
}
