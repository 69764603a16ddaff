package fayline.app.usecase.view;

import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.record.MemoryLog;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/** Looks at a bare definition folder with its history, as if it had just been read in; writes nothing. */
public final class ReadFolder {
    private ReadFolder() {}

    /**
     * Looks.
     *
     * @param folder the folder
     * @param now the moment asked for; empty to take the project's own clock, else the machine's
     * @param machine the machine's clock
     * @throws IOException if the folder cannot be read
     * @throws UnreadableDefinitionException with every problem, if the definition or its history cannot be read
     */
    public static ShopView read(Path folder, Optional<Instant> now, Clock machine) throws IOException {
        return open(folder, now, machine).look("").orElseThrow();
    }

    /**
     * Reads, to look more than once.
     *
     * @param folder the folder
     * @param now the moment asked for; empty to take the project's own clock, else the machine's
     * @param machine the machine's clock
     * @throws IOException if the folder cannot be read
     * @throws UnreadableDefinitionException with every problem, if the definition or its history cannot be read
     */
    public static LookAtShop open(Path folder, Optional<Instant> now, Clock machine) throws IOException {
        return open(folder, now, machine, new SerialPlanner());
    }

    /**
     * The same with a planner.
     *
     * @param planner who makes the plans
     */
    public static LookAtShop open(Path folder, Optional<Instant> now, Clock machine, PlanSolver planner)
            throws IOException {
        DefinitionFolder files = DefinitionFolder.from(folder);
        Optional<Definition> definition = DefinitionReader.read(files).definition();
        Instant moment =
                now.or(() -> definition.flatMap(d -> d.facts().clock())).orElseGet(machine::instant);
        ShopRecord shop = new ShopRecord(new MemoryLog(), Clock.fixed(moment, ZoneOffset.UTC));
        Imported imported = new ImportFolder(shop).of(files, ImportFolder.photosOf(folder), false);
        if (!imported.taken()) {
            throw new UnreadableDefinitionException("The folder " + folder, imported.problems());
        }
        return new LookAtShop(shop, planner);
    }
}
