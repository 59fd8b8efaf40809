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
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Lays the cards of several studies, and then writes them: if one cannot be laid, none is written. */
final class CardRun {
    private final Cards cards = new Cards();
    private final Plugins<Reading> readings = Evaluation.find();
    private final Set<String> taken = new HashSet<>();
    private final List<Pages> laid = new ArrayList<>();

    /** Lays the chosen thumbnail's cards, as the study's settings say. */
    void lay(Opened opened) throws Trouble {
        Thumbnail chosen = opened.thumbnail(Optional.empty());
        Map<String, Finding> findings = opened.findings(readings, chosen);
        cards.lay(
                        opened.study(),
                        chosen,
                        opened.design(chosen),
                        findings,
                        opened.study().cards().faces())
                .forEach(pages -> laid.add(ownName(pages)));
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

    /** What failed on the way, for a word to the painter. */
    List<Plugins.SwitchedOff> switchedOff() {
        return Stream.concat(cards.switchedOff().stream(), readings.switchedOff().stream())
                .toList();
    }
}
