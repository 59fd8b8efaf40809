package umbercard.desk.box;

import umbercard.model.Keyed;

/** What pressing a stick in the box does. */
enum Pressing implements Keyed {
    ON_CARD,
    SET_OUT,
    CHANGE
}
