package umbercard.photo;

import java.util.ArrayList;
import java.util.List;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Perspective;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.kernel.EventThread;
import umbercard.model.Keyed;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * The colors of sticks as they look on card, from a photograph of a printed card on which they were rubbed. The bare card
 * gives the white and evens the light out, printed grays give the camera's tone curve. Limits are ours, tried on rendered
 * cards.
 */
public final class RubbedCard {
    /** How much of a patch counts, each way. */
    private static final double MIDDLE = 0.6;

    /** From so much shine on, a patch's color is not to be trusted: dust of pastel hardly shines. */
    private static final double MOST_SHINE = 0.25;

    private static final double MOST_SPREAD = 6;

    /** A patch this near to the card by CIEDE2000 was not rubbed. */
    private static final double BARE = 2.5;

    /** What a patch shows. */
    public enum Look implements Keyed {
        RUBBED,
        /** The bare card; a white stick looks the same. */
        BARE,
        GLARE,
        /** No one color. */
        UNCERTAIN
    }

    /**
     * One patch.
     *
     * @param color under D65
     * @param spread the median CIEDE2000 from the color
     */
    public record Rubbed(String id, Lab color, double spread, Look look) {}

    /**
     * What the card says.
     *
     * @param patches in the order they were given
     * @param grays how many printed grays told the camera's tone curve; with none its colors are taken as honest sRGB
     * @param graysRubbedOver how many were left out, since they are gray no more
     */
    public record Findings(List<Rubbed> patches, int grays, int graysRubbedOver) {
        public Findings {
            patches = List.copyOf(patches);
        }
    }

    private final String photo;
    private final Picture picture;
    private final CardMarks marks;
    private final Perspective view;
    private final PrintedGrays.Said said;

    private RubbedCard(String photo, Picture picture, CardMarks marks) throws Trouble {
        this.photo = photo;
        this.picture = picture;
        this.marks = marks;
        view = Perspective.of(marks.card(), marks.corners())
                .orElseThrow(() -> new Trouble(Message.of("photo.card.corners", photo)));
        said = new PrintedGrays(marks, this::under, photo).said();
    }

    /**
     * Looks at every patch; off the event thread.
     *
     * @param photo what to call the photograph where something is wrong
     * @throws Trouble if the corners are none of a card, the card reaches out of the picture, or its white is clipped or dark
     * @throws IllegalStateException on the event thread
     */
    public static Findings read(String photo, Picture picture, CardMarks marks) throws Trouble {
        EventThread.refuse("looking at a rubbed card");
        return new RubbedCard(photo, picture, marks).findings();
    }

    private Findings findings() throws Trouble {
        List<Rubbed> patches = new ArrayList<>();
        for (CardMarks.Patch patch : marks.patches()) {
            BodyColor body = BodyColor.of(
                    under(patch.corner(), patch.size()),
                    said.tone(),
                    said.white().correctionAt(middle(patch.corner(), patch.size())));
            patches.add(new Rubbed(patch.id(), body.color(), body.spread(), look(body)));
        }
        return new Findings(patches, said.used(), said.leftOut());
    }

    private Look look(BodyColor body) {
        if (body.shine() >= MOST_SHINE) {
            return Look.GLARE;
        }
        if (body.spread() >= MOST_SPREAD) {
            return Look.UNCERTAIN;
        }
        Lab card = Lab.gray(Lab.lightness(MunsellValue.luminance(said.whiteValue())));
        return Ciede2000.difference(body.color(), card) < BARE ? Look.BARE : Look.RUBBED;
    }

    static Point middle(Point corner, Size size) {
        return corner.plus(size.width() / 2, size.height() / 2);
    }

    /** The pixels of a piece's middle. */
    private LitPixels under(Point corner, Size size) throws Trouble {
        double edge = (1 - MIDDLE) / 2;
        return LitPixels.under(
                        picture,
                        view,
                        corner.plus(edge * size.width(), edge * size.height()),
                        new Size(MIDDLE * size.width(), MIDDLE * size.height()))
                .orElseThrow(() -> new Trouble(Message.of("photo.card.outside", photo)));
    }
}
