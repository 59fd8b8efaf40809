package umbercard.photo;

import umbercard.color.Lab;
import umbercard.color.WhitePoint;
import umbercard.color.Xyz;

/**
 * Turns linear light in sRGB's primaries into the color under D65, as an eye sees it that is used to a white: Bradford
 * adaptation from that white, and its light as the measure of all light.
 */
final class WhiteCorrection {
    private final double luminance;
    private final WhitePoint white;

    /** @param rgb the linear light of what throws all light back, each over 0 */
    WhiteCorrection(double[] rgb) {
        Xyz xyz = Xyz.ofLinear(rgb[0], rgb[1], rgb[2]);
        double sum = xyz.x() + xyz.y() + xyz.z();
        luminance = xyz.y();
        white = new WhitePoint(xyz.x() / sum, xyz.y() / sum);
    }

    Lab color(double[] rgb) {
        Xyz seen = Xyz.ofLinear(rgb[0] / luminance, rgb[1] / luminance, rgb[2] / luminance);
        return Lab.ofXyz(white.adapt(seen, WhitePoint.D65));
    }
}
