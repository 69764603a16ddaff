package fayline.app.usecase.open;

import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.SignedHead;
import fayline.flow.record.TreeHead;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionReader;
import fayline.store.file.trust.HeadKey;
import fayline.store.sql.DataFolder;
import fayline.store.sql.FolderInUseException;
import fayline.store.sql.PeopleTables;
import fayline.store.sql.StoreException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Opens a shop's data folder, which is made on first use. The shop's clock is the machine's, unless a moment is asked for or a
 * project is a demonstration with a clock of its own: then it begins there, or at the last entry if that is later, and runs
 * on.
 */
public final class OpenShop implements AutoCloseable {
    private final DataFolder folder;
    private final Clock machine;
    private final Optional<Instant> asked;
    private ShopRecord shop;

    private OpenShop(DataFolder folder, Clock machine, Optional<Instant> asked) {
        this.folder = folder;
        this.machine = machine;
        this.asked = asked;
        this.shop = new ShopRecord(folder.log(), folder.files(), machine);
        this.shop = new ShopRecord(folder.log(), folder.files(), clock(demoClock(shop.definitions())));
    }

    /**
     * Opens a folder.
     *
     * @param data the data folder
     * @param machine the machine's clock
     * @param now the moment at which the shop's clock shall begin; empty for the usual one
     * @throws CannotOpenException if it is in use or out of reach
     */
    public static OpenShop open(Path data, Clock machine, Optional<Instant> now) {
        try {
            DataFolder folder = DataFolder.open(data);
            try {
                return new OpenShop(folder, machine, now);
            } catch (RuntimeException e) {
                folder.close();
                throw e;
            }
        } catch (FolderInUseException e) {
            throw CannotOpenException.of(e);
        } catch (StoreException e) {
            throw CannotOpenException.of(e);
        }
    }

    /**
     * Opens a folder and reads a definition in where the folder holds no project yet: how the demonstration starts.
     *
     * @param data the data folder
     * @param definition the definition folder
     * @param machine the machine's clock
     * @param now the moment at which the shop's clock shall begin; empty for the usual one
     * @throws IOException if the definition folder cannot be read
     * @throws UnreadableDefinitionException if the definition is not one
     * @throws CannotOpenException if the data folder is in use or out of reach
     */
    public static OpenShop openWith(Path data, Path definition, Clock machine, Optional<Instant> now)
            throws IOException {
        OpenShop opened = open(data, machine, now);
        try {
            if (opened.shop().state().projects().isEmpty()) {
                Imported imported = opened.read(definition, false);
                if (!imported.taken()) {
                    throw new UnreadableDefinitionException("The folder " + definition, imported.problems());
                }
            }
            return opened;
        } catch (IOException | RuntimeException e) {
            opened.close();
            throw e;
        }
    }

    /**
     * Reads a definition folder in, on its own clock where it is a demonstration.
     *
     * @param definition the folder
     * @param takeShop whether files of the shop that differ are taken from it
     * @throws IOException if it cannot be read
     */
    public Imported read(Path definition, boolean takeShop) throws IOException {
        DefinitionFolder files = DefinitionFolder.from(definition);
        if (shop.state().projects().isEmpty()) {
            shop = shop.at(clock(
                    demoClock(DefinitionReader.read(files).definition().stream().toList())));
        }
        return new ImportFolder(shop).of(files, ImportFolder.photosOf(definition), takeShop);
    }

    private static Optional<Instant> demoClock(List<Definition> definitions) {
        return definitions.stream()
                .filter(d -> d.facts().demo())
                .flatMap(d -> d.facts().clock().stream())
                .findFirst();
    }

    private Clock clock(Optional<Instant> demo) {
        Optional<Instant> last = folder.log().read(1).stream().map(Entry::taken).max(Comparator.naturalOrder());
        Optional<Instant> begin =
                asked.or(() -> demo.map(d -> last.filter(l -> l.isAfter(d)).orElse(d)));
        return begin.map(b -> Clock.offset(machine, Duration.between(machine.instant(), b)))
                .orElse(machine);
    }

    /** The shop's record, at the shop's clock. */
    public ShopRecord shop() {
        return shop;
    }

    /** Who may enter from the shop's network, as it is kept beside the record. */
    public PeopleTables people() {
        return folder.people();
    }

    /**
     * Signs a head of the record with the key of this data folder, which is made on first use.
     *
     * @throws fayline.store.file.trust.UnusableCertificateException if the key cannot be read or written
     */
    public SignedHead sign(TreeHead head, Instant at) {
        HeadKey key = HeadKey.of(folder.path());
        return SignedHead.sign(head, at, key.open(), key.secret());
    }

    /** The data folder. */
    public Path path() {
        return folder.path();
    }

    @Override
    public void close() {
        folder.close();
    }
}
