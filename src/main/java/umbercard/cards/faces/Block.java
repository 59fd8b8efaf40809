package umbercard.cards.faces;

import java.util.List;
import umbercard.door.Drawing;
import umbercard.door.Type;
import umbercard.geometry.Point;

/** Lines of words in one style, one under the other. */
record Block(List<String> lines, Style style, Type type) {
    Block {
        lines = List.copyOf(lines);
    }

    /** From the top of the first line's capitals to the foot of the last line's; zero without lines. */
    double height() {
        return lines.isEmpty() ? 0 : type.capHeight(style.points()) + (lines.size() - 1) * type.height(style.points());
    }

    /** Draws the block with the top of its first capitals at {@code top}. */
    void draw(Drawing drawing, double left, double top) {
        double baseline = top + type.capHeight(style.points());
        for (String line : lines) {
            drawing.text(line, new Point(left, baseline), style.points(), style.weight(), style.ink());
            baseline += type.height(style.points());
        }
    }
}
