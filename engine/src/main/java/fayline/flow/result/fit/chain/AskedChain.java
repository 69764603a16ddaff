package fayline.flow.result.fit.chain;

import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.LaterState;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.DatumFit;
import fayline.method.fitup.chain.DatumFitCalculator;
import fayline.method.fitup.chain.DatumMark;
import fayline.method.fitup.chain.Link;
import fayline.method.fitup.chain.Placement;
import fayline.method.fitup.chain.correct.Neighbour;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.Missing;
import fayline.method.fitup.scheme.Scheme;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/** A project's chain and the gaps where it ends, as the method of chains sees them. */
final class AskedChain {
    /** Moves the quasi-random points of the joint chance; the same readings give the same chance. */
    private static final long SEED = 20260303;

    private final FitChainQuestion question;
    private final FitChain chain;
    private final List<FitRow> rows;
    private final boolean read;
    private final Spot middle;
    private final Map<String, DatumFit> laid = new HashMap<>();

    /**
     * Makes it.
     *
     * @param question chain and last fit
     * @param rows the gaps; at least one
     * @param read whether they were read
     */
    AskedChain(FitChainQuestion question, List<FitRow> rows, boolean read) {
        this.question = question;
        this.chain = question.chain();
        this.rows = rows;
        this.read = read;
        this.middle = Station.middle(rows.stream().map(FitRow::station).toList());
        chain.links().stream()
                .filter(l -> !l.marks().isEmpty())
                .forEach(l -> laid.put(l.name(), DatumFitCalculator.calculate(marks(l))));
    }

    Spot middle() {
        return middle;
    }

    /** How a link's bench lies on the airframe; empty where no marks lay it there. */
    Optional<DatumFit> laid(ChainLink link) {
        return Optional.ofNullable(laid.get(link.name()));
    }

    /** Whether somebody said how well each mark of a link is found. */
    static boolean sure(ChainLink link) {
        return link.marks().stream().allMatch(m -> m.deviationMm().isPresent());
    }

    Chain chain() {
        Fit fit = question.end().fit();
        return new Chain(
                chain.links().stream().map(this::link).toList(),
                stations(fit),
                fit.gauge().map(FitGauge::sharedMm).orElse(OptionalDouble.empty()),
                question.end().later().stream().map(LaterState::doubt).toList(),
                question.end().advice().map(a -> a.shop().doubts()).orElse(List.of()),
                missing(),
                question.assume() ? EnumSet.allOf(Assumption.class) : Set.of(),
                SEED);
    }

    /** Those that can move and lie at a gap that is known. */
    List<Neighbour> neighbours(Chain asked) {
        return chain.neighbours().stream()
                .filter(n -> asked.stations().stream().anyMatch(s -> s.against().equals(n.name())))
                .map(n -> new Neighbour(n.name(), middleAt(asked, n.name()), n.room()))
                .toList();
    }

    /** A neighbour's moves are told about the middle of the stations at which it lies. */
    private static Spot middleAt(Chain asked, String neighbour) {
        return Station.middle(asked.stations().stream()
                .filter(s -> s.against().equals(neighbour))
                .map(s -> s.row().station())
                .toList());
    }

    private List<ChainStation> stations(Fit fit) {
        OptionalDouble once = fit.gauge().map(FitGauge::deviationMm).orElse(OptionalDouble.empty());
        List<OptionalDouble> reading = question.end()
                .advice()
                .map(FitAdvice::readingMm)
                .orElseGet(() -> rows.stream().map(r -> once).toList());
        String on = fit.part().orElse(chain.links().get(0).part());
        String first = fit.against().isEmpty()
                ? chain.links().get(chain.links().size() - 1).carrier()
                : fit.against().get(0);
        return IntStream.range(0, rows.size())
                .mapToObj(i -> new ChainStation(
                        rows.get(i),
                        on,
                        fit.station(rows.get(i).station().id())
                                .map(FitStation::against)
                                .filter(a -> !a.isEmpty())
                                .orElse(first),
                        reading.get(i)))
                .toList();
    }

    private Link link(ChainLink l) {
        Placement placement = laid(l).map(DatumFit::placement).orElse(l.placement());
        return new Link(
                l.name(),
                l.part(),
                l.carrier(),
                l.pivot().orElseGet(() -> placement.toBench(middle)),
                scheme(l),
                placement,
                laid(l).filter(f -> sure(l)),
                !l.done(),
                l.room(),
                l.done() && read);
    }

    /** Without every deviation the marks still lay the bench, each counting alike, but nobody knows how well. */
    private static List<DatumMark> marks(ChainLink l) {
        boolean sure = sure(l);
        return l.marks().stream()
                .map(m -> {
                    double u = sure ? m.deviationMm().orElse(1) : 1;
                    return new DatumMark(m.name(), m.bench(), m.place(), u, u);
                })
                .toList();
    }

    private List<Missing> missing() {
        return chain.links().stream()
                .filter(l -> !(l.done() && read))
                .flatMap(l -> l.marks().stream()
                        .filter(m -> m.deviationMm().isEmpty())
                        .map(m -> new Missing("how sure mark " + m.name() + " is found", l.name(), Optional.empty())))
                .toList();
    }

    private Scheme scheme(ChainLink l) {
        List<Scheme> known = l.schemeOf()
                .flatMap(f -> question.fits().find(f))
                .map(f -> f.holding().schemes())
                .orElse(l.holding().schemes());
        String name = l.holding().chosen();
        return known.stream()
                .filter(s -> name.isEmpty() || s.name().equals(name))
                .findFirst()
                .orElse(Scheme.of(name, List.of()));
    }
}
