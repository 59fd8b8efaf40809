package umbercard.door;

/** The measures of the cards' typeface. */
public interface Type {
    /** The width in millimeters of the text at a size in points; characters that the typeface lacks count generously. */
    double width(String text, double points, Drawing.Weight weight);

    /** The distance in millimeters from one line to the next at a size in points. */
    double height(double points);

    /** How high a capital letter stands over the line, in millimeters at a size in points. */
    double capHeight(double points);

    /** Whether the typeface has every character of the text. */
    boolean covers(String text);
}
