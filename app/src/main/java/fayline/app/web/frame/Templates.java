package fayline.app.web.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.Map;

/** The pages' templates, compiled at build time. */
public final class Templates {
    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /**
     * Renders a page.
     *
     * @param template its file, as {@code today.jte}
     * @param frame what stands around it
     * @param view what it shows
     */
    public String page(String template, Frame frame, Object view) {
        Map<String, Object> model = new HashMap<>();
        model.put("frame", frame);
        model.put("view", view);
        StringOutput out = new StringOutput(16_384);
        engine.render(template, model, out);
        return out.toString();
    }
}
