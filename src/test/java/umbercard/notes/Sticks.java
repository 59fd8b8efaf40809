package umbercard.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.picture.MainColor;

/** Sticks and zones made for tests. */
final class Sticks {
    private Sticks() {}

    /** A stick of a Munsell value, a* and b*, called {@code s} and its place in the row. */
    static Stick stick(int place, double value, double a, double b) {
        return new Stick("s" + place, "s" + place, new Stick.Slot(1, place), color(value, a, b));
    }

    static Lab color(double value, double a, double b) {
        return new Lab(Lab.lightness(MunsellValue.luminance(value)), a, b);
    }

    /** As many as wanted, anywhere that pastels are. */
    static List<Stick> random(int count, Random random) {
        List<Stick> sticks = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double a = random.nextInt(81) - 40;
            double b = random.nextInt(101) - 40;
            sticks.add(stick(i, 1 + 8.7 * random.nextDouble(), a, b));
        }
        return sticks;
    }

    /** A zone of a share of the picture, all its colors in equal shares. */
    static ColoredZone zone(String name, double share, Lab... colors) {
        return new ColoredZone(
                new Zone("z-" + name, name, Zone.Plane.SLOPE, Zone.Distance.MIDDLE),
                share,
                List.of(colors).stream()
                        .map(color -> new MainColor(color, 1.0 / colors.length))
                        .toList());
    }
}
