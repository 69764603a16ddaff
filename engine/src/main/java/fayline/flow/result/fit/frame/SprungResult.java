package fayline.flow.result.fit.frame;

import fayline.basis.finding.Finding;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.frame.FrameBeams;
import java.util.List;
import java.util.Optional;

/**
 * What a frame does that is clamped, bonded and let go.
 *
 * @param fit the fit
 * @param beams the frame as it was told
 * @param missing what is not known yet, a sentence each; without it there is no answer
 * @param assumed what is assumed, a sentence each
 * @param sections how stiff each section came out
 * @param pulls how far the part stands off at each clamp, as far as that is known
 * @param shape shapes, forces and shifts; empty where something is missing or nothing holds it
 * @param findings what must be said, stops first
 */
public record SprungResult(
        Fit fit,
        FrameBeams beams,
        List<String> missing,
        List<String> assumed,
        List<UsedSection> sections,
        List<Pull> pulls,
        Optional<SprungShape> shape,
        List<Finding> findings) {
    /** Copies the lists. */
    public SprungResult {
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        sections = List.copyOf(sections);
        pulls = List.copyOf(pulls);
        findings = List.copyOf(findings);
    }
}
