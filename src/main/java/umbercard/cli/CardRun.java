package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import umbercard.cards.Cards;
import umbercard.door.Finding;
import umbercard.door.Pages;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.Thumbnail;
import umbercard.readings.Evaluation;
import umbercard.store.FolderShelf;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Lays the cards of several studies, and then writes them: if one cannot be laid, none is written. */
final class CardRun {
    private static final String COLOR_NOTES = "color-notes";

    private final Cards cards = new Cards();
    private final Plugins<Reading> readings = Evaluation.find();
    private final Set<String> taken = new HashSet<>();
    private final List<Pages> laid = new ArrayList<>();
    private final List<Message> left = new ArrayList<>();

    /**
     * Refuses faces and kinds that there are none of.
     *
     * @throws WrongCall naming the first
     */
    void know(List<String> faces, List<String> kinds) {
        refuseUnknown("cli.wrong.face", faces, cards.faces());
        refuseUnknown("cli.wrong.kind", kinds, cards.writers());
    }

    private static void refuseUnknown(String key, List<String> wished, List<String> known) {
        wished.stream().filter(name -> !known.contains(name)).findFirst().ifPresent(name -> {
            throw new WrongCall(Message.of(key, name, String.join(", ", known)));
        });
    }

    /** Lays the chosen thumbnail's cards, as the study's settings say. The photograph is not decoded: no face shows it. */
    void lay(Opened opened) throws Trouble {
        Thumbnail chosen = opened.thumbnail(Optional.empty());
        Map<String, Finding> findings = opened.findings(readings, chosen, Optional.empty());
        List<String> faces = opened.study().cards().faces();
        List<Pages> pages = cards.lay(opened.study(), chosen, opened.design(chosen), findings, faces);
        pages.forEach(one -> laid.add(ownName(one)));
        if (faces.contains(COLOR_NOTES) && opened.study().notes().isEmpty()) {
            left.add(Message.of("cli.cards.no-notes", opened.name()));
        }
    }

    /** The pages under a name that no earlier study of this call has: a second one is called {@code 2-…}. */
    private Pages ownName(Pages pages) {
        String name = pages.name();
        for (int number = 2; !taken.add(name); number++) {
            name = number + "-" + pages.name();
        }
        return new Pages(
                name,
                pages.title(),
                pages.concept(),
                pages.width(),
                pages.height(),
                pages.sides(),
                pages.type(),
                pages.dpi());
    }

    /** Writes what was laid and prints each file. */
    void write(List<String> kinds, Path folder, PrintWriter out) throws IOException {
        for (String file : cards.write(laid, kinds, new FolderShelf(folder), () -> false)) {
            out.println(Words.say("cli.cards.written", folder.resolve(file).toString()));
        }
    }

    /** What was left out because the study has nothing for it, for a word to the painter. */
    List<Message> left() {
        return List.copyOf(left);
    }

    /** What failed on the way, for a word to the painter. */
    List<Plugins.SwitchedOff> switchedOff() {
        return Stream.concat(cards.switchedOff().stream(), readings.switchedOff().stream())
                .toList();
    }
}
