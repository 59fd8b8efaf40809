package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import umbercard.door.Deck;
import umbercard.door.Drawing;
import umbercard.door.Face;
import umbercard.door.Finding;
import umbercard.door.Look;
import umbercard.door.Type;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.model.Surface;
import umbercard.transfer.CardScale;
import umbercard.words.Trouble;
import umbercard.words.Words;

/**
 * The thumbnail in the opening's proportions, dark as solid, with the title, the concept and the figures. The frame's
 * rectangle is the part {@code frame}, the dark in it the part {@code notan}: the border lies outside the frame, so the dark
 * drawn is exactly the share that is read.
 */
public final class NotanFace implements Face {
    @Override
    public String id() {
        return "notan";
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public Map<String, Class<?>> look() {
        return Map.ofEntries(
                Map.entry("margin", Double.class),
                Map.entry("gap", Double.class),
                Map.entry("figureGap", Double.class),
                Map.entry("titleGap", Double.class),
                Map.entry("columnLeast", Double.class),
                Map.entry("pictureLeast", Double.class),
                Map.entry("titlePoints", Double.class),
                Map.entry("conceptPoints", Double.class),
                Map.entry("conceptPointsMost", Double.class),
                Map.entry("labelPoints", Double.class),
                Map.entry("figurePoints", Double.class),
                Map.entry("focusCross", Boolean.class),
                Map.entry("showLight", Boolean.class),
                Map.entry("showSurface", Boolean.class),
                Map.entry("showScale", Boolean.class));
    }

    @Override
    public List<Consumer<Drawing>> lay(Deck deck, Look look, Type type) throws Trouble {
        Size card = new Size(deck.width(), deck.height());
        String concept = deck.study().concept();
        Optional<NotanLayout.Places> places = layout(card, deck, concept, look, type);
        if (places.isEmpty()) {
            throw Room.refuse(
                    card,
                    concept,
                    (size, words) -> layout(size, deck, words, look, type).isPresent());
        }
        return List.of(drawing -> draw(drawing, places.get(), deck, look, type));
    }

    private static Optional<NotanLayout.Places> layout(Size card, Deck deck, String concept, Look look, Type type) {
        DoubleFunction<Figures> figures = figures(deck, look, type);
        String title = deck.study().title();
        return new NotanLayout(card, deck.design().ratio(), look, type, figures, title, concept).best();
    }

    private static void draw(Drawing drawing, NotanLayout.Places places, Deck deck, Look look, Type type) {
        Box picture = places.picture();
        double scale = picture.height();
        Point corner = picture.corner();
        List<Outline> dark = deck.design().dark().outlines().stream()
                .map(outline -> outline.mapped(p -> corner.plus(scale * p.x(), scale * p.y())))
                .toList();
        drawing.rectangle("frame", Words.say("cards.part.frame"), corner, picture.size(), Ink.PAPER);
        drawing.group("notan", Words.say("cards.part.notan"), () -> drawing.fill(dark, Ink.DARK));
        picture.border(drawing);
        if (look.on("focusCross")) {
            deck.chosen().focus().ifPresent(focus -> cross(drawing, corner.plus(scale * focus.x(), scale * focus.y())));
        }
        Box figures = places.figures();
        drawing.group(
                "figures",
                Words.say("cards.part.figures"),
                () -> figures(deck, look, type)
                        .apply(picture.width())
                        .draw(drawing, figures.left(), figures.top(), figures.width()));
        drawing.group("words", Words.say("cards.part.words"), () -> {
            Box box = places.words();
            Block concept = places.concept().balanced(box.width());
            places.title().balanced(box.width()).draw(drawing, box.left(), box.top());
            concept.draw(drawing, box.left(), box.bottom() - concept.height());
        });
    }

    /** Light on dark and dark on light, so that it shows on both. */
    private static void cross(Drawing drawing, Point at) {
        drawing.group("focus", Words.say("cards.part.focus"), () -> {
            for (boolean under : new boolean[] {true, false}) {
                double reach = under ? 1.8 : 1.6;
                double width = under ? 0.7 : 0.3;
                var ink = under ? Ink.PAPER : Ink.WORDS;
                drawing.line(List.of(at.plus(-reach, 0), at.plus(reach, 0)), width, ink);
                drawing.line(List.of(at.plus(0, -reach), at.plus(0, reach)), width, ink);
            }
        });
    }

    /** The figures, by the picture's width, on which the scale depends. */
    private static DoubleFunction<Figures> figures(Deck deck, Look look, Type type) {
        List<Figures.Entry> entries = new ArrayList<>();
        long dark = Math.round(100 * deck.design().darkShare());
        entries.add(entry("cards.figure.dark", Words.say("cards.figure.dark.value", dark, 100 - dark)));
        horizon(deck).ifPresent(entries::add);
        if (look.on("showLight")) {
            String light = deck.study().light().key();
            entries.add(entry("cards.figure.light", Words.say("trade.light." + light)));
        }
        Surface surface = deck.study().surface();
        if (look.on("showSurface")) {
            String unit = Words.say("trade.unit." + surface.unit().key());
            String size = Words.say("cards.figure.surface.value", surface.width(), surface.height(), unit);
            entries.add(entry("cards.figure.surface", size));
        }
        Style label = Style.quiet(look.number("labelPoints"));
        Style value = Style.medium(look.number("figurePoints"));
        return across -> {
            List<Figures.Entry> all = new ArrayList<>(entries);
            if (look.on("showScale")) {
                double times = CardScale.of(surface, across).times();
                all.add(entry("cards.figure.scale", Words.say("cards.figure.scale.value", times)));
            }
            return new Figures(all, label, value, new Setting(type));
        };
    }

    private static Figures.Entry entry(String label, String value) {
        return new Figures.Entry(Words.say(label), value);
    }

    /** From the reading: of the horizon, or of the land edge where no horizon is set. */
    private static Optional<Figures.Entry> horizon(Deck deck) {
        String line = deck.chosen().horizon().isPresent() ? "cards.figure.horizon" : "cards.figure.land-edge";
        return Optional.ofNullable(deck.findings().get("horizon-height"))
                .filter(finding -> finding.verdict() != Finding.Verdict.NOT_SET
                        && !finding.figures().isEmpty())
                .map(finding -> entry(
                        line,
                        Words.say(
                                "cards.figure.height",
                                Math.round(100 * finding.figures().get(0).value()))));
    }
}
