package umbercard.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import umbercard.cards.FileNames;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.door.Edit;
import umbercard.door.Reads;
import umbercard.kernel.Plugins;
import umbercard.model.Box;
import umbercard.model.edit.Sticks;
import umbercard.store.Boxes;
import umbercard.store.Samples;
import umbercard.words.Message;
import umbercard.words.Words;

/** Asks for the file of a box and gives the study a copy of it. Entries that could not be read are listed. */
final class BoxChoosing {
    private final Session session;
    private final Background background;
    private final Telling telling;
    private final Choosing choosing;
    private final Boxes boxes = new Boxes();
    private final Set<String> told = new HashSet<>();

    BoxChoosing(Session session, Background background, Telling telling, Choosing choosing) {
        this.session = session;
        this.background = background;
        this.telling = telling;
        this.choosing = choosing;
    }

    /** Asks whether to take a box file or the box that comes with the program, for a study that has none yet. */
    void askWhich() {
        switch (telling.ask("desk.box.which", "desk.box.file", "desk.box.kiln-yard", "desk.cancel")) {
            case 0 -> ask();
            case 1 -> takeKilnYard();
            default -> {}
        }
    }

    /** Takes the box that comes with the program. */
    void takeKilnYard() {
        background.run(
                Message.of("desk.work.open", Words.say("desk.box.kiln-yard")),
                task -> Samples.kilnYard(),
                this::take,
                telling::failed);
    }

    /** Asks for the file of a box and takes it. */
    void ask() {
        choosing.open("desk.choose.box", boxes.endings().toArray(String[]::new))
                .ifPresent(file -> background.run(
                        Message.of("desk.work.open", String.valueOf(file.getFileName())),
                        task -> boxes.read(file),
                        this::take,
                        telling::failed));
    }

    /** Asks where to save the study's box as a file of its own, so that other studies can take it. */
    void save() {
        session.study().box().ifPresentOrElse(this::saveAs, () -> telling.say(Words.say("desk.box.none-to-save")));
    }

    private void saveAs(Box box) {
        choosing.save("desk.choose.save-box", FileNames.safe(box.name()) + ".json", ".json", ".csv")
                .filter(file ->
                        !Files.exists(file) || telling.askReplace("desk.replace", String.valueOf(file.getFileName())))
                .ifPresent(file -> background.run(
                        Message.of("desk.work.save", String.valueOf(file.getFileName())),
                        task -> Boxes.write(box, file),
                        lost -> tellLost(file, lost),
                        telling::failed));
    }

    private void tellLost(Path file, List<Message> lost) {
        if (!lost.isEmpty()) {
            telling.list(
                    Words.say("desk.box.saved", String.valueOf(file.getFileName())),
                    lost.stream().map(Words::say).toList());
        }
    }

    private void take(Reads reads) {
        session.edit(new Edit(Message.of("desk.box.done"), Sticks.take(reads.box())));
        List<String> lines = lines(reads);
        if (!lines.isEmpty()) {
            telling.list(
                    Words.say(
                            "desk.box.read",
                            reads.box().name(),
                            reads.box().sticks().size(),
                            reads.faults().size()),
                    lines);
        }
        boxes.switchedOff().stream()
                .map(Plugins.SwitchedOff::name)
                .filter(told::add)
                .forEach(name -> telling.say(Words.say("desk.switched-off", name)));
    }

    /** What was left out, entry by entry, and what is to be remarked. */
    private static List<String> lines(Reads reads) {
        Stream<String> faults = reads.faults().stream()
                .map(fault -> Words.say("desk.box.fault", fault.line() > 0 ? 1 : 0, fault.line(), fault.reason()));
        return Stream.concat(faults, reads.remarks().stream().map(Words::say)).toList();
    }
}
