package fayline.app.web;

import fayline.app.usecase.better.ImprovePlan;
import fayline.app.usecase.forecast.Trials;
import fayline.app.usecase.journal.RecordTree;
import fayline.app.usecase.journal.Sheets;
import fayline.app.usecase.people.People;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.Photos;
import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhyHere;
import fayline.app.web.better.BetterPage;
import fayline.app.web.book.BookPage;
import fayline.app.web.card.CardPage;
import fayline.app.web.card.PaperPage;
import fayline.app.web.card.PhotoPage;
import fayline.app.web.chain.ChainPage;
import fayline.app.web.change.ChangesPage;
import fayline.app.web.costs.CostsPage;
import fayline.app.web.coupon.CouponPage;
import fayline.app.web.design.AirframePage;
import fayline.app.web.design.HeatPage;
import fayline.app.web.design.MadePage;
import fayline.app.web.design.RecipesPage;
import fayline.app.web.fit.FitAttachPage;
import fayline.app.web.fit.FitBeginPage;
import fayline.app.web.fit.FitMendPage;
import fayline.app.web.fit.FitPage;
import fayline.app.web.fit.FitReadPage;
import fayline.app.web.fit.FitTemplatePage;
import fayline.app.web.fit.FitsPage;
import fayline.app.web.fitcard.FitCardPage;
import fayline.app.web.fitcard.FitFramePage;
import fayline.app.web.fitcard.FrameWhyPage;
import fayline.app.web.fitwhy.FitWhyPage;
import fayline.app.web.forecast.ForecastPage;
import fayline.app.web.forecast.RatesPage;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.ScreenPage;
import fayline.app.web.frame.Sights;
import fayline.app.web.hours.HoursPage;
import fayline.app.web.inspect.InspectPage;
import fayline.app.web.journal.RecordPage;
import fayline.app.web.kept.KeptPage;
import fayline.app.web.kept.WorkerPage;
import fayline.app.web.laminate.LaminatePage;
import fayline.app.web.live.LivePage;
import fayline.app.web.lots.CountPage;
import fayline.app.web.lots.LabelPage;
import fayline.app.web.lots.LotPage;
import fayline.app.web.lots.ReceivePage;
import fayline.app.web.lots.TablePage;
import fayline.app.web.orders.OrdersPage;
import fayline.app.web.people.MePage;
import fayline.app.web.people.PeoplePage;
import fayline.app.web.people.SignInPage;
import fayline.app.web.people.Trust;
import fayline.app.web.people.TrustPage;
import fayline.app.web.plan.CalendarPage;
import fayline.app.web.plan.TodayPage;
import fayline.app.web.plan.WeeksPage;
import fayline.app.web.series.SeriesPage;
import fayline.app.web.shop.DefinitionPage;
import fayline.app.web.shop.ShopPage;
import fayline.app.web.stores.StoresPage;
import fayline.app.web.traveller.TravelledPage;
import fayline.app.web.trouble.DeviationsPage;
import fayline.app.web.week.WeekPage;
import fayline.app.web.whatif.ColdPage;
import fayline.app.web.whatif.WhatIfPage;
import fayline.app.web.why.WhyPage;
import fayline.app.web.wish.WishStepPage;
import fayline.app.web.wish.WishesPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All pages of one shop, put together in plain sight. */
public final class Site implements WebServer.Pages {
    private final ShopRecord shop;
    private final LookAtShop looking;
    private final LeastFinish least;
    private final Sheets.Signer signer;
    private final Trials trials = new Trials();
    private final WhatIf whatIf;
    private final WhyHere why = new WhyHere();
    private final String version;
    private final Optional<Entrance> entrance;
    private final RecordTree tree;

    /**
     * What is added where people sign in.
     *
     * @param people who may enter
     * @param trust what a phone needs to trust the server
     * @param home the name or address that others are told
     */
    public record Entrance(People people, Trust trust, String home) {}

    /**
     * Makes the site.
     *
     * @param shop the shop's record
     * @param looking looks at it
     * @param least says what no plan can beat
     * @param signer signs heads of the record
     * @param version the program's version, for the foot of the pages
     */
    public Site(ShopRecord shop, LookAtShop looking, LeastFinish least, Sheets.Signer signer, String version) {
        this(shop, looking, least, signer, version, Optional.empty());
    }

    /**
     * Makes the site for the shop's network.
     *
     * @param shop the shop's record, judged by who may
     * @param looking looks at it
     * @param least says what no plan can beat
     * @param signer signs heads of the record
     * @param version the program's version, for the foot of the pages
     * @param entrance what is added where people sign in
     */
    public Site(
            ShopRecord shop,
            LookAtShop looking,
            LeastFinish least,
            Sheets.Signer signer,
            String version,
            Optional<Entrance> entrance) {
        this.signer = signer;
        this.entrance = entrance;
        this.shop = shop;
        this.tree = new RecordTree(shop);
        this.looking = looking;
        this.least = least;
        this.whatIf = new WhatIf(shop);
        this.version = version;
    }

    @Override
    public List<Page> behind(Door door) {
        Sights sights = new Sights(looking, shop, door, version);
        InspectPage inspections = new InspectPage(sights, shop);
        List<Page> pages = new ArrayList<>(ofTheShop(sights, door, inspections));
        pages.addAll(recordPages(sights, inspections));
        entrance.ifPresent(e -> pages.addAll(atTheDoor(sights, door, e)));
        return pages;
    }

    private List<Page> atTheDoor(Sights sights, Door door, Entrance e) {
        return List.of(
                new SignInPage(e.people(), door),
                new TrustPage(e.trust(), e.people(), door),
                new MePage(sights, shop, e.people()),
                new PeoplePage(
                        sights,
                        shop,
                        e.people(),
                        () -> "https://" + e.home() + ":" + door.reach().port().getAsInt() + "/"));
    }

    private List<Page> recordPages(Sights sights, InspectPage inspections) {
        Sheets sheets = new Sheets(shop, tree, signer);
        return List.of(
                new RecordPage(sights, shop, tree, sheets),
                new BookPage(sights, shop, sheets),
                new HoursPage(sights),
                new SeriesPage(sights),
                inspections,
                new WeekPage(sights, shop),
                new CouponPage(sights, shop),
                new LaminatePage(sights));
    }

    private List<Page> ofTheShop(Sights sights, Door door, InspectPage inspections) {
        CardPage cards = new CardPage(sights, shop, why);
        FitReadPage reading = new FitReadPage(sights, shop);
        LotPage lots = new LotPage(sights, shop);
        ReceivePage receiving = new ReceivePage(sights, shop);
        CountPage counting = new CountPage(sights, shop);
        return List.of(
                new TodayPage(sights),
                new WeeksPage(sights, least, why),
                new CalendarPage(sights),
                new BetterPage(sights, shop, looking, least.improver().map(i -> new ImprovePlan(looking, i, least))),
                new ForecastPage(sights, trials),
                new RatesPage(sights),
                new WhatIfPage(sights, whatIf),
                new ColdPage(sights, whatIf),
                new WishesPage(sights, shop, whatIf),
                new WishStepPage(sights, shop, whatIf),
                new DeviationsPage(sights, shop),
                new ChangesPage(sights, shop),
                new TravelledPage(sights, shop),
                new AirframePage(sights),
                new MadePage(sights),
                new HeatPage(sights),
                new FitsPage(sights),
                new FitBeginPage(sights, shop),
                new FitPage(sights),
                new FitTemplatePage(sights),
                new FitAttachPage(sights, shop),
                new FitWhyPage(sights),
                reading,
                new FitMendPage(sights, shop),
                new FitCardPage(sights),
                new FitFramePage(sights, shop),
                new FrameWhyPage(sights),
                new ChainPage(sights),
                new StoresPage(sights),
                lots,
                new LabelPage(),
                receiving,
                counting,
                new TablePage(sights, shop),
                new CostsPage(sights),
                new OrdersPage(sights, shop),
                new RecipesPage(sights),
                cards,
                new PhotoPage(new Photos(shop)),
                new ShopPage(sights, shop),
                new DefinitionPage(sights, shop),
                new PaperPage(sights),
                new WhyPage(sights),
                new ScreenPage(sights),
                new LivePage(sights, looking),
                new KeptPage(sights, shop, door, tree, List.of(cards, reading, inspections, lots, receiving, counting)),
                new WorkerPage());
    }
}
