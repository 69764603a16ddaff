package fayline.app.bench.cases;

/** One case of a file, whatever its layout. */
interface CheckCase {
    /** The case's name in its file. */
    String id();

    /**
     * Reckons and compares.
     *
     * @param file the file's path, for the verdict, and its name, by which subjects are chosen
     */
    Verdict judge(CaseFile file);
}
