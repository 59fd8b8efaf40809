package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.notes.Purposes;
import umbercard.words.Words;

/**
 * The words of one strip in the lines there are: the stick's name, zone and purpose, strokes. Each begins a line. A line to
 * spare goes first to the strokes, which are never shortened, then to zone and purpose, then to the name; what still does
 * not fit is shortened.
 *
 * @param zone empty where none is chosen
 * @param own a layer over the first and the painter's own words; empty for neither. They take the last of four lines
 */
record Caption(String name, String zone, String purpose, String direction, String touch, String own) {

    static Caption of(ColorNote note, Study study) {
        Stick stick = note.stick();
        String name = stick.name().orElse(stick.slot().isPresent() ? "" : stick.id());
        return new Caption(
                Setting.plain(name),
                Setting.plain(note.zone()
                        .flatMap(study::zone)
                        .map(zone -> zone.name())
                        .orElse("")),
                Setting.plain(Purposes.words(note.purpose())),
                Words.say("trade.direction." + note.direction().key()),
                Words.say("trade.touch." + note.touch().key()),
                own(note));
    }

    private static String own(ColorNote note) {
        String words = Setting.plain(note.words());
        if (note.layer() == 1) {
            return words;
        }
        String layer = Words.say("cards.notes.layer", Integer.toString(note.layer()));
        return words.isEmpty() ? layer : Words.say("cards.notes.joined", layer, words);
    }

    /** All of it in one sentence. */
    String sentence(String place, MunsellValue value) {
        List<String> parts = new ArrayList<>();
        parts.add((place + " " + name).strip());
        parts.add(Words.say("cards.notes.value", value));
        parts.add(zone);
        parts.add(purpose);
        parts.add(Words.say("cards.notes.touch", direction, touch));
        parts.add(own);
        return String.join(", ", parts.stream().filter(part -> !part.isEmpty()).toList());
    }

    /**
     * The lines.
     *
     * @param first the width of the name's first line, which shares its place with the value
     * @param style of all but the name
     * @param width of all lines but the first
     * @param count how many there may be, 3 or more
     */
    List<String> lines(Setting setting, Style nameStyle, double first, Style style, double width, int count) {
        if (!own.isEmpty() && count > 3) {
            List<String> lines = lines(setting, nameStyle, first, style, width, count - 1, count > 4);
            lines.add(setting.shortened(own, width, style));
            return lines;
        }
        return lines(setting, nameStyle, first, style, width, count, count > 3);
    }

    private List<String> lines(
            Setting setting, Style nameStyle, double first, Style style, double width, int count, boolean spare) {
        List<String> strokes = strokes(setting, style, width, spare);
        boolean placed = !zone.isEmpty() || !purpose.isEmpty();
        int room = count - strokes.size() - 1;
        List<String> where = placed ? placed(setting, style, width, room > 1) : List.of();
        List<String> lines = new ArrayList<>(named(setting, nameStyle, first, width, 1 + room - where.size()));
        lines.addAll(where);
        lines.addAll(strokes);
        return lines;
    }

    /** Direction and touch in the fewest words. */
    String strokes() {
        return Words.say("cards.notes.touch.short", direction, touch);
    }

    private List<String> strokes(Setting setting, Style style, double width, boolean spare) {
        String whole = Words.say("cards.notes.touch", direction, touch);
        String brief = strokes();
        if (setting.fits(whole, width, style)) {
            return List.of(whole);
        }
        return setting.fits(brief, width, style) || !spare ? List.of(brief) : List.of(direction, touch);
    }

    /** The first line is the narrower; one line at least, even if there is no name, to stand beside the value. */
    private List<String> named(Setting setting, Style style, double first, double width, int most) {
        if (most > 1 && !setting.fits(name, first, style)) {
            Optional<List<String>> two = broken(setting, style, first, width);
            if (two.isPresent()) {
                return two.get();
            }
        }
        return List.of(setting.shortened(name, first, style));
    }

    /** The name on two lines, broken at the last space that the first line takes; empty if no space serves. */
    private Optional<List<String>> broken(Setting setting, Style style, double first, double width) {
        int space = name.lastIndexOf(' ');
        while (space > 0 && !setting.fits(name.substring(0, space), first, style)) {
            space = name.lastIndexOf(' ', space - 1);
        }
        return space <= 0
                ? Optional.empty()
                : Optional.of(
                        List.of(name.substring(0, space), setting.shortened(name.substring(space + 1), width, style)));
    }

    private List<String> placed(Setting setting, Style style, double width, boolean spare) {
        if (zone.isEmpty() || purpose.isEmpty()) {
            return List.of(setting.shortened(zone + purpose, width, style));
        }
        String joined = Words.say("cards.notes.joined", zone, purpose);
        if (setting.fits(joined, width, style)) {
            return List.of(joined);
        }
        if (spare) {
            return List.of(setting.shortened(zone, width, style), setting.shortened(purpose, width, style));
        }
        // The zone is shortened first, because the painter knows the zones, down to a quarter of the line.
        double rest = width - setting.width(Words.say("cards.notes.joined", "", purpose), style);
        String near = setting.shortened(zone, Math.max(rest, width / 4), style);
        return List.of(setting.shortened(Words.say("cards.notes.joined", near, purpose), width, style));
    }
}
