package umbercard.geometry;

/** Numbered lines across a frame, straight or bent, on which stretches are measured. */
public interface Lines {
    /** How many lines there are; they are numbered from 0. */
    int size();

    /** The whole of a line within the frame. */
    Spans whole(int line);

    /** What an outline fills of each line, within the frame, by the non-zero rule. */
    Hatching of(Outline outline);
}
