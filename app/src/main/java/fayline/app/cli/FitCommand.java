package fayline.app.cli;

import fayline.app.drawing.template.Template;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.Paper;
import fayline.app.pdf.fitcard.FitCardPdf;
import fayline.app.pdf.fitcard.FitCardWords;
import fayline.app.pdf.fitcard.FitTemplate;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.fit.LookAtFrames;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.card.fit.FitCard;
import fayline.flow.card.fit.FitCardMaker;
import fayline.flow.result.expand.Names;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.FitWay;
import fayline.method.fitup.aim.Aim;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fayline fit}: the card of a fit and the 1:1 template of its trim. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description = {
            "Prints the card of a fit and the 1:1 template of its trim, from a definition folder or from the record.",
            "Without --card and --template it only tells the move."
        })
final class FitCommand implements Callable<Integer> {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
    private final Surroundings surroundings;

    @Parameters(
            arity = "1..2",
            paramLabel = "DIR FIT",
            description = "the definition folder and the fit's id; the id alone takes the record")
    @SuppressWarnings("NullAway.Init")
    private List<String> places;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private DataPlace data;

    @Option(
            names = "--project",
            paramLabel = "ID",
            description = "which project of the record; needed where there are several")
    private @Nullable String project;

    @Option(names = "--card", paramLabel = "FILE", description = "the card, as PDF")
    private @Nullable Path card;

    @Option(
            names = "--template",
            paramLabel = "FILE",
            description = "the template; its ending says what it is: .pdf, .dxf or .svg")
    private @Nullable Path template;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "PAPER", description = "a4 or letter")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(
            names = "--assume",
            description = "take the usual values, shown as assumed, where nobody gave an uncertainty")
    private boolean assume;

    @Option(
            names = "--address",
            defaultValue = "http://127.0.0.1:7423/",
            paramLabel = "URL",
            description = "where the pages are served, for the code on the card")
    @SuppressWarnings("NullAway.Init")
    private String address;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            converter = Moment.Reader.class,
            description =
                    "with a folder: the moment, as 2026-03-02T07:30 in the shop's zone; else the project's clock, else the"
                            + " machine's")
    private @Nullable Moment now;

    FitCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        Paper sheet = Paper.of(paper)
                .orElseThrow(() -> new BadInputException("--paper: found \"" + paper + "\", expected a4 or letter"));
        Optional<FitTemplate.Kind> kind = kind();
        if (places.size() == 2) {
            Path folder = Path.of(places.get(0));
            return print(ReadFolder.read(folder, FolderAtMoment.now(folder, now), surroundings.clock()), sheet, kind);
        }
        if (now != null) {
            throw new BadInputException("--now: found no definition folder before the fit, expected one: the record has"
                    + " its own clock");
        }
        NeededFolder.isThere(data.folder());
        try (OpenShop shop = OpenShop.open(data.folder(), surroundings.clock(), Optional.empty())) {
            String chosen = chosen(shop.shop().state().projects());
            ShopView view = new LookAtShop(shop.shop())
                    .look(chosen)
                    .orElseThrow(() -> new BadInputException("found no project " + chosen));
            return print(view, sheet, kind);
        }
    }

    private String chosen(List<String> projects) {
        String chosen = project != null ? project : projects.size() == 1 ? projects.get(0) : "";
        if (!projects.contains(chosen)) {
            throw new BadInputException("found " + (chosen.isEmpty() ? "no --project" : "--project " + chosen)
                    + ", expected "
                    + (projects.isEmpty()
                            ? "a data folder that holds a project: import one first"
                            : "one of " + String.join(", ", projects)));
        }
        return chosen;
    }

    private Optional<FitTemplate.Kind> kind() {
        if (template == null) {
            return Optional.empty();
        }
        String name = String.valueOf(template.getFileName());
        return Optional.of(FitTemplate.Kind.of(name.substring(name.lastIndexOf('.') + 1))
                .orElseThrow(() -> new BadInputException(
                        "--template: found \"" + name + "\", expected a file that ends in .pdf, .dxf or .svg")));
    }

    private int print(ShopView view, Paper sheet, Optional<FitTemplate.Kind> kind) throws IOException {
        String id = places.get(places.size() - 1);
        FitResult fit = LookAtFits.of(view, id, assume)
                .map(FitSight::result)
                .orElseThrow(() -> new BadInputException("found fit \"" + id + "\", expected one of "
                        + String.join(
                                ", ",
                                view.definition().fits().stream()
                                        .map(f -> f.id())
                                        .toList())));
        UnitSystem units = view.definition().facts().units();
        String moment = MOMENT.format(view.now().atZone(view.zone()));
        byte[] drawn = kind.isPresent() ? template(view, fit, units, moment, kind.get(), sheet) : new byte[0];
        if (card != null) {
            Files.write(card, card(view, fit, units, moment, sheet));
            surroundings.out().println("Card in " + card);
        }
        if (template != null) {
            Files.write(template, drawn);
            surroundings.out().println("Template in " + template);
        }
        surroundings
                .out()
                .println(fit.advice()
                        .map(a -> a.sentence().in(units))
                        .filter(s -> !s.isEmpty())
                        .orElse("No move can be told yet."));
        fit.advice()
                .ifPresent(a -> a.ways().stream()
                        .filter(w ->
                                w.aimed().aim() != Aim.WORST && w.aimed().move().isPresent())
                        .forEach(w -> surroundings.out().println(other(w, units))));
        return ExitCode.DONE;
    }

    /** A move by another way to judge it, in a line. */
    private static String other(FitWay w, UnitSystem units) {
        int outside = w.aimed().move().orElseThrow().outside().size();
        return w.name() + ": " + w.sentence().in(units) + "; " + (outside == 0 ? "all inside" : outside + " outside");
    }

    private static byte[] template(
            ShopView view, FitResult fit, UnitSystem units, String moment, FitTemplate.Kind kind, Paper sheet) {
        Template drawn = FitTemplate.of(view.definition(), fit, units, moment)
                .orElseThrow(() -> new BadInputException("fit \"" + fit.fit().id()
                        + "\": found no outline, expected one: a template is drawn along it"));
        return FitTemplate.write(drawn, kind, sheet);
    }

    private byte[] card(ShopView view, FitResult fit, UnitSystem units, String moment, Paper sheet) {
        FrameSight frame = LookAtFrames.of(view, fit.fit().id()).orElseThrow();
        FitCard made =
                FitCardMaker.make(view.definition(), view.result(), view.plan(), fit, frame.widths(), frame.sprung());
        return FitCardPdf.print(
                new FitCardWords(new QuantityFormat(units), view.zone(), new Names(view.definition())::person)
                        .sheet(made, fit),
                new CardsPdf.Setting(address, moment, moment, sheet));
    }
}
