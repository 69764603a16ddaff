package fayline.app.usecase;

import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.flow.card.Card;
import fayline.flow.card.CardMaker;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.step.StepResult;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** A project that the importer's author never saw, read into a data folder of its own and looked at. */
final class UnseenProject {
    static final Path PROJECTS = Path.of("src", "test", "resources", "projects");
    private static final Clock MACHINE = Clock.fixed(Instant.parse("2031-05-05T05:05:05Z"), ZoneOffset.UTC);

    final Imported imported;
    final ShopView view;

    UnseenProject(Path definition, Path data) throws IOException {
        try (OpenShop shop = OpenShop.open(data, MACHINE, Optional.empty())) {
            imported = shop.read(definition, false);
            view = new LookAtShop(shop.shop()).look("").orElseThrow();
        }
    }

    static UnseenProject named(String name, Path temp) throws IOException {
        return new UnseenProject(PROJECTS.resolve(name), temp.resolve("data"));
    }

    StepResult step(String id) {
        return view.result().step(view.project() + "/" + id).orElseThrow();
    }

    PlannedStep planned(String id) {
        return view.plan().steps().stream()
                .filter(p -> p.step().equals(view.project() + "/" + id))
                .findFirst()
                .orElseThrow();
    }

    Card card(String id) {
        return CardMaker.make(view.definition(), view.result(), view.plan(), view.project() + "/" + id);
    }

    List<Card> cards() {
        return view.result().steps().stream()
                .map(s -> CardMaker.make(view.definition(), view.result(), view.plan(), s.id()))
                .toList();
    }

    /** How much of something a step draws, in SI. */
    double need(String step, String of) {
        return step(step).needs().stream()
                .filter(n -> n.of().equals(of))
                .map(Need::amount)
                .mapToDouble(a -> a.si())
                .sum();
    }

    /** What something costs at a step. */
    double cost(String step, String of) {
        return step(step).needs().stream()
                .filter(n -> n.of().equals(of))
                .mapToDouble(n -> n.cost().orElseThrow())
                .sum();
    }
}
