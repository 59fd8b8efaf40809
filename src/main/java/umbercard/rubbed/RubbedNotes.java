package umbercard.rubbed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import umbercard.cards.faces.ColorNotesFace;
import umbercard.cards.faces.RubbedStrip;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.photo.CardMarks;
import umbercard.photo.Gray;
import umbercard.photo.RubbedCard;
import umbercard.photo.RubbedCard.Look;
import umbercard.photo.RubbedCard.Rubbed;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

/**
 * One color card of a study as it was printed and rubbed: knows where on it each note's stick was rubbed, and tells what a
 * photograph of it says of the sticks. The card's white is taken to be {@link Gray#PAPER} in Munsell value, and a printed gray
 * to be as much darker than that as it is darker than white: printers lay white as bare paper (ICC.1, media-relative
 * colorimetric; from memory).
 */
public final class RubbedNotes {
    private static final double GRAY =
            MunsellValue.ofLuminance(MunsellValue.luminance(RubbedStrip.GRAY) * MunsellValue.luminance(Gray.PAPER));

    private final Study study;
    private final List<RubbedStrip> strips;

    private RubbedNotes(Study study, List<RubbedStrip> strips) {
        this.study = study;
        this.strips = strips;
    }

    /**
     * The color cards of a study, in the order they are written; none where it has no notes.
     *
     * @throws Trouble if the study's card is too small for its notes
     */
    public static List<RubbedNotes> cardsOf(Study study) throws Trouble {
        return ColorNotesFace.rubbed(study).stream()
                .map(strips -> new RubbedNotes(study, strips))
                .toList();
    }

    /** What is known of the card, whose corners stand there in a picture: upper left, upper right, lower right, lower left. */
    public CardMarks marks(List<Point> corners) {
        List<CardMarks.Patch> patches = new ArrayList<>();
        Set<CardMarks.Printed> printed = new LinkedHashSet<>();
        for (RubbedStrip strip : strips) {
            RubbedStrip.Part patch = strip.patch();
            patches.add(new CardMarks.Patch(Integer.toString(strip.note()), patch.corner(), patch.size()));
            printed.add(printed(strip.gray(), GRAY));
            strip.bare().forEach(bare -> printed.add(printed(bare, Gray.PAPER)));
        }
        Size card = study.cards().card().turned(study.cards().landscape());
        return new CardMarks(corners, card, patches, List.copyOf(printed));
    }

    private static CardMarks.Printed printed(RubbedStrip.Part part, double value) {
        return new CardMarks.Printed(part.corner(), part.size(), value);
    }

    /**
     * What a photograph of the card says; off the event thread.
     *
     * @param photo what to call the photograph where something is wrong
     * @param corners of the card in the picture, in its pixels
     * @throws Trouble if the corners are none of a card, the card reaches out of the picture, or its white is clipped or dark
     * @throws IllegalStateException on the event thread
     */
    public Learned read(String photo, Picture picture, List<Point> corners) throws Trouble {
        return learned(RubbedCard.read(photo, picture, marks(corners)));
    }

    Learned learned(RubbedCard.Findings findings) {
        Map<String, Told> byStick = new LinkedHashMap<>();
        for (int i = 0; i < strips.size(); i++) {
            Stick stick = strips.get(i).stick();
            byStick.computeIfAbsent(stick.id(), any -> new Told(stick, new ArrayList<>()))
                    .patches()
                    .add(findings.patches().get(i));
        }
        return new Learned(byStick.values().stream().map(Told::learned).toList(), findings.graysRubbedOver());
    }

    /** A stick with all its patches. */
    private record Told(Stick stick, List<Rubbed> patches) {
        Learned.OfStick learned() {
            List<Lab> colors = patches.stream()
                    .filter(patch -> patch.look() == Look.RUBBED)
                    .map(Rubbed::color)
                    .toList();
            return colors.isEmpty()
                    ? new Learned.OfStick(stick, stick.color(), patches.get(0).look())
                    : new Learned.OfStick(stick, median(colors), Look.RUBBED);
        }

        private static Lab median(List<Lab> colors) {
            return new Lab(median(colors, Lab::l), median(colors, Lab::a), median(colors, Lab::b));
        }

        private static double median(List<Lab> colors, ToDoubleFunction<Lab> coordinate) {
            double[] rising = colors.stream().mapToDouble(coordinate).sorted().toArray();
            return (rising[(rising.length - 1) / 2] + rising[rising.length / 2]) / 2;
        }
    }
}
