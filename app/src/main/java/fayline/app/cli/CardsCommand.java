package fayline.app.cli;

import fayline.app.pdf.CardSheet;
import fayline.app.pdf.CardWords;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.DayCards;
import fayline.app.pdf.Paper;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.QuantityFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code fayline cards}: the cards of a day as PDF. */
@Command(
        name = "cards",
        mixinStandardHelpOptions = true,
        description = "Prints the cards of a day to a PDF, ordered by person and time.")
final class CardsCommand implements Callable<Integer> {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);
    private final Surroundings surroundings;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private FolderAtMoment place;

    @Option(names = "--day", required = true, paramLabel = "DATE", description = "the day, as 2026-03-02")
    @SuppressWarnings("NullAway.Init")
    private String day;

    @Option(names = "--pdf", required = true, paramLabel = "FILE", description = "the file to write")
    @SuppressWarnings("NullAway.Init")
    private Path pdf;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "PAPER", description = "a4 or letter")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    @Option(
            names = "--address",
            defaultValue = "http://127.0.0.1:7423/",
            paramLabel = "URL",
            description = "where the pages are served, for the code on each card")
    @SuppressWarnings("NullAway.Init")
    private String address;

    CardsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        LocalDate date = date();
        Paper sheet = Paper.of(paper)
                .orElseThrow(() -> new BadInputException("--paper: found \"" + paper + "\", expected a4 or letter"));
        ShopView view = place.look(surroundings);
        CardWords words = CardWords.of(
                view.definition(),
                view.result(),
                new QuantityFormat(view.definition().facts().units()));
        List<CardSheet> cards = DayCards.of(view.definition(), view.result(), view.plan(), view.zone(), date).stream()
                .map(words::sheet)
                .toList();
        Files.write(
                pdf,
                CardsPdf.print(
                        cards,
                        new CardsPdf.Setting(
                                address, MOMENT.format(view.now().atZone(view.zone())), DAY.format(date), sheet)));
        surroundings.out().println(cards.size() + (cards.size() == 1 ? " card" : " cards") + " in " + pdf);
        return ExitCode.DONE;
    }

    private LocalDate date() {
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException e) {
            throw new BadInputException("--day: found \"" + day + "\", expected a day such as 2026-03-02");
        }
    }
}
