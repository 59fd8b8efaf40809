package umbercard.cards.faces;

import umbercard.color.Lab;
import umbercard.door.Drawing.Weight;

/** How words are set: a size in points, a weight, an ink. */
record Style(double points, Weight weight, Lab ink) {

    static Style regular(double points) {
        return new Style(points, Weight.REGULAR, Ink.WORDS);
    }

    static Style medium(double points) {
        return new Style(points, Weight.MEDIUM, Ink.WORDS);
    }

    static Style quiet(double points) {
        return new Style(points, Weight.REGULAR, Ink.QUIET);
    }
}
