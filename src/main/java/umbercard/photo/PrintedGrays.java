package umbercard.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.photo.CardMarks.Printed;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Tells from the bare card and the printed grays what the light and the camera did to a card's colors. */
final class PrintedGrays {
    private static final double MOST_CLIPPED = 0.02;
    private static final double LEAST_LIGHT = 0.02;

    /** How far the channels of a gray may differ, as a share, once the card is white: more is not gray. */
    private static final double MOST_COLORED = 0.15;

    /** Print is even, what was rubbed over it is not. */
    private static final double MOST_UNEVEN = 0.25;

    /** Bare card that is darker than that around by more than this share is smudged, or lies in a shadow. */
    private static final double SMUDGED = 0.06;

    /** Gives the pixels of a piece of the card. */
    interface Eye {
        LitPixels under(Point corner, Size size) throws Trouble;
    }

    /**
     * What they say.
     *
     * @param tone undoes the camera's curve
     * @param white after that
     * @param whiteValue of the bare card
     * @param used how many grays told the curve
     * @param leftOut how many did not, since they are not gray, not even, or too far from what was printed
     */
    record Said(ToneCurve tone, WhiteField white, double whiteValue, int used, int leftOut) {}

    private final CardMarks marks;
    private final Eye eye;
    private final String photo;
    private final double whiteValue;

    PrintedGrays(CardMarks marks, Eye eye, String photo) {
        this.marks = marks;
        this.eye = eye;
        this.photo = photo;
        whiteValue = marks.printed().stream().mapToDouble(Printed::value).max().orElseThrow();
    }

    Said said() throws Trouble {
        List<WhiteField.Known> whites = new ArrayList<>();
        List<Printed> grays = new ArrayList<>();
        for (Printed printed : marks.printed()) {
            if (printed.value() < whiteValue) {
                grays.add(printed);
            } else {
                whites.add(WhiteField.Known.of(middle(printed), bare(printed), 1));
            }
        }
        List<WhiteField.Known> clean = clean(whites);
        WhiteField shown = WhiteField.of(marks.card(), clean);
        Map<Double, List<Double>> ratios = new TreeMap<>();
        int used = 0;
        for (Printed gray : grays) {
            double known = MunsellValue.luminance(gray.value()) / MunsellValue.luminance(whiteValue);
            OptionalDouble ratio = ratio(gray, shown.at(middle(gray)), known);
            if (ratio.isPresent()) {
                ratios.computeIfAbsent(known, light -> new ArrayList<>()).add(ratio.getAsDouble());
                used++;
            }
        }
        Point center = new Point(marks.card().width() / 2, marks.card().height() / 2);
        ToneCurve tone = ToneCurve.of(mean(shown.at(center)), medians(ratios));
        return new Said(tone, undone(clean, tone), whiteValue, used, grays.size() - used);
    }

    private double[] bare(Printed printed) throws Trouble {
        LitPixels pixels = eye.under(printed.corner(), printed.size());
        if (pixels.clippedShare() > MOST_CLIPPED) {
            throw new Trouble(Message.of("photo.card.clipped", photo));
        }
        double[] rgb = pixels.median();
        if (Arrays.stream(rgb).anyMatch(channel -> channel < LEAST_LIGHT)) {
            throw new Trouble(Message.of("photo.card.dark", photo));
        }
        return rgb;
    }

    /** Without what is smudged. */
    private List<WhiteField.Known> clean(List<WhiteField.Known> whites) {
        WhiteField all = WhiteField.of(marks.card(), whites);
        List<WhiteField.Known> clean = whites.stream()
                .filter(one -> one.light().get(1) > (1 - SMUDGED) * all.at(one.place())[1])
                .toList();
        return clean.isEmpty() ? whites : clean;
    }

    /** The light of a gray against the card's, if it is still the gray that was printed. */
    private OptionalDouble ratio(Printed gray, double[] white, double known) throws Trouble {
        LitPixels pixels = eye.under(gray.corner(), gray.size());
        double[] ratios = pixels.median();
        for (int k = 0; k < 3; k++) {
            ratios[k] /= white[k];
        }
        double least = Arrays.stream(ratios).min().orElseThrow();
        double most = Arrays.stream(ratios).max().orElseThrow();
        boolean isGray =
                least > 0 && most < 1 && most < (1 + MOST_COLORED) * least && pixels.unevenness() < MOST_UNEVEN;
        return isGray && ToneCurve.isBearable(Math.log(known) / Math.log(mean(ratios)))
                ? OptionalDouble.of(mean(ratios))
                : OptionalDouble.empty();
    }

    private static Map<Double, Double> medians(Map<Double, List<Double>> ratios) {
        Map<Double, Double> medians = new TreeMap<>();
        ratios.forEach((known, seen) -> medians.put(
                known, Medians.of(seen.stream().mapToDouble(ratio -> ratio).toArray())));
        return medians;
    }

    private WhiteField undone(List<WhiteField.Known> whites, ToneCurve tone) {
        double luminance = MunsellValue.luminance(whiteValue);
        return WhiteField.of(
                marks.card(),
                whites.stream()
                        .map(one -> new WhiteField.Known(
                                one.place(),
                                one.light().stream().map(tone::linear).toList(),
                                luminance))
                        .toList());
    }

    /** The geometric one. */
    private static double mean(double[] rgb) {
        return Math.cbrt(rgb[0] * rgb[1] * rgb[2]);
    }

    private static Point middle(Printed printed) {
        return RubbedCard.middle(printed.corner(), printed.size());
    }
}
