package fayline.flow.planner.goal;

import java.util.List;

/**
 * How good a plan is, term by term. Less is better.
 *
 * @param terms in their order of worth
 */
public record PlanScore(List<Term> terms) {
    /** Copies the list. */
    public PlanScore {
        terms = List.copyOf(terms);
    }

    /** What counts, the dearest first. */
    public enum Kind {
        /** Steps that have no place in the plan. */
        UNPLANNED,
        /** Hours by which dated goals are missed. */
        LATE,
        /** Hours from now to the end of all. */
        FINISH,
        /** Hours from now to the end of a part or joint, on average. */
        PARTS,
        /** Person-hours that missed windows cost. */
        WINDOWS,
        /** Person-hours in the coming fortnight with nothing that needs doing. */
        IDLE,
        /** Person-hours of hands in the evening. */
        EVENING,
        /** Steps that lie elsewhere, or with others, than the crew was told. */
        MOVED
    }

    /**
     * One term.
     *
     * @param kind what is counted
     * @param amount how much of it, in the unit of its kind; not negative
     * @param weight what one counts
     */
    public record Term(Kind kind, double amount, double weight) {
        /** What the term adds to the whole, in hours of a later finish. */
        public double cost() {
            return amount * weight;
        }
    }

    /** The sum of all terms, in hours of a later finish. */
    public double total() {
        return terms.stream().mapToDouble(Term::cost).sum();
    }

    /** How much there is of one kind. */
    public double amount(Kind kind) {
        return terms.stream()
                .filter(t -> t.kind() == kind)
                .mapToDouble(Term::amount)
                .sum();
    }
}
