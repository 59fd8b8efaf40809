package umbercard.photo;

import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Measures the grays that a painter points at in a photograph, and refuses what none can be told from. */
record Grays(String photo, Picture picture) {
    private static final double MOST_CLIPPED = 0.02;
    private static final double MOST_UNEVEN = 0.35;
    private static final double LEAST_LIGHT = 0.01;

    WhiteField.Known known(Gray gray, Point place) throws Trouble {
        LitPixels pixels =
                LitPixels.disk(picture, gray.middle(), gray.radius()).orElseThrow(() -> trouble("outside", gray));
        return WhiteField.Known.of(place, checked(pixels, gray), MunsellValue.luminance(gray.value()));
    }

    private double[] checked(LitPixels pixels, Gray gray) throws Trouble {
        if (pixels.clippedShare() > MOST_CLIPPED) {
            throw trouble("clipped", gray);
        }
        double[] rgb = pixels.median();
        for (double channel : rgb) {
            if (channel < LEAST_LIGHT) {
                throw trouble("dark", gray);
            }
        }
        if (pixels.unevenness() > MOST_UNEVEN) {
            throw trouble("uneven", gray);
        }
        return rgb;
    }

    private Trouble trouble(String what, Gray gray) {
        return new Trouble(Message.of(
                "photo.white." + what,
                photo,
                Math.round(gray.middle().x()),
                Math.round(gray.middle().y())));
    }
}
