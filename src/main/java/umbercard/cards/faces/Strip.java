package umbercard.cards.faces;

import java.util.List;
import umbercard.color.MunsellValue;
import umbercard.door.Drawing;
import umbercard.door.Drawing.Weight;
import umbercard.door.Look;
import umbercard.door.Type;
import umbercard.geometry.Point;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.words.Words;

/** One color note on the card. */
final class Strip {
    private final int number;
    private final ColorNote note;
    private final Caption caption;
    private final Look look;
    private final Setting setting;

    /** @param number counted from 1, in the study's order */
    Strip(int number, ColorNote note, Study study, Look look, Setting setting) {
        this.number = number;
        this.note = note;
        this.caption = Caption.of(note, study);
        this.look = look;
        this.setting = setting;
    }

    /** The width that the number or the place needs, whichever is wider. */
    double labels() {
        return Math.max(
                setting.width(Integer.toString(number), key()), setting.width(place(), Style.regular(key().points())));
    }

    /** The width that the words for the strokes need at least. */
    double strokes() {
        return setting.width(caption.strokes(), Style.regular(look.number("wordsPoints")));
    }

    /** Whether there is something to say of it that takes a fourth line. */
    boolean saysMore() {
        return !caption.own().isEmpty();
    }

    private Style key() {
        return Style.medium(look.number("keyPoints"));
    }

    private String place() {
        return note.stick().slot().map(Stick.Slot::label).orElse("");
    }

    private String value() {
        return Words.brief(MunsellValue.of(note.stick().color()));
    }

    void draw(Drawing drawing, StripForm form, double left, double top) {
        String title = Words.say(
                "cards.part.strip",
                number,
                caption.sentence(place(), MunsellValue.of(note.stick().color())));
        drawing.group("strip-" + number, title, () -> {
            labels(drawing, form, left, top);
            patches(drawing, form, left + form.labels(), top);
            words(drawing, form, left + form.width() - form.words(), top);
        });
    }

    /** The number over the place over the strokes: what the hand looks for while it paints. */
    private void labels(Drawing drawing, StripForm form, double left, double top) {
        Type type = setting.type();
        double points = key().points();
        double capital = type.capHeight(points);
        put(drawing, Integer.toString(number), left, top + capital, key());
        put(drawing, place(), left, top + 2 * capital + look.number("keyGap"), Style.regular(points));
        double hatchTop = top + 2 * capital + 2.3 * look.number("keyGap");
        double width = Math.min(form.labels() - look.number("labelGap"), look.number("hatchWidth"));
        Box box = new Box(left, hatchTop, width, Math.min(3.2, top + form.tall() - hatchTop));
        Hatch.draw(drawing, note.direction(), note.touch(), box);
    }

    private void patches(Drawing drawing, StripForm form, double left, double top) {
        Box printed = new Box(left, top, form.printed(), form.tall());
        Box gray = form.gray(left, top);
        drawing.rectangle(
                "strip-" + number + "-color",
                Words.say("cards.part.color", number),
                printed.corner(),
                printed.size(),
                note.stick().color());
        drawing.fill(List.of(gray.outline()), Ink.VALUE_FIVE);
        new Box(left, top, form.printed() + form.rub(), form.tall()).border(drawing);
    }

    /** The value at the right of the first line, so that values stand under one another. */
    private void words(Drawing drawing, StripForm form, double left, double top) {
        Type type = setting.type();
        double first = top + type.capHeight(key().points());
        double valueWidth = type.width(value(), key().points(), Weight.MEDIUM);
        put(drawing, value(), left + form.words() - valueWidth, first, key());
        Style name = Style.medium(look.number("wordsPoints"));
        Style rest = Style.regular(look.number("wordsPoints"));
        double room = form.words() - Setting.SLACK * valueWidth - look.number("wordsGap");
        double wide = form.widest(look.number("columnGap"));
        List<String> lines = caption.lines(setting, name, room, rest, wide, form.lines());
        double leading = (form.tall() - type.capHeight(key().points())) / (form.lines() - 1);
        for (int i = 0; i < lines.size(); i++) {
            put(drawing, lines.get(i), left, first + i * leading, i == 0 ? name : rest);
        }
    }

    private static void put(Drawing drawing, String words, double x, double y, Style style) {
        if (!words.isEmpty()) {
            drawing.text(words, new Point(x, y), style.points(), style.weight(), style.ink());
        }
    }
}
