package fayline.flow.result.expand;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the name that people use for an id, whatever the id is of. */
public final class Names {
    private final Definition definition;

    /** Names of a definition. */
    public Names(Definition definition) {
        this.definition = definition;
    }

    /** The name of a material, system, mould, stand, port, part or joint; the id itself where there is none. */
    public String of(String id) {
        return definition
                .materials()
                .find(id)
                .map(m -> m.name())
                .or(() -> definition.systems().find(id).map(s -> s.name()))
                .or(() -> definition.shop().stands().find(id).map(s -> s.name()))
                .or(() -> definition.shop().moulds().find(id).map(m -> m.name()))
                .or(() -> definition.shop().ports().find(id).map(p -> p.name()))
                .or(() -> made(id).map(Made::name))
                .orElse(id);
    }

    /** The name of a person; the id itself where there is none. */
    public String person(String id) {
        return definition.shop().people().find(id).map(p -> p.name()).orElse(id);
    }

    /** The part or joint with an id. */
    public Optional<Made> made(String id) {
        Optional<Made> part = definition.parts().find(id).map(p -> p);
        return part.isPresent() ? part : definition.joints().find(id).map(j -> j);
    }

    /** Parts, then joints, in the order of the definition. */
    public List<Made> allMade() {
        List<Made> all = new ArrayList<>(definition.parts().items());
        all.addAll(definition.joints().items());
        return all;
    }
}
