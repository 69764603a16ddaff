package fayline.app.web.book;

import fayline.app.pdf.book.BookPdf;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.BookScope;
import fayline.app.usecase.book.MakeBook;
import fayline.app.usecase.book.PastRecord;
import fayline.app.usecase.journal.Sheets;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.Photos;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.record.StepRecord;
import io.javalin.config.RoutesConfig;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** The book of what was built: looked at as it stands, or printed so that the record says it was. */
public final class BookPage implements Page {
    private static final String HERE = "/book";
    private final Sights sights;
    private final ShopRecord shop;
    private final Sheets sheets;

    /**
     * Makes the page.
     *
     * @param sights shows pages
     * @param shop the record
     * @param sheets the sheets of its head
     */
    public BookPage(Sights sights, ShopRecord shop, Sheets sheets) {
        this.sights = sights;
        this.shop = shop;
        this.sheets = sheets;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> with(new Visit(ctx), this::show));
        routes.get(HERE + "/now.pdf", ctx -> with(new Visit(ctx), this::now));
        routes.get(HERE + "/sheet/{number}.pdf", ctx -> with(new Visit(ctx), this::printed));
        routes.post(HERE, ctx -> with(new Visit(ctx), this::print), Asks.to(Act.PRINT_SHEET));
    }

    private void with(Visit visit, BiConsumer<Visit, Sight> then) {
        sights.with(visit, sight -> then.accept(visit, sight));
    }

    private void show(Visit visit, Sight sight) {
        List<BookView.Printed> printed = new ArrayList<>();
        for (Sheets.Sheet s : sheets.all()) {
            s.book().filter(b -> b.project().equals(project(sight))).ifPresent(b -> printed.add(line(sight, s, b)));
        }
        Collections.reverse(printed);
        sights.show(
                visit, "book/book.jte", sights.frame(visit, sight, "Book", HERE), new BookView(groups(sight), printed));
    }

    private static String project(Sight sight) {
        return sight.definition().facts().id();
    }

    private static BookView.Printed line(Sight sight, Sheets.Sheet s, Sheets.PrintedBook b) {
        return new BookView.Printed(
                s.number(),
                name(sight, b.of()),
                s.head().head().paper(),
                sight.time().at(Instant.parse(s.head().at()))
                        + (s.by().isEmpty() ? "" : ", " + sight.personName(s.by())));
    }

    private static String name(Sight sight, String of) {
        return BookScope.of(sight.definition(), of).map(BookScope::name).orElse(of);
    }

    private static List<BookView.Group> groups(Sight sight) {
        List<BookView.Group> groups = new ArrayList<>();
        groups.add(new BookView.Group(book(sight, BookScope.whole(sight.definition())), List.of()));
        for (Assembly a : sight.definition().assemblies()) {
            BookScope.of(sight.definition(), a.id())
                    .ifPresent(scope -> groups.add(new BookView.Group(
                            book(sight, scope),
                            scope.covers(sight.definition()).stream()
                                    .filter(m -> m.in().equals(a.id()))
                                    .map(m -> book(sight, new BookScope(BookScope.Sort.MADE, m.id(), m.name())))
                                    .toList())));
        }
        return groups;
    }

    private static BookView.Line book(Sight sight, BookScope scope) {
        List<Made> made = scope.covers(sight.definition());
        long begun = made.stream().filter(m -> isBegun(sight, m)).count();
        String words = scope.sort() == BookScope.Sort.MADE
                ? (begun == 0 ? "not begun" : "")
                : begun + " of " + made.size() + " begun";
        return new BookView.Line(scope.id(), scope.name(), words);
    }

    private static boolean isBegun(Sight sight, Made made) {
        return sight.view().record().steps(project(sight)).values().stream()
                .filter(s -> s.step().startsWith(project(sight) + "/" + made.id() + "/"))
                .anyMatch(BookPage::isBegun);
    }

    private static boolean isBegun(StepRecord s) {
        return s.started().isPresent() || s.finished().isPresent();
    }

    private void now(Visit visit, Sight sight) {
        long head = shop.state().head().seq();
        if (head == 0) {
            throw Refusal.absent("record yet");
        }
        String of = visit.query("of");
        Book book = book(PastRecord.upTo(shop, head), project(sight), of);
        send(visit, book, of, book.head().seq() + "-" + book.lastHash(), "");
    }

    private static Book book(ShopRecord past, String project, String of) {
        return MakeBook.of(past, project, of).orElseThrow(() -> Refusal.absent("part, joint or assembly of that name"));
    }

    private void send(Visit visit, Book book, String of, String code, String kept) {
        Photos photos = new Photos(shop);
        byte[] pdf = BookPdf.print(book, photos::printed, new BookPdf.Setting(Printing.paper(visit), code, kept));
        visit.send(
                pdf,
                "application/pdf",
                "book-" + (of.isEmpty() ? book.definition().facts().id() : of) + ".pdf");
    }

    private void print(Visit visit, Sight sight) {
        String of = visit.field("of");
        if (BookScope.of(sight.definition(), of).isEmpty()) {
            throw Refusal.absent("part, joint or assembly of that name");
        }
        Outcome outcome = sheets.print(
                Sent.live(visit.once(), sight.sender(visit)), Optional.of(new Sheets.PrintedBook(project(sight), of)));
        if (!outcome.stands()) {
            throw Refusal.input(outcome.sentence());
        }
        visit.say("The book of " + name(sight, of) + " is printed, as entry " + outcome.seq()
                + ". Open it below, sign it and keep it elsewhere.");
        visit.lead(HERE + "#printed");
    }

    /** A book that was printed before: the same entries make the same book. */
    private void printed(Visit visit, Sight sight) {
        String number = visit.inPath("number");
        Sheets.Sheet s = (number.matches("[0-9]{1,9}")
                        ? sheets.sheet(Long.parseLong(number))
                        : Optional.<Sheets.Sheet>empty())
                .filter(found -> found.book().isPresent())
                .orElseThrow(() -> Refusal.absent("such printed book"));
        Sheets.PrintedBook b = s.book().orElseThrow();
        Book book = book(PastRecord.upTo(shop, s.head().head().seq()), b.project(), b.of());
        send(visit, book, b.of(), s.head().text(), String.valueOf(s.number()));
    }
}
