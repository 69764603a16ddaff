package fayline.app.usecase.calc;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects by what methods an answer was reckoned, from what sources, and what limits it; each thing once, in order. */
final class Trace {
    private final Set<String> methods = new LinkedHashSet<>();
    private final Set<String> sources = new LinkedHashSet<>();
    private final Set<String> cautions = new LinkedHashSet<>();

    void method(String method, String source) {
        methods.add(method);
        sources.add(source);
    }

    void caution(String sentence) {
        cautions.add(sentence);
    }

    void addAll(Trace other) {
        methods.addAll(other.methods);
        sources.addAll(other.sources);
        cautions.addAll(other.cautions);
    }

    List<String> methods() {
        return List.copyOf(methods);
    }

    List<String> sources() {
        return List.copyOf(sources);
    }

    List<String> cautions() {
        return List.copyOf(cautions);
    }
}
