package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import umbercard.cards.Looks;
import umbercard.cards.type.Roboto;
import umbercard.door.Deck;
import umbercard.door.Drawing;
import umbercard.door.Face;
import umbercard.door.Look;
import umbercard.door.Type;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.words.Trouble;
import umbercard.words.Words;

/**
 * The color notes as ordered strips, each the part {@code strip-1}, {@code strip-2} and so on: number, place in the tray,
 * strokes, printed color, a patch to rub the real stick on, name, value, zone, purpose. More than fit run on to further
 * cards. A study without notes has no such card.
 */
public final class ColorNotesFace implements Face {
    private static final List<String> NUMBERS = List.of(
            "margin",
            "headGap",
            "footGap",
            "guidesGap",
            "columnGap",
            "stripLeast",
            "stripNarrow",
            "stripsFewest",
            "pitch",
            "printedWidth",
            "rubWidth",
            "rubHeight",
            "lineMore",
            "labelGap",
            "keyGap",
            "hatchWidth",
            "wordsGap",
            "wordsNarrow",
            "sessionHeight",
            "titlePoints",
            "keyPoints",
            "wordsPoints",
            "conceptPoints");

    @Override
    public String id() {
        return "color-notes";
    }

    @Override
    public int rank() {
        return 20;
    }

    @Override
    public Map<String, Class<?>> look() {
        return NUMBERS.stream().collect(Collectors.toMap(name -> name, name -> Double.class));
    }

    @Override
    public List<Consumer<Drawing>> lay(Deck deck, Look look, Type type) throws Trouble {
        Study study = deck.study();
        if (study.notes().isEmpty()) {
            return List.of();
        }
        Setting setting = new Setting(type);
        Dealt dealt = dealt(study, new Size(deck.width(), deck.height()), look, setting);
        List<List<NotesLayout.Place>> cards = dealt.cards();
        Sheet sheet = new Sheet(study, look, setting, dealt.layout(), dealt.strips());
        List<Consumer<Drawing>> sides = new ArrayList<>();
        for (int i = 0; i < cards.size(); i++) {
            int number = i + 1;
            List<NotesLayout.Place> places = cards.get(i);
            sides.add(drawing -> sheet.draw(drawing, places, number, cards.size()));
        }
        return sides;
    }

    /**
     * Where the sticks of a study's notes are rubbed, card by card, as the cards are written.
     *
     * @throws Trouble if the study's card is too small for the face, saying what would fit
     */
    public static List<List<RubbedStrip>> rubbed(Study study) throws Trouble {
        if (study.notes().isEmpty()) {
            return List.of();
        }
        Size card = study.cards().card().turned(study.cards().landscape());
        Dealt dealt = dealt(study, card, Looks.of(new ColorNotesFace()), new Setting(Roboto.type()));
        return dealt.cards().stream()
                .map(places -> places.stream()
                        .map(place -> dealt.layout()
                                .rubbed(place, study.notes().get(place.note()).stick()))
                        .toList())
                .toList();
    }

    /** Strips, and where they go. */
    private record Dealt(List<Strip> strips, NotesLayout layout, List<List<NotesLayout.Place>> cards) {}

    private static Dealt dealt(Study study, Size card, Look look, Setting setting) throws Trouble {
        List<Strip> strips = strips(study, look, setting);
        NotesLayout.Needs needs = new NotesLayout.Needs(
                strips.stream().mapToDouble(Strip::labels).max().orElse(0),
                strips.stream().mapToDouble(Strip::strokes).max().orElse(0),
                headWidth(study, look, setting),
                strips.stream().anyMatch(Strip::saysMore));
        NotesLayout layout = new NotesLayout(card, look, setting, study.concept(), needs);
        if (!layout.serves()) {
            throw Room.refuse(
                    card,
                    study.concept(),
                    (size, concept) -> new NotesLayout(size, look, setting, concept, needs).serves());
        }
        return new Dealt(
                strips,
                layout,
                layout.deal(study.notes().stream().map(ColorNote::breakBefore).toList()));
    }

    private static List<Strip> strips(Study study, Look look, Setting setting) {
        List<Strip> strips = new ArrayList<>();
        for (ColorNote note : study.notes()) {
            strips.add(new Strip(strips.size() + 1, note, study, look, setting));
        }
        return strips;
    }

    /** Of the title and the longest "2 of 3" that there can be. */
    private static double headWidth(Study study, Look look, Setting setting) {
        int most = study.notes().size();
        return Stream.of(
                        setting.width(Setting.plain(study.title()), Style.medium(look.number("titlePoints"))),
                        setting.width(
                                Words.say("cards.notes.run", most, most), Style.quiet(look.number("wordsPoints"))),
                        look.number("columnGap"))
                .mapToDouble(width -> width)
                .sum();
    }

    /** What stands on every card of notes, and its strips. */
    private record Sheet(Study study, Look look, Setting setting, NotesLayout layout, List<Strip> strips) {

        void draw(Drawing drawing, List<NotesLayout.Place> places, int number, int count) {
            drawing.group("head", Words.say("cards.part.head"), () -> head(drawing, number, count));
            for (NotesLayout.Place place : places) {
                if (place.session()) {
                    session(drawing, place);
                }
                strips.get(place.note()).draw(drawing, layout.form(), place.left(), place.top());
            }
            drawing.group("foot", Words.say("cards.part.foot"), () -> foot(drawing));
        }

        private void head(Drawing drawing, int number, int count) {
            Style title = Style.medium(look.number("titlePoints"));
            Style quiet = Style.quiet(look.number("wordsPoints"));
            double y = look.number("margin") + setting.type().capHeight(title.points());
            double right = layout.right();
            if (count > 1) {
                right = fromRight(drawing, Words.say("cards.notes.run", number, count), right, y, quiet);
            }
            if (layout.guidesInHead()) {
                right = fromRight(drawing, Words.say("cards.notes.guides"), right, y, quiet);
            }
            double room = right - look.number("margin");
            // With nothing to its right the title may have its tenth to spare from the margin.
            double wide = right < layout.right() ? room : room + look.number("margin") - 1;
            String words = setting.shortened(study.title(), Math.min(Setting.SLACK * room, wide), title);
            put(drawing, words, look.number("margin"), y, title);
        }

        /** Sets words so that they end at {@code right}; returns where the words before them must end. */
        private double fromRight(Drawing drawing, String words, double right, double y, Style style) {
            double left = right - setting.type().width(words, style.points(), style.weight());
            put(drawing, words, left, y, style);
            return left - look.number("columnGap");
        }

        private void foot(Drawing drawing) {
            layout.concept().draw(drawing, look.number("margin"), layout.conceptTop());
            if (!layout.guidesInHead()) {
                Style quiet = Style.quiet(look.number("wordsPoints"));
                put(drawing, Words.say("cards.notes.guides"), look.number("margin"), layout.bottom(), quiet);
            }
        }

        /** A thin rule with the word, in the room left over the strip. */
        private void session(Drawing drawing, NotesLayout.Place place) {
            Style quiet = Style.quiet(look.number("wordsPoints"));
            String words = Words.say("cards.notes.session");
            double capital = setting.type().capHeight(quiet.points());
            double baseline = place.top() - look.number("sessionHeight") / 2 + capital / 2 - 0.6;
            double x = place.left() + layout.form().width() - layout.form().words();
            put(drawing, words, x, baseline, quiet);
            double y = baseline - capital / 2;
            List<Point> before = List.of(new Point(place.left(), y), new Point(x - 1.5, y));
            drawing.line(before, Ink.HAIR, Ink.HAIRLINE);
            double after = x + setting.width(words, quiet) + 1;
            double end = place.left() + layout.form().width();
            if (after < end) {
                drawing.line(List.of(new Point(after, y), new Point(end, y)), Ink.HAIR, Ink.HAIRLINE);
            }
        }

        private static void put(Drawing drawing, String words, double x, double y, Style style) {
            drawing.text(words, new Point(x, y), style.points(), style.weight(), style.ink());
        }
    }
}
