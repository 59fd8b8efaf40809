package umbercard.door;

/** The measures of the cards' typeface. */
public interface Type {
    /** The width in millimeters of the text at a size in points. */
    double width(String text, double points);

    /** The distance in millimeters from one line to the next at a size in points. */
    double height(double points);

    /** Whether the typeface has every character of the text. */
    boolean covers(String text);
}
