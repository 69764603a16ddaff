package fayline.app.web.frame;

import fayline.app.usecase.people.Actor;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.app.usecase.view.Latest;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.basis.finding.InputProblem;
import fayline.flow.project.shop.Person;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Looks at the shop for a screen and shows pages to it. */
public final class Sights {
    private final LookAtShop looking;
    private final ShopRecord shop;
    private final Door door;
    private final String version;
    private final Templates templates = new Templates();

    /**
     * Makes it.
     *
     * @param looking looks at the shop
     * @param shop the shop's record, for its clock
     * @param door the door, for the session's token
     * @param version the program's version
     */
    public Sights(LookAtShop looking, ShopRecord shop, Door door, String version) {
        this.looking = looking;
        this.shop = shop;
        this.door = door;
        this.version = version;
    }

    /** Looks for a screen; where there is no project yet, a page says how to bring one. */
    public void with(Visit visit, Consumer<Sight> then) {
        Optional<Sight> sight = look(visit);
        if (sight.isPresent()) {
            then.accept(sight.get());
        } else {
            show(visit, "empty.jte", bare(visit, "No project yet", "/"), "");
        }
    }

    /** Looks for a screen. */
    public Optional<Sight> look(Visit visit) {
        String project = visit.project();
        Optional<Sight> asked = look(visit, project);
        return asked.isEmpty() && !project.isEmpty() ? look(visit, "") : asked;
    }

    /** Looks at one project for a screen; empty where the shop has no such project. */
    public Optional<Sight> look(Visit visit, String project) {
        // before anything else is looked at: what comes meanwhile is news to the page
        Latest latest = looking.latest();
        try {
            Optional<ShopView> view = looking.look(project);
            return view.map(v -> new Sight(
                    v, latest, visit.format(v.definition().facts().units()), new TimeWords(v.zone(), shop.minute())));
        } catch (UnreadableDefinitionException e) {
            throw new Refusal(
                    409,
                    String.valueOf(e.getMessage()),
                    e.problems().stream().map(InputProblem::sentence).toList());
        }
    }

    /** What stands around a page. */
    public Frame frame(Visit visit, Sight sight, String title, String here) {
        String person = visit.person();
        var facts = sight.definition().facts();
        List<Frame.Choice> people = sight.definition().shop().people().stream()
                .map(p -> new Frame.Choice(p.id(), p.name(), p.id().equals(person)))
                .toList();
        return new Frame(
                title,
                here,
                sight.definition().shop().name(),
                facts.name() + (facts.serial().isEmpty() ? "" : " " + facts.serial()),
                sight.view().projects().stream()
                        .map(p -> new Frame.Choice(
                                p.id(), (p.name() + " " + p.serial()).strip(), p.id().equals(facts.id())))
                        .toList(),
                visit.actor()
                        .map(Actor::name)
                        .or(() ->
                                sight.definition().shop().people().find(person).map(Person::name))
                        .orElse(""),
                people,
                facts.demo(),
                shop.now().toString(),
                sight.time().full(),
                door.token(visit),
                UUID.randomUUID().toString(),
                visit.theme(),
                visit.density(),
                visit.format(facts.units()).system() == fayline.basis.units.UnitSystem.INCH,
                visit.path(),
                visit.said(),
                visit.draftDone(),
                version,
                Following.of(visit, sight.latest()),
                visit.actor());
    }

    /** What stands around a page while there is no project. */
    public Frame bare(Visit visit, String title, String here) {
        return new Frame(
                title,
                here,
                "",
                "",
                List.of(),
                visit.actor().map(Actor::name).orElse(""),
                List.of(),
                false,
                "",
                "",
                door.token(visit),
                UUID.randomUUID().toString(),
                visit.theme(),
                visit.density(),
                false,
                visit.path(),
                visit.said(),
                visit.draftDone(),
                version,
                Following.of(visit, looking.latest()),
                visit.actor());
    }

    /** The frame of a page that needs no project, in the shop's usual one where there is any. */
    public Frame anyFrame(Visit visit, String title, String here) {
        return look(visit).map(s -> frame(visit, s, title, here)).orElseGet(() -> bare(visit, title, here));
    }

    /** Whether who asked is still known, to be asked again and again by answers that go on and on. */
    public BooleanSupplier stays(Visit visit) {
        return door.stays(visit);
    }

    /** Shows a page. */
    public void show(Visit visit, String template, Frame frame, Object view) {
        visit.show(templates.page(template, frame, view));
    }
}
