package umbercard.door;

/** An instrument in use: turns gestures into previews and, in the end, an edit. Called on one thread, under a frame's time. */
public interface Hand {
    /** Never null; a gesture that means nothing here gives {@link Step#idle()}. */
    Step feel(Gesture gesture);
}
