package fayline.app.web.shop;

import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Meanwhile;
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
import fayline.basis.finding.InputProblem;
import fayline.flow.record.KeptFile;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The definition's files: a list, and each as text that is checked before it is kept. */
public final class DefinitionPage implements Page {
    private static final Pattern PATH =
            Pattern.compile("(?:[A-Za-z0-9][A-Za-z0-9._-]*/){0,3}[A-Za-z0-9][A-Za-z0-9._-]*");
    private static final String DRAFT = "definition-file-";
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public DefinitionPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/definition", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "definition.jte",
                            sights.frame(visit, sight, "Definition", "/definition"),
                            list(sight)));
        });
        routes.get("/definition/file", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                String path = path(visit.query("path"));
                Optional<KeptFile> file = file(sight, path);
                show(
                        visit,
                        sight,
                        new DefinitionView.File(
                                path,
                                file.isEmpty(),
                                file.map(KeptFile::content).orElse(""),
                                file.map(KeptFile::sha256).orElse(""),
                                "",
                                List.of(),
                                List.of()));
            });
        });
        routes.post(
                "/definition/file",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> save(visit, sight));
                },
                Asks.to(Act.CHANGE_DEFINITION));
    }

    private DefinitionView list(Sight sight) {
        List<DefinitionView.Listed> ofShop = new ArrayList<>();
        List<DefinitionView.Listed> ofProject = new ArrayList<>();
        var record = sight.view().record();
        record.files(sight.view().project()).forEach((path, file) -> {
            DefinitionView.Listed listed = new DefinitionView.Listed(
                    path,
                    file.binary() ? "" : link(path, 0),
                    (int) file.content().lines().count(),
                    file.seq());
            (record.shopFiles().containsKey(path) ? ofShop : ofProject).add(listed);
        });
        return new DefinitionView(
                sight.definition()
                        .hash()
                        .substring(0, Math.min(12, sight.definition().hash().length())),
                sight.definition().facts().revision(),
                ofShop,
                ofProject,
                sight.view().problems().stream().map(DefinitionPage::problem).toList());
    }

    private static DefinitionView.Problem problem(InputProblem p) {
        String place = p.file() + (p.line() > 0 ? ", line " + p.line() : "");
        String sentence = (p.key().isEmpty() ? "" : p.key() + ": ") + "found " + p.found() + ", expected "
                + p.expected() + (p.suggestion().isEmpty() ? "." : "; " + p.suggestion() + ".");
        return new DefinitionView.Problem(place, p.file().isEmpty() ? "" : link(p.file(), p.line()), sentence);
    }

    private static String link(String path, int line) {
        return "/definition/file?path=" + Visit.encoded(path) + (line > 0 ? "#line-" + line : "");
    }

    private void save(Visit visit, Sight sight) {
        String path = path(visit.field("path"));
        String by = sight.sender(visit);
        String text = visit.text("text");
        Sent sent = Sent.live(visit.once(), by);
        String project = sight.view().project();
        Outcome outcome = visit.field("how").equals("remove")
                ? new SaveFile(shop).remove(sent, project, path, visit.field("based-on"))
                : new SaveFile(shop).save(sent, project, path, text, visit.field("based-on"));
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.say(path + ": " + Answers.said(outcome), DRAFT + path);
            visit.lead("/definition");
            return;
        }
        boolean overtaken = !outcome.meanwhile().isEmpty();
        Optional<KeptFile> now = file(sight, path);
        visit.status(overtaken ? 409 : 422);
        // whoever has been told what others changed decides by saving once more
        show(
                visit,
                sight,
                new DefinitionView.File(
                        path,
                        now.isEmpty(),
                        text,
                        overtaken ? now.map(KeptFile::sha256).orElse("") : visit.field("based-on"),
                        overtaken
                                ? path
                                        + " was changed since you opened it. Your text below is not saved. Take over what you"
                                        + " want of the other, then save: your text then stands in its place."
                                : outcome.sentence(),
                        outcome.problems().stream().map(DefinitionPage::problem).toList(),
                        outcome.meanwhile().stream().map(m -> changed(sight, m)).toList()));
    }

    private static DefinitionView.Changed changed(Sight sight, Meanwhile m) {
        return new DefinitionView.Changed(m.what() + " " + Overtaken.who(sight, m), m.seen(), m.now());
    }

    private void show(Visit visit, Sight sight, DefinitionView.File file) {
        sights.show(visit, "definition-file.jte", sights.frame(visit, sight, file.path(), "/definition"), file);
    }

    private static Optional<KeptFile> file(Sight sight, String path) {
        Optional<KeptFile> file = Optional.ofNullable(
                sight.view().record().files(sight.view().project()).get(path));
        if (file.filter(KeptFile::binary).isPresent()) {
            throw new Refusal(
                    422,
                    path + " is no text.",
                    List.of("It is kept and exported as it is; replace it by importing again."));
        }
        return file;
    }

    private static String path(String asked) {
        if (!PATH.matcher(asked).matches() || asked.length() > 200) {
            throw Refusal.input("\"" + asked + "\" is no path of a definition. Expected one such as parts/wing.yaml.");
        }
        return asked;
    }
}
