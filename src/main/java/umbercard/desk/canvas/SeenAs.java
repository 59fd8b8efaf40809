package umbercard.desk.canvas;

import umbercard.model.Keyed;

/** How the reference is looked at: as photographed, in gray, or split into two values. */
public enum SeenAs implements Keyed {
    COLOR,
    GRAY,
    TWO_VALUES
}
