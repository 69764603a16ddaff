package fayline.app.web;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Serves the demo for looking at it while working on pages. */
final class DemoSite {
    private DemoSite() {}

    public static void main(String[] args) throws Exception {
        OpenShop open = OpenShop.openWith(Path.of(args[0]), Path.of(args[1]), Clock.systemUTC(), Optional.empty());
        WebServer server = WebServer.start(
                Integer.parseInt(args[2]),
                new Site(
                        open.shop(),
                        new LookAtShop(open.shop()),
                        new LeastFinish((work, plan) -> Optional.empty()),
                        "0.1.0"));
        System.err.println(server.address());
        Thread.currentThread().join();
    }
}
