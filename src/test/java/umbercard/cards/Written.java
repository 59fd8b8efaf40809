package umbercard.cards;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Finding.Verdict;
import umbercard.door.Pages;
import umbercard.door.Shelf;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Lays studies and writes them into memory, as a caller of {@link Cards} does. */
public final class Written implements Shelf {
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    /** The files of the faces, by name, in the order they were written. */
    public static Map<String, byte[]> files(Study study, String... faces) throws IOException {
        Cards cards = new Cards();
        Written shelf = new Written();
        cards.write(lay(cards, study, faces), List.of("svg"), shelf, () -> false);
        return shelf.files;
    }

    /** The sides of the faces as they are read back. */
    public static List<WrittenCard> cards(Study study, String... faces) throws IOException {
        return files(study, faces).values().stream().map(WrittenCard::read).toList();
    }

    static List<Pages> lay(Cards cards, Study study, String... faces) throws Trouble {
        return cards.lay(study, thumbnail(study), design(study), findings(0.64), List.of(faces));
    }

    public static Thumbnail thumbnail(Study study) {
        return study.chosenThumbnail().orElseThrow();
    }

    public static Design design(Study study) {
        return Fold.of(thumbnail(study), study.ratio());
    }

    static Map<String, Finding> findings(double height) {
        Figure figure = new Figure("height", height, "share");
        return Map.of(
                "horizon-height",
                new Finding(Verdict.HOLDS, List.of(figure), Message.of("readings.horizon-height"), List.of()));
    }

    Map<String, byte[]> files() {
        return files;
    }

    @Override
    public OutputStream open(String name) {
        return new ByteArrayOutputStream() {
            @Override
            public void close() {
                files.put(name, toByteArray());
            }
        };
    }
}
