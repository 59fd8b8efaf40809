package umbercard.photo;

/** How far slow work has come, and whether anyone still wants it. Called on the working thread. */
public interface Progress {
    /** Nobody looks and nobody stops. */
    Progress NONE = share -> {};

    /** Work has come to {@code share}, 0..1, never falling. */
    void at(double share);

    /** Whether to give up; asked often. */
    default boolean stopped() {
        return false;
    }
}
