package umbercard.store;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.color.Lab;
import umbercard.color.MeasuredLab;
import umbercard.color.WhitePoint;
import umbercard.color.Xyy;
import umbercard.model.Keyed;

/** The whites that a table may name. Their colors are adapted to D65. */
enum White implements Keyed {
    A,
    C,
    D50,
    D65;

    /** All of them, with commas. */
    static String all() {
        return Stream.of(values()).map(White::name).collect(Collectors.joining(", "));
    }

    private WhitePoint point() {
        return switch (this) {
            case A -> WhitePoint.A;
            case C -> WhitePoint.C;
            case D50 -> WhitePoint.D50;
            case D65 -> WhitePoint.D65;
        };
    }

    /** The color of L*a*b* under this white; under D65 to the last digit. */
    Lab ofLab(double l, double a, double b) {
        return this == D65 ? new Lab(l, a, b) : new MeasuredLab(l, a, b, point()).lab();
    }

    /** The color of a chromaticity and a luminance 0..1 under this white. */
    Lab ofXyy(double x, double y, double luminance) {
        return MeasuredLab.of(new Xyy(x, y, luminance).xyz(), point()).lab();
    }
}
