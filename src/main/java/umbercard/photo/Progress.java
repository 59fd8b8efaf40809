package umbercard.photo;

import umbercard.picture.Picture;
import umbercard.words.Message;

/**
 * How far slow work has come, what can be seen of it meanwhile, and whether anyone still wants it. Called on the working
 * thread.
 */
public interface Progress {
    /** Nobody looks and nobody stops. */
    Progress NONE = share -> {};

    /** Work has come to {@code share}, 0..1, never falling. */
    void at(double share);

    /** Whether to give up; asked often. */
    default boolean stopped() {
        return false;
    }

    /**
     * A first sight of the photograph being read, upright and in its proportions but small, long before the rest; told once,
     * and only where the file carries one.
     */
    default void firstSight(Picture small) {}

    /**
     * Asked once where only a part of the photograph could be read: whether that part is wanted, its missing rest in middle
     * gray. Whoever cannot show it to the painter together with the sentence says no, and the photograph is refused.
     *
     * @param said the sentence that names the file, what is shown of it and the remedy
     */
    default boolean takesPart(Message said) {
        return false;
    }
}
