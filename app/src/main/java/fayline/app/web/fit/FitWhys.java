package fayline.app.web.fit;

import fayline.basis.finding.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says how a figure comes about: inputs with their origin, method, source. */
public final class FitWhys {
    private FitWhys() {}

    /** A figure in lines: how it comes about, its inputs with their origin, source, cautions. */
    public static FitView.Why figure(Figure f) {
        List<String> lines = new ArrayList<>();
        lines.add(f.value() + ": " + f.formula());
        f.inputs()
                .forEach(i -> lines.add(i.name() + ": " + i.value() + ", "
                        + i.origin().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        lines.add("Source: " + f.source());
        lines.addAll(f.cautions());
        return new FitView.Why(f.name(), lines);
    }
}
