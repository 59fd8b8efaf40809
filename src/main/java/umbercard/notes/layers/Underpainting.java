package umbercard.notes.layers;

import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.notes.Purposes;

/**
 * What the first note is laid on: the dark notan blocked in on the bare surface.
 *
 * @param light the surface's tone; white paper of value 9.5 where that is not known
 * @param dark the stick of the first block-in note that belongs to no zone; a gray of value 2 where there is none
 */
public record Underpainting(Lab light, Lab dark) {
    /** White paper: common practice, no source. */
    private static final double PAPER = 9.5;

    /** A usual block-in: common practice, no source. */
    private static final double BLOCKED_IN = 2;

    /** That of a study. */
    public static Underpainting of(Study study) {
        return new Underpainting(
                study.surface().tone().orElse(gray(PAPER)),
                study.notes().stream()
                        .filter(note -> note.zone().isEmpty() && note.purpose().equals(Purposes.BLOCK_IN))
                        .map(ColorNote::stick)
                        .findFirst()
                        .map(stick -> stick.color())
                        .orElse(gray(BLOCKED_IN)));
    }

    private static Lab gray(double value) {
        return Lab.gray(Lab.lightness(MunsellValue.luminance(value)));
    }

    /** The mean color where that share, 0..1, is dark. */
    public Lab mean(double darkShare) {
        return Coverage.mixed(dark, darkShare, light);
    }
}
