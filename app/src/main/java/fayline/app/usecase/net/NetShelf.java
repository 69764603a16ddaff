package fayline.app.usecase.net;

import fayline.flow.plan.net.Net;
import fayline.store.file.net.NetSets;
import fayline.store.file.net.NetSets.Known;
import fayline.store.file.net.UnreadableNetException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A folder with a sub-folder of nets per set and a table of what is known of them. */
public final class NetShelf {
    private NetShelf() {}

    /**
     * One net of a set.
     *
     * @param set the set
     * @param instance the file's name without its ending
     * @param net the net
     * @param best what is known of its shortest makespan; empty where nothing is
     */
    public record Item(String set, String instance, Net net, Optional<Best> best) {}

    /**
     * What others found.
     *
     * @param lower no schedule is shorter
     * @param upper the shortest schedule known
     * @param infeasible whether there is no schedule; then the bounds mean nothing
     */
    public record Best(int lower, int upper, boolean infeasible) {}

    /** Whether a folder is one of nets. */
    public static boolean isAt(Path folder) {
        return NetSets.isAt(folder);
    }

    /**
     * Reads all of it before anything is scheduled, so that a mistake shows at once.
     *
     * @throws UnreadableNetsException if the table or a net cannot be read
     */
    public static List<Item> read(Path folder) {
        try {
            return NetSets.list(folder).stream().map(NetShelf::item).toList();
        } catch (UnreadableNetException e) {
            throw new UnreadableNetsException(String.valueOf(e.getMessage()), e);
        } catch (IOException e) {
            throw new UnreadableNetsException(folder + ": cannot be read: " + e.getMessage(), e);
        }
    }

    private static Item item(NetSets.Entry e) {
        try {
            return new Item(
                    e.set(), e.instance(), NetSets.read(e.file()), e.known().map(NetShelf::best));
        } catch (IOException x) {
            throw new UnreadableNetsException(e.file() + ": cannot be read: " + x.getMessage(), x);
        }
    }

    private static Best best(Known k) {
        return new Best(k.lower(), k.upper(), k.infeasible());
    }
}
