package fayline.app.pdf.chain;

import fayline.app.drawing.Drawing;
import java.util.List;

/**
 * What the sheet of a chain holds, in a reader's units.
 *
 * @param name the chain
 * @param path its address within the program
 * @param drawing the chain, drawn
 * @param verdict what the correction reaches; empty where there is none to make
 * @param moves what moves
 * @param sure the chance, a sentence each; empty where none is told
 * @param tables stations and marks on the bench, or remedies
 * @param cautions what must be minded
 */
public record ChainSheet(
        String name,
        String path,
        Drawing drawing,
        String verdict,
        List<Moved> moves,
        List<String> sure,
        List<Table> tables,
        List<String> cautions) {
    /** Copies the lists. */
    public ChainSheet {
        moves = List.copyOf(moves);
        sure = List.copyOf(sure);
        tables = List.copyOf(tables);
        cautions = List.copyOf(cautions);
    }

    /**
     * Something that moves.
     *
     * @param name what
     * @param move which way, how far, about which point
     * @param more the same on the bench, and the gaps that result, a sentence each
     */
    public record Moved(String name, String move, List<String> more) {
        /** Copies the list. */
        public Moved {
            more = List.copyOf(more);
        }
    }

    /**
     * A table.
     *
     * @param title what it holds
     * @param said what is said before it; empty for nothing
     * @param head its columns
     * @param rows its rows, each as long as the head
     */
    public record Table(String title, String said, List<String> head, List<List<String>> rows) {
        /** Copies the lists. */
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }
}
