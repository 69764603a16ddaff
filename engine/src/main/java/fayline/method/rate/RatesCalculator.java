package fayline.method.rate;

import fayline.basis.numeric.StudentT;
import fayline.basis.numeric.optimum.ConjugateRegression;
import fayline.method.rate.Rates.KindRate;
import fayline.method.rate.Rates.PersonRate;
import fayline.method.rate.Rates.Repetition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Learns rates from finished work. The logarithm of booked over estimated time is a sum of what belongs to the kind of work, the
 * mean of what belongs to each of the people, where repetition clearly helps an exponent times the logarithm of the count, and
 * scatter; each is drawn in towards the recipe by a proper prior ({@link ConjugateRegression}). So one odd afternoon moves a
 * rate a little, twenty alike move it nearly all the way. The factor is the typical (median) one.
 */
public final class RatesCalculator {
    private static final double SURE = 0.9;
    private static final int LEAST_REPEATS = 3;

    private RatesCalculator() {}

    /**
     * Learns.
     *
     * @param works finished work in any order
     * @param prior what is expected beforehand
     * @return the rates; of an equal list equal ones
     */
    public static Rates calculate(List<BookedWork> works, RatePrior prior) {
        Map<Boolean, List<BookedWork>> likely = works.stream()
                .collect(Collectors.partitioningBy(w -> w.ratio() >= prior.least() && w.ratio() <= prior.most()));
        List<BookedWork> counted = likely.getOrDefault(true, List.of());
        List<BookedWork> leftOut = likely.getOrDefault(false, List.of());
        Set<String> repeated = new TreeSet<>();
        for (BookedWork w : counted) {
            if (repeats(counted, w.kind()) >= LEAST_REPEATS) {
                repeated.add(w.kind());
            }
        }
        Model all = new Model(counted, repeated, prior);
        Set<String> clear = new TreeSet<>();
        for (String kind : repeated) {
            if (all.faster(kind) >= SURE) {
                clear.add(kind);
            }
        }
        Model model = clear.equals(repeated) ? all : new Model(counted, clear, prior);
        return new Rates(
                model.kinds.stream().map(model::kind).toList(),
                model.people.stream().map(model::person).toList(),
                Math.sqrt(model.fit.variance()),
                model.fit.degreesOfFreedom(),
                counted,
                leftOut);
    }

    private static long repeats(List<BookedWork> works, String kind) {
        return works.stream()
                .filter(w -> w.kind().equals(kind) && w.repeat() > 1)
                .count();
    }

    /** The columns: kinds, people, exponents. */
    private static final class Model {
        private final List<BookedWork> works;
        private final List<String> kinds;
        private final List<String> people;
        private final List<String> repeated;
        private final ConjugateRegression fit;

        Model(List<BookedWork> works, Set<String> learning, RatePrior prior) {
            this.works = works;
            Set<String> k = new TreeSet<>();
            Set<String> p = new TreeSet<>();
            works.forEach(w -> {
                k.add(w.kind());
                p.addAll(w.people());
            });
            kinds = List.copyOf(k);
            people = List.copyOf(p);
            repeated = List.copyOf(learning);
            double[] y = new double[works.size()];
            List<double[]> rows = new ArrayList<>();
            for (BookedWork w : works) {
                y[rows.size()] = Math.log(w.ratio());
                rows.add(row(w));
            }
            fit = ConjugateRegression.of(
                    rows, y, precision(prior), prior.scatter() * prior.scatter(), prior.scatterWeight());
        }

        private double[] precision(RatePrior prior) {
            double[] precision = new double[kinds.size() + people.size() + repeated.size()];
            for (int i = 0; i < precision.length; i++) {
                precision[i] = i < kinds.size()
                        ? prior.kind()
                        : i < kinds.size() + people.size() ? prior.person() : prior.repetitionPrecision();
            }
            return precision;
        }

        private double[] row(BookedWork w) {
            double[] x = new double[kinds.size() + people.size() + repeated.size()];
            x[kinds.indexOf(w.kind())] = 1;
            for (String person : w.people()) {
                x[kinds.size() + people.indexOf(person)] += 1.0 / w.people().size();
            }
            int r = repeated.indexOf(w.kind());
            if (r >= 0) {
                x[kinds.size() + people.size() + r] = Math.log(w.repeat());
            }
            return x;
        }

        private double[] unit(int column) {
            double[] x = new double[kinds.size() + people.size() + repeated.size()];
            x[column] = 1;
            return x;
        }

        private double reach(int column) {
            return fit.deviation(unit(column)) * StudentT.quantile(SURE, fit.degreesOfFreedom());
        }

        double faster(String kind) {
            int column = kinds.size() + people.size() + repeated.indexOf(kind);
            return StudentT.below(-fit.mean().get(column) / fit.deviation(unit(column)), fit.degreesOfFreedom());
        }

        KindRate kind(String kind) {
            int column = kinds.indexOf(kind);
            double mean = fit.mean().get(column);
            List<BookedWork> own =
                    works.stream().filter(w -> w.kind().equals(kind)).toList();
            return new KindRate(
                    kind,
                    own.size(),
                    own.stream().mapToDouble(BookedWork::estimatedMin).sum(),
                    own.stream().mapToDouble(BookedWork::bookedMin).sum(),
                    Math.exp(mean),
                    Math.exp(mean - reach(column)),
                    Math.exp(mean + reach(column)),
                    fit.deviation(unit(column)),
                    repetition(kind));
        }

        private Optional<Repetition> repetition(String kind) {
            int r = repeated.indexOf(kind);
            if (r < 0) {
                return Optional.empty();
            }
            double exponent = fit.mean().get(kinds.size() + people.size() + r);
            return Optional.of(
                    new Repetition(exponent, Math.pow(2, exponent), faster(kind), (int) repeats(works, kind)));
        }

        PersonRate person(String person) {
            int column = kinds.size() + people.indexOf(person);
            double mean = fit.mean().get(column);
            return new PersonRate(
                    person,
                    (int) works.stream()
                            .filter(w -> w.people().contains(person))
                            .count(),
                    Math.exp(mean),
                    Math.exp(mean - reach(column)),
                    Math.exp(mean + reach(column)));
        }
    }
}
