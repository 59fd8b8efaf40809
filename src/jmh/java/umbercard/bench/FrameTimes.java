package umbercard.bench;

import java.util.List;

/**
 * How long the frames of dragging a point took, in milliseconds, each list from the shortest to the longest.
 *
 * @param marks on the thumbnail
 * @param nodes of each
 * @param dragged the mark whose point is dragged, in words
 * @param every the time between two events of the pointer
 * @param press the frames of pressing the button
 * @param drags the frames of the drag events
 * @param cpu how much of that the event thread was at work, and not waiting for a processor or the display
 * @param waits how long those waited for the event thread before
 * @param longestOther the longest that any other event kept the event thread meanwhile
 */
public record FrameTimes(
        int marks,
        int nodes,
        String dragged,
        int every,
        List<Double> press,
        List<Double> drags,
        List<Double> cpu,
        List<Double> waits,
        double longestOther) {}
