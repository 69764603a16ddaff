package fayline.app.usecase.book;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a book is of.
 *
 * @param sort the whole aircraft, an assembly, or one part or joint
 * @param id its id; empty for the whole
 * @param name what people call it
 */
public record BookScope(Sort sort, String id, String name) {
    /** An assembly below itself cannot be: no tree is as deep as this. */
    private static final int DEEPEST = 20;

    /** Sorts of books. */
    public enum Sort {
        /** Everything of the project. */
        WHOLE("the aircraft"),
        /** An assembly with all below it. */
        ASSEMBLY("assembly"),
        /** One part or joint. */
        MADE("part or joint");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        /** It in words. */
        public String words() {
            return words;
        }
    }

    /** A book of everything. */
    public static BookScope whole(Definition d) {
        return new BookScope(Sort.WHOLE, "", (d.facts().name() + " " + d.facts().serial()).strip());
    }

    /** What an id names: a part or joint, else an assembly; everything where it is empty. */
    public static Optional<BookScope> of(Definition d, String id) {
        if (id.isEmpty()) {
            return Optional.of(whole(d));
        }
        return made(d, id)
                .map(m -> new BookScope(Sort.MADE, id, m.name()))
                .or(() -> d.assemblies().find(id).map(a -> new BookScope(Sort.ASSEMBLY, id, a.name())));
    }

    /** A part or joint. */
    static Optional<Made> made(Definition d, String id) {
        Optional<Made> part = d.parts().find(id).map(p -> p);
        return part.isPresent() ? part : d.joints().find(id).map(j -> j);
    }

    /** What it covers: parts and joints, assembly by assembly, what stands in no assembly last. */
    public List<Made> covers(Definition d) {
        if (sort == Sort.MADE) {
            return made(d, id).stream().toList();
        }
        List<Made> all = new ArrayList<>();
        if (sort == Sort.ASSEMBLY) {
            below(d, id, 0, all);
            return all;
        }
        d.assemblies().stream()
                .filter(a -> a.in().flatMap(d.assemblies()::find).isEmpty())
                .forEach(a -> below(d, a.id(), 0, all));
        inAny(d).filter(m -> !all.contains(m)).forEach(all::add);
        return all;
    }

    private static void below(Definition d, String assembly, int depth, List<Made> all) {
        inAny(d).filter(m -> m.in().equals(assembly) && !all.contains(m)).forEach(all::add);
        if (depth < DEEPEST) {
            d.assemblies().stream()
                    .filter(a -> a.in().filter(assembly::equals).isPresent())
                    .forEach(a -> below(d, a.id(), depth + 1, all));
        }
    }

    private static Stream<Made> inAny(Definition d) {
        return Stream.concat(d.parts().stream(), d.joints().stream());
    }

    /** The assemblies above something made, the outermost first. */
    static List<String> above(Definition d, Made made) {
        List<String> names = new ArrayList<>();
        Optional<Assembly> at = d.assemblies().find(made.in());
        while (at.isPresent() && names.size() < DEEPEST) {
            names.add(0, at.get().name());
            at = at.get().in().flatMap(d.assemblies()::find);
        }
        return names;
    }
}
