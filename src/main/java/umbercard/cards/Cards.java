package umbercard.cards;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import umbercard.cards.type.Roboto;
import umbercard.door.Deck;
import umbercard.door.Drawing;
import umbercard.door.Face;
import umbercard.door.Finding;
import umbercard.door.Pages;
import umbercard.door.Ranked;
import umbercard.door.Shelf;
import umbercard.door.Type;
import umbercard.door.Writer;
import umbercard.geometry.Size;
import umbercard.kernel.EventThread;
import umbercard.kernel.Plugins;
import umbercard.kernel.Plugins.SwitchedOff;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.words.Message;
import umbercard.words.Trouble;

/**
 * Lays a study on cards and writes them. Faces and writers are plug-ins: one that fails is switched off and reported, and
 * the others go on.
 */
public final class Cards {
    /** For writers that make pixels: what a good printer resolves. */
    private static final double DPI = 300;

    private final Plugins<Face> faces;
    private final Plugins<Writer> writers;
    private final Type type;

    /** With the faces and writers that are found, set in the program's typeface. */
    public Cards() {
        this(Plugins.find(Face.class, Ranked.ORDER), Plugins.find(Writer.class, Ranked.ORDER), Roboto.type());
    }

    /** With these faces, writers and type. */
    public Cards(Plugins<Face> faces, Plugins<Writer> writers, Type type) {
        this.faces = faces;
        this.writers = writers;
        this.type = type;
    }

    /** The ids of the faces that are on, in order. */
    public List<String> faces() {
        return faces.on().stream().map(Face::id).toList();
    }

    /** The ids of the writers that are on, in order. */
    public List<String> writers() {
        return writers.on().stream().map(Writer::id).toList();
    }

    /** The faces and writers that failed in this session, and why. */
    public List<SwitchedOff> switchedOff() {
        return Stream.concat(faces.switchedOff().stream(), writers.switchedOff().stream())
                .toList();
    }

    /**
     * Lays the faces, in order, on cards of the study's size. A face that has nothing to show is left out.
     *
     * @param findings the thumbnail's readings, by id
     * @param faceIds the faces wanted; one named twice is laid once
     * @throws Trouble if a face is not known, cannot lay the study on a card of this size, or none has anything to show
     */
    public List<Pages> lay(
            Study study, Thumbnail thumbnail, Design design, Map<String, Finding> findings, List<String> faceIds)
            throws Trouble {
        Size card = study.cards().card().turned(study.cards().landscape());
        Deck deck = new Deck(study, thumbnail, design, findings, card.width(), card.height());
        List<Pages> pages = new ArrayList<>();
        for (Face face : chosen(faces.on(), faceIds, "cards.face.unknown")) {
            List<Consumer<Drawing>> sides = sides(face, deck);
            if (!sides.isEmpty()) {
                pages.add(new Pages(
                        FileNames.safe(study.title()) + "-" + face.id(),
                        study.title() + ": " + Faces.name(face.id()),
                        study.concept(),
                        card.width(),
                        card.height(),
                        sides,
                        type,
                        DPI));
            }
        }
        if (pages.isEmpty()) {
            throw new Trouble(Message.of("cards.nothing", study.title()));
        }
        return List.copyOf(pages);
    }

    /**
     * Writes the pages with each writer; off the event thread.
     *
     * @param writerIds the writers wanted, for example {@code svg}
     * @param stopped whether nobody waits any more: no further file is begun then
     * @return the names of the files, in the order they were written
     * @throws Trouble if a writer is not known
     * @throws IOException if the shelf takes no file
     */
    public List<String> write(List<Pages> pages, List<String> writerIds, Shelf shelf, BooleanSupplier stopped)
            throws IOException {
        EventThread.refuse("writing cards");
        List<String> names = new ArrayList<>();
        Shelf noting = name -> {
            names.add(name);
            return shelf.open(name);
        };
        for (Writer writer : chosen(writers.on(), writerIds, "cards.writer.unknown")) {
            for (Pages one : pages) {
                Optional<Optional<IOException>> asked = writers.ask(writer, w -> failure(w, one, noting, stopped));
                if (asked.flatMap(failed -> failed).isPresent()) {
                    throw asked.get().get();
                }
            }
        }
        return List.copyOf(names);
    }

    private static Optional<IOException> failure(Writer writer, Pages pages, Shelf shelf, BooleanSupplier stopped) {
        try {
            writer.write(pages, shelf, stopped);
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(failure);
        }
    }

    private List<Consumer<Drawing>> sides(Face face, Deck deck) throws Trouble {
        Laid laid = faces.ask(face, f -> lay(f, deck)).orElse(new Laid(List.of(), Optional.empty()));
        if (laid.trouble().isPresent()) {
            throw laid.trouble().get();
        }
        return laid.sides();
    }

    /** What a face gave: sides, or the reason why there are none. */
    private record Laid(List<Consumer<Drawing>> sides, Optional<Trouble> trouble) {}

    private Laid lay(Face face, Deck deck) {
        try {
            List<Consumer<Drawing>> sides = face.lay(deck, Looks.of(face), type);
            return new Laid(sides.stream().map(Recording::of).toList(), Optional.empty());
        } catch (Trouble trouble) {
            return new Laid(List.of(), Optional.of(trouble));
        }
    }

    private static <P extends Ranked> List<P> chosen(List<P> all, List<String> ids, String unknown) throws Trouble {
        List<P> chosen = new ArrayList<>();
        for (String id : ids.stream().distinct().toList()) {
            Optional<P> found = all.stream().filter(one -> one.id().equals(id)).findFirst();
            if (found.isEmpty()) {
                String known = String.join(", ", all.stream().map(Ranked::id).toList());
                throw new Trouble(Message.of(unknown, id, known));
            }
            chosen.add(found.get());
        }
        return chosen;
    }
}
