package umbercard.desk.box;

import java.util.List;
import umbercard.model.Keyed;
import umbercard.model.Stick;

/** How the sticks of the box are laid before the painter. */
enum Laid implements Keyed {
    /** By value down and hue across. */
    BY_VALUE,
    /** As they lie in the tray. */
    TRAY,
    /** Only those set out, dark to light. */
    SET_OUT,
    /** Those that come near to a zone's colors, and not as a tray. */
    ZONE;

    TrayLayout lay(List<Stick> sticks, int mostColumns) {
        return switch (this) {
            case BY_VALUE -> TrayLayout.byValue(sticks, mostColumns);
            case TRAY -> TrayLayout.asTheyLie(sticks, mostColumns);
            case SET_OUT, ZONE -> TrayLayout.inRows(sticks, mostColumns);
        };
    }
}
