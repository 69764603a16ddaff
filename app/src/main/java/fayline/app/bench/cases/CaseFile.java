package fayline.app.bench.cases;

import java.util.List;

/**
 * A file of cases.
 *
 * @param path its path below the folder
 * @param name its name without ending
 * @param cases its cases
 */
record CaseFile(String path, String name, List<CheckCase> cases) {
    CaseFile {
        cases = List.copyOf(cases);
    }
}
