package umbercard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import umbercard.color.Ciede2000;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.model.Box;
import umbercard.model.Stick;
import umbercard.rubbed.Learned;
import umbercard.rubbed.RubbedNotes;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Puts the colors of a box's sticks right from a photograph of the printed card they were rubbed on. */
final class RubbedSticks {
    @Option(names = "--rubbed", required = true, paramLabel = "PHOTO", descriptionKey = "cli.help.box.rubbed")
    private Optional<Path> photo = Optional.empty();

    @Option(names = "--study", required = true, paramLabel = "STUDY", descriptionKey = "cli.help.box.study")
    private Path study = Path.of("");

    @Option(
            names = "--card-corners",
            required = true,
            paramLabel = "PLACES",
            descriptionKey = "cli.help.box.card-corners")
    private Places corners = Places.NONE;

    @Option(names = "--card-number", paramLabel = "N", descriptionKey = "cli.help.box.card-number")
    private CardNumber card = new CardNumber(1);

    boolean isAsked() {
        return photo.isPresent();
    }

    private String file() {
        return photo.map(Path::toString).orElse("");
    }

    /** A box with the colors learned, and what was learned. */
    record Righted(Box box, Learned learned, List<Stick> notInBox) {

        /** Lines for the painter. */
        List<String> lines() {
            List<String> lines = new ArrayList<>(Columns.of(learned.told().stream()
                    .map(stick -> List.of(
                            stick.stick().title(),
                            Words.say(
                                    "cli.box.rubbed.value",
                                    MunsellValue.of(stick.stick().color()),
                                    MunsellValue.of(stick.color())),
                            Words.say("cli.box.rubbed.difference", difference(stick))))
                    .toList()));
            learned.untold()
                    .forEach(stick -> lines.add(Words.say(
                            "cli.box.rubbed." + stick.look().key(),
                            stick.stick().title())));
            notInBox.forEach(stick -> lines.add(Words.say("cli.box.rubbed.not-in-box", stick.title())));
            return lines;
        }

        private static double difference(Learned.OfStick stick) {
            return Ciede2000.difference(stick.stick().color(), stick.color());
        }

        /** With stable keys, for scripts. */
        Map<String, Object> json() {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("sticks", learned.sticks().stream().map(Righted::json).toList());
            json.put("notInBox", notInBox.stream().map(Stick::id).toList());
            json.put("graysLeftOut", learned.graysLeftOut());
            return json;
        }

        private static Map<String, Object> json(Learned.OfStick stick) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("id", stick.stick().id());
            json.put("look", stick.look().key());
            json.put("before", lab(stick.stick().color()));
            json.put("now", lab(stick.color()));
            json.put("ciede2000", difference(stick));
            return json;
        }

        private static List<Double> lab(Lab color) {
            return List.of(color.l(), color.a(), color.b());
        }
    }

    Righted right(Box box) throws IOException {
        if (corners.points().size() != 4) {
            throw new WrongCall(Message.of("cli.wrong.card-corners"));
        }
        Opened opened = Opened.read(study);
        List<RubbedNotes> cards = RubbedNotes.cardsOf(opened.study());
        if (card.of() > cards.size()) {
            throw new Trouble(Message.of("cli.trouble.no-color-card", opened.name(), cards.size(), card.of()));
        }
        PhotoFile read = PhotoFile.read(photo.orElseThrow());
        return righted(box, cards.get(card.of() - 1).read(file(), read.picture(), corners.times(read.scale())));
    }

    /** A stick of the box is one of the card's if it has its id and its name: ids alone may be those of another box. */
    private static Righted righted(Box box, Learned learned) {
        Map<Known, Learned.OfStick> told = learned.told().stream()
                .collect(Collectors.toMap(stick -> Known.of(stick.stick()), Function.identity()));
        Map<Known, Stick> known =
                box.sticks().stream().collect(Collectors.toMap(Known::of, Function.identity(), (one, other) -> one));
        List<Stick> sticks = box.sticks().stream()
                .map(stick -> Optional.ofNullable(told.get(Known.of(stick)))
                        .map(now -> stick.withColor(now.color()))
                        .orElse(stick))
                .toList();
        return new Righted(
                box.withSticks(sticks),
                new Learned(
                        learned.sticks().stream()
                                .flatMap(
                                        stick -> Optional.ofNullable(known.get(Known.of(stick.stick())))
                                                .map(inBox -> stick.of(inBox))
                                                .stream())
                                .toList(),
                        learned.graysLeftOut()),
                learned.sticks().stream()
                        .map(Learned.OfStick::stick)
                        .filter(stick -> !known.containsKey(Known.of(stick)))
                        .toList());
    }

    private record Known(String id, String title) {
        static Known of(Stick stick) {
            return new Known(stick.id(), stick.title());
        }
    }
}
