package fayline.app.bench.cases;

/** What answers cases of pairs of one field. */
interface PairSubject {
    /** Whether it knows every word given and asked. */
    boolean knows(PairQuestion question);

    /** Answers everything asked, or says why it cannot. */
    Subject.Answer answer(PairQuestion question);
}
