package fayline.app.usecase.book;

import fayline.flow.plan.Work;
import fayline.flow.project.Definition;
import fayline.flow.record.TreeHead;
import fayline.flow.record.change.Change;
import fayline.flow.record.stock.Order;
import java.time.Instant;
import java.util.List;

/**
 * A book: what the record holds of something, up to an entry. The same entries give the same book.
 *
 * @param definition the definition that held then
 * @param work every step, for its name
 * @param scope what it is of
 * @param at when the last entry was taken
 * @param head the head of the record that it rests on
 * @param lastHash the hash of the last entry
 * @param chapters one for each part or joint
 * @param changes alterations of the design that its chapters have; in a book of everything all of them
 * @param orders in a book of everything, what was ordered from outside for none of them
 */
public record Book(
        Definition definition,
        Work work,
        BookScope scope,
        Instant at,
        TreeHead head,
        String lastHash,
        List<Chapter> chapters,
        List<Change> changes,
        List<Order> orders) {
    /** Copies the lists. */
    public Book {
        chapters = List.copyOf(chapters);
        changes = List.copyOf(changes);
        orders = List.copyOf(orders);
    }

    /** The chapters on which something was done or read. */
    public List<Chapter> begun() {
        return chapters.stream().filter(Chapter::begun).toList();
    }

    /** The chapters of which the record holds nothing yet. */
    public List<Chapter> toCome() {
        return chapters.stream().filter(c -> !c.begun()).toList();
    }
}
