package umbercard.cards;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import umbercard.geometry.Point;
import umbercard.spectra.RubbedPrint;
import umbercard.spectra.Spectrum;
import umbercard.spectra.Trays;

/** One printed color card under uneven light, with the room that its print leaves for each stick, strip after strip. */
public record PrintedSheet(RubbedPrint print, List<Rectangle2D> rooms) {
    /** A hand keeps off the printed border, in millimeters. */
    public static final double EDGE = 0.6;

    private static final double PIXELS = 12;

    public static PrintedSheet of(byte[] svg) {
        RubbedPrint print = new RubbedPrint(Print.of(svg, PIXELS), PIXELS, List.of(), Trays.UNEVEN);
        WrittenCard card = WrittenCard.read(svg);
        return new PrintedSheet(
                print,
                card.ids().stream()
                        .filter(id -> id.matches("strip-\\d+-color"))
                        .map(id -> print.roomBeside(WrittenCard.box(card.part(id)), EDGE))
                        .toList());
    }

    /** With sticks rubbed on it, by the index of the room. */
    public RubbedPrint rubbed(Map<Integer, Spectrum> sticks) {
        return new RubbedPrint(
                print.print(),
                print.pixels(),
                sticks.entrySet().stream()
                        .map(stick -> RubbedPrint.rubbed(rooms.get(stick.getKey()), stick.getValue()))
                        .toList(),
                print.falloff());
    }

    /** The card's corners in the photograph. */
    public List<Point> corners() {
        return print.view().corners(print.width(), print.height());
    }
}
