package umbercard.model;

/** The light on the scene. Some rules of the trade hold in one light and not in another. */
public enum Light implements Keyed {
    CLEAR,
    OVERCAST,
    SNOW,
    LOW_SUN,
    BACKLIT,
    NIGHT,
    INDOORS
}
