package fayline.app.web;

import fayline.app.web.frame.Refusal;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Pages for what goes wrong, in plain words; they need nothing of the shop, so that they work when the shop does not. */
final class ErrorPages {
    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final List<String> HOME = List.of("Go back, or start from Today.");

    private ErrorPages() {}

    static void addTo(RoutesConfig routes) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
        routes.exception(Refusal.class, (e, ctx) -> show(engine, ctx, e.status(), e.sentence(), e.remedies()));
        routes.exception(HttpResponseException.class, (e, ctx) -> {
            int status = e.getStatus();
            show(engine, ctx, status, words(status), HOME);
        });
        routes.exception(Exception.class, (e, ctx) -> {
            LOG.error("{} {} failed", ctx.method(), ctx.path(), e);
            show(
                    engine,
                    ctx,
                    500,
                    "Fayline itself has failed here. Nothing that was acknowledged before is lost.",
                    List.of(
                            "Go back and try once more.",
                            "If it fails again, keep what the program printed in its window and report it."));
        });
    }

    private static String words(int status) {
        return switch (status) {
            case 404 -> "There is no such page here.";
            case 405 -> "This address does not take what was sent to it.";
            case 413 -> "What was sent is too long.";
            default -> "The request could not be read.";
        };
    }

    private static void show(TemplateEngine engine, Context ctx, int status, String sentence, List<String> remedies) {
        StringOutput out = new StringOutput();
        engine.render("error.jte", Map.of("status", status, "sentence", sentence, "remedies", remedies), out);
        ctx.status(status).contentType("text/html; charset=utf-8").result(out.toString());
    }
}
