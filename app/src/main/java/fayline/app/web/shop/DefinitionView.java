package fayline.app.web.shop;

import java.util.List;

/**
 * What Definition shows.
 *
 * @param hash the definition's version
 * @param revision the design's revision
 * @param shopFiles files that belong to the shop
 * @param projectFiles files that belong to the project
 * @param cautions what is to be looked at
 */
public record DefinitionView(
        String hash, String revision, List<Listed> shopFiles, List<Listed> projectFiles, List<Problem> cautions) {
    /** Copies the lists. */
    public DefinitionView {
        shopFiles = List.copyOf(shopFiles);
        projectFiles = List.copyOf(projectFiles);
        cautions = List.copyOf(cautions);
    }

    /**
     * A file of the list.
     *
     * @param path its path
     * @param link the page to change it; empty where it is no text
     * @param lines how many lines
     * @param seq the entry that saved it last
     */
    public record Listed(String path, String link, int lines, long seq) {}

    /**
     * Something to look at.
     *
     * @param place file and line
     * @param link the file's page
     * @param sentence what was found and expected
     */
    public record Problem(String place, String link, String sentence) {}

    /**
     * One file to be changed.
     *
     * @param path its path
     * @param fresh whether it does not exist yet
     * @param text its text
     * @param basedOn hash of the text that is changed
     * @param refused why the last save was refused
     * @param problems the problems, by line
     * @param changed what somebody else changed of it meanwhile
     */
    public record File(
            String path,
            boolean fresh,
            String text,
            String basedOn,
            String refused,
            List<Problem> problems,
            List<Changed> changed) {
        /** Copies the lists. */
        public File {
            problems = List.copyOf(problems);
            changed = List.copyOf(changed);
        }
    }

    /**
     * What somebody else changed.
     *
     * @param where which lines, who, in which entry
     * @param seen the lines as they were
     * @param now the lines as they are
     */
    public record Changed(String where, String seen, String now) {}
}
