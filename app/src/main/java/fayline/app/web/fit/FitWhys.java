package fayline.app.web.fit;

import fayline.app.usecase.fit.FitLines;
import fayline.app.web.frame.Visit;
import fayline.app.web.why.WhyView;
import fayline.basis.finding.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says how a figure comes about: inputs with their origin, method, source. */
public final class FitWhys {
    private FitWhys() {}

    /** What the definition says, with the line that says it. */
    public static WhyView.Input written(String name, String value, FitLines.Line line) {
        return new WhyView.Input(
                name,
                value,
                "entered: " + line.path() + ", line " + line.line(),
                false,
                "/definition/file?path=" + Visit.encoded(line.path()) + "#line-" + line.line());
    }

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
