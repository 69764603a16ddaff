package fayline.app.web.inspect;

import fayline.app.web.frame.PhotoView;
import java.util.List;

/**
 * Inspections.
 *
 * @param authority who looks; empty where the project's file says nothing
 * @param stages stages of the local list
 * @param byDate whether the visits stand by date, else the findings by assembly
 * @param visits visits with what they found, the newest first
 * @param groups the same findings by assembly
 * @param made parts and joints to choose from
 * @param open how many findings are open
 */
public record InspectView(
        String authority,
        List<Stage> stages,
        boolean byDate,
        List<Visited> visits,
        List<Group> groups,
        List<Choice> made,
        long open) {
    /** Copies the lists. */
    public InspectView {
        stages = List.copyOf(stages);
        visits = List.copyOf(visits);
        groups = List.copyOf(groups);
        made = List.copyOf(made);
    }

    /**
     * A stage.
     *
     * @param id its id
     * @param name its name
     * @param lookAt what is looked at
     * @param photos pictures there and asked for, in words; empty where none are asked for
     * @param missing what is missing before work goes on; empty where nothing is
     */
    public record Stage(String id, String name, List<String> lookAt, String photos, List<String> missing) {
        /** Copies the lists. */
        public Stage {
            lookAt = List.copyOf(lookAt);
            missing = List.copyOf(missing);
        }
    }

    /**
     * A visit.
     *
     * @param seq its entry
     * @param title its number and who looked
     * @param says when, at what stage, entered by whom
     * @param text what was said
     * @param photos pictures
     * @param findings what it found
     */
    public record Visited(
            long seq, String title, String says, String text, List<PhotoView> photos, List<Fault> findings) {
        /** Copies the lists. */
        public Visited {
            photos = List.copyOf(photos);
            findings = List.copyOf(findings);
        }
    }

    /**
     * A finding.
     *
     * @param seq its entry
     * @param number its number
     * @param about the part or joint
     * @param link its page
     * @param text what is wrong
     * @param says when and by whom it was raised
     * @param state how far it is, in a word or two
     * @param open whether it is open
     * @param mayMend whether it waits to be put right
     * @param maySign whether it waits for a signature
     * @param photos pictures
     * @param chain what came of it
     */
    public record Fault(
            long seq,
            String number,
            String about,
            String link,
            String text,
            String says,
            String state,
            boolean open,
            boolean mayMend,
            boolean maySign,
            List<PhotoView> photos,
            List<Answer> chain) {
        /** Copies the lists. */
        public Fault {
            photos = List.copyOf(photos);
            chain = List.copyOf(chain);
        }
    }

    /**
     * What came of a finding.
     *
     * @param says what, when and by whom
     * @param text in which words
     * @param photos pictures
     */
    public record Answer(String says, String text, List<PhotoView> photos) {
        /** Copies the list. */
        public Answer {
            photos = List.copyOf(photos);
        }
    }

    /**
     * Findings of one assembly.
     *
     * @param name the assembly
     * @param findings its findings by part
     */
    public record Group(String name, List<Fault> findings) {
        /** Copies the list. */
        public Group {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Something to choose.
     *
     * @param id its id
     * @param name its name
     */
    public record Choice(String id, String name) {}
}
