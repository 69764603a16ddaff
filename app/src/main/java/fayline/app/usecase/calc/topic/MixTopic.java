package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Density;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import fayline.method.mix.MixRatio;
import fayline.method.mix.MixRatioCalculator;
import fayline.method.mix.MixRatioResult;
import fayline.method.mix.batch.EqualBatches;
import fayline.method.mix.batch.EqualBatchesCalculator;
import fayline.method.mix.batch.EqualBatchesResult;
import fayline.method.mix.batch.LargestBatch;
import fayline.method.mix.batch.LargestBatchCalculator;
import fayline.method.mix.batch.LargestBatchResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Splitting and checking a mix, and cutting it into batches that can be used up in time. */
final class MixTopic {
    private static final double USUAL_RESIN = 100;

    private MixTopic() {}

    static RelationTopic topic() {
        List<Term> terms = new ArrayList<>(terms());
        // A largest batch is a matter of pot life: the terms of that topic are terms of this one.
        terms.addAll(PotLifeTopic.topic().terms().values().stream()
                .filter(t -> !"potLife".equals(t.name()) && !"mixedMass".equals(t.name()))
                .toList());
        List<Relation> relations = new ArrayList<>(relations());
        relations.add(PotLifeTopic.exponent());
        return new RelationTopic(
                "mix",
                "Resin and hardener for a mix, a weighed mix against its tolerance, and equal batches that can be used in time.",
                terms,
                relations);
    }

    private static List<Term> terms() {
        return List.of(
                number("total", "g", "the whole mix"),
                number("partsResin", "-", "parts of resin by mass; 100 where only partsHardener is given"),
                number("partsHardener", "-", "parts of hardener by mass"),
                number("partsHardenerByWeight", "per 100", "hardener per 100 of resin by mass"),
                number("nominalHardener", "per 100", "the same as partsHardenerByWeight"),
                number("tolerance", "percent", "how far the hardener may be off, of the nominal"),
                number("resinWeighed", "g", "resin on the scale"),
                number("hardenerWeighed", "g", "hardener on the scale"),
                number("densityResin", "kg/L", "density of the resin"),
                number("densityHardener", "kg/L", "density of the hardener"),
                number("useRate", "g/min", "mixed mass that one person applies"),
                Term.count("people", "how many apply; 1 where it is not given"),
                number("usableFraction", "-", "share of the pot life on which to rely"),
                number("mixingTime", "min", "time to weigh and mix one batch; 0 where it is not given"),
                number("container", "g", "the most that may be in one container"),
                number("maxBatch", "g", "the largest batch"),
                number("ratio", "-", "hardener over resin by mass"),
                number("resin", "g", "resin for the whole mix"),
                number("hardener", "g", "hardener for the whole mix"),
                number("partsHardenerByVolume", "per 100", "hardener per 100 of resin by volume"),
                number("deviation", "percent", "hardener of the weighed mix against the nominal"),
                Term.yesNo("inTolerance", "whether the weighed mix is within tolerance"),
                number("hardenerToAdd", "g", "hardener that brings the weighed mix to the ratio"),
                number("resinToAdd", "g", "resin that brings the weighed mix to the ratio"),
                Term.count("batches", "how many equal batches"),
                number("batchMass", "g", "mass of one batch"),
                number("potLifeOfBatch", "min", "pot life of one batch"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving(
                "ratio",
                "partsHardener [partsResin]",
                k -> ratio(k, k.si("partsHardener") / k.si("partsResin", USUAL_RESIN))));
        r.add(giving("ratio", "partsHardenerByWeight", k -> ratio(k, k.si("partsHardenerByWeight"))));
        r.add(giving("ratio", "nominalHardener", k -> ratio(k, k.si("nominalHardener"))));
        r.add(giving("resin", "total ratio", k -> take(k, MixRatioResult::resin).si()));
        r.add(giving(
                "hardener",
                "total ratio",
                k -> take(k, MixRatioResult::hardener).si()));
        r.add(giving(
                "partsHardenerByVolume",
                "ratio densityResin densityHardener",
                k -> take(k, m -> boxed(m.hardenerPer100ByVolume())) / 100));
        String weighed = "resinWeighed hardenerWeighed ratio [tolerance]";
        r.add(giving(
                "deviation", weighed, k -> take(k, MixRatioResult::deviation).si()));
        r.add(giving(
                "inTolerance",
                "resinWeighed hardenerWeighed ratio tolerance",
                k -> take(k, MixRatioResult::inTolerance)));
        r.add(giving(
                "hardenerToAdd",
                weighed,
                k -> take(k, MixRatioResult::hardenerToAdd).si()));
        r.add(giving(
                "resinToAdd", weighed, k -> take(k, MixRatioResult::resinToAdd).si()));
        for (String sheet : List.of(PotLifeTopic.TWO_POINTS, PotLifeTopic.ONE_POINT)) {
            String pot = sheet + PotLifeTopic.CIRCUMSTANCES;
            r.add(giving(
                    "maxBatch", "useRate usableFraction [mixingTime] [people] [container] " + pot, MixTopic::largest));
            r.add(giving(
                    "potLifeOfBatch",
                    "batchMass " + pot,
                    k -> PotLifeTopic.potLife(k, k.maybe("batchMass", Mass::new))
                            .si()));
            r.add(giving(
                    "potLifeOfBatch",
                    "maxBatch " + pot,
                    k -> PotLifeTopic.potLife(k, k.maybe("maxBatch", Mass::new)).si()));
        }
        r.add(giving("batches", "total maxBatch", k -> {
            EqualBatchesResult b = batches(k);
            k.heed(b.findings());
            return (double) b.batches();
        }));
        r.add(giving("batchMass", "total maxBatch", k -> {
            EqualBatchesResult b = batches(k);
            return k.take(b.each(), b.findings()).si();
        }));
        return r;
    }

    private static Object ratio(Known k, double ratio) {
        if (k.has("partsHardener") && !k.has("partsResin")) {
            k.caution("partsResin is taken as 100.");
        }
        if (!(ratio > 0) || !Double.isFinite(ratio)) {
            throw new NotCoveredException("parts above zero are needed");
        }
        return ratio;
    }

    private static Optional<Double> boxed(OptionalDouble v) {
        return v.isPresent() ? Optional.of(v.getAsDouble()) : Optional.empty();
    }

    private static <V> V take(Known k, Function<MixRatioResult, Optional<V>> figure) {
        MixRatioResult r = MixRatioCalculator.calculate(new MixRatio(
                1,
                k.si("ratio"),
                k.maybe("tolerance", Fraction::new),
                k.maybe("total", Mass::new),
                k.maybe("resinWeighed", Mass::new),
                k.maybe("hardenerWeighed", Mass::new),
                k.maybe("densityResin", Density::new),
                k.maybe("densityHardener", Density::new)));
        r.figures().forEach(k::by);
        if (r.figures().isEmpty()) {
            k.by("b_v = b_w rho_resin/rho_hardener", "mass balance");
        }
        return k.take(figure.apply(r), r.findings());
    }

    private static Object largest(Known k) {
        LargestBatchResult r = LargestBatchCalculator.calculate(new LargestBatch(
                PotLifeTopic.question(k, Optional.empty()),
                k.si("useRate"),
                k.has("people") ? k.count("people") : 1,
                k.as("usableFraction", Fraction::new),
                new TimeSpan(k.si("mixingTime", 0)),
                k.maybe("container", Mass::new)));
        r.figure().ifPresent(k::by);
        return k.take(r.largest(), r.findings()).si();
    }

    private static EqualBatchesResult batches(Known k) {
        k.by("N = ceil(total/largest), each total/N", "mass balance");
        return EqualBatchesCalculator.calculate(
                new EqualBatches(k.as("total", Mass::new), k.as("maxBatch", Mass::new)));
    }

    /** What a whole mix is where other topics give it: used where tables mix these subjects. */
    static RelationTopic totals() {
        return new RelationTopic(
                "totals",
                "",
                List.of(
                        number("total", "g", "the whole mix"),
                        number("mixToWeigh", "kg", "mixed resin to weigh"),
                        number("adhesiveMass", "kg", "mixed adhesive to weigh")),
                List.of(
                        giving("total", "mixToWeigh", k -> k.si("mixToWeigh")),
                        giving("total", "adhesiveMass", k -> k.si("adhesiveMass"))));
    }
}
