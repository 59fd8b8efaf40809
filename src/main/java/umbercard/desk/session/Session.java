package umbercard.desk.session;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import umbercard.door.Edit;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.History;
import umbercard.picture.Picture;
import umbercard.words.Message;

/**
 * The study on the desk. Everything the window shows is asked of it, everything the painter does goes through it. To be
 * used on the event thread only; listeners are told there, in the order they came.
 */
public final class Session {

    /** What changed. */
    public enum Change {
        /** The study: an edit, undo, redo, or another study. */
        STUDY,
        /** What the study would be if the gesture under way were finished. */
        PREVIEW,
        /** Which thumbnail lies on the card. */
        SHOWN,
        /** The photograph. */
        PHOTOGRAPH,
        /** The file, or whether it is up to date. */
        FILE,
        /** How things are said: another numbering of values. */
        WORDS
    }

    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
    private History<Message> history;
    private final Map<String, String> settings = new HashMap<>();
    private long opening;
    private Optional<Path> file;
    private String shown;
    private Optional<Study> asIf = Optional.empty();
    private Optional<Picture> photograph = Optional.empty();
    private Optional<Picture> firstSight = Optional.empty();

    /** Opens a study; without a file it is an untitled one. */
    public Session(Study study, Optional<Path> file) {
        this.history = new History<>(study);
        this.file = file;
        this.shown = firstShown(study);
    }

    private static String firstShown(Study study) {
        return study.chosenThumbnail().map(Thumbnail::id).orElse("");
    }

    /** Tells {@code listener} of every change from now on, after it was made. */
    public void listen(Consumer<Change> listener) {
        listeners.add(listener);
    }

    private void tell(Change... changes) {
        for (Change change : changes) {
            listeners.forEach(listener -> listener.accept(change));
        }
    }

    /** Puts another study on the desk. */
    public void open(Study study, Optional<Path> from) {
        opening++;
        history = new History<>(study);
        file = from;
        shown = firstShown(study);
        asIf = Optional.empty();
        photograph = Optional.empty();
        firstSight = Optional.empty();
        tell(Change.STUDY, Change.SHOWN, Change.PHOTOGRAPH, Change.FILE);
    }

    /** Which opening of a study this is: work begun during another one belongs to another study. */
    public long opening() {
        return opening;
    }

    public Study study() {
        return history.study();
    }

    /** The study as it would be if the gesture under way were finished; the study itself when none is. */
    public Study seen() {
        return asIf.orElseGet(this::study);
    }

    /** The thumbnail on the card, as it is seen; empty only where the study has none. */
    public Optional<Thumbnail> thumbnail() {
        return seen().thumbnail(shown);
    }

    /** What the painter has set for the instruments, by key; changes show there at once. */
    public Map<String, String> settings() {
        return settings;
    }

    /** The id of the thumbnail on the card; empty text where the study has none. */
    public String shown() {
        return shown;
    }

    /** Puts a thumbnail on the card; one that the study does not have is left alone. */
    public void show(String thumbnail) {
        if (!thumbnail.equals(shown) && study().thumbnail(thumbnail).isPresent()) {
            shown = thumbnail;
            asIf = Optional.empty();
            tell(Change.SHOWN);
        }
    }

    /** Makes an edit; what was previewed ends. */
    public void edit(Edit edit) {
        asIf = Optional.empty();
        history.edit(edit.name(), edit.change(), edit.joinsWith());
        settle();
    }

    /** Shows what the study would be; empty ends it. */
    public void preview(Optional<Study> study) {
        if (!study.equals(asIf)) {
            asIf = study;
            tell(Change.PREVIEW);
        }
    }

    /** Takes the last edit back, if there is one. */
    public void undo() {
        asIf = Optional.empty();
        history.undo();
        settle();
    }

    /** Makes the edit last taken back again, if there is one. */
    public void redo() {
        asIf = Optional.empty();
        history.redo();
        settle();
    }

    private void settle() {
        boolean gone = study().thumbnail(shown).isEmpty();
        if (gone) {
            shown = firstShown(study());
        }
        tell(Change.STUDY, Change.FILE);
        if (gone) {
            tell(Change.SHOWN);
        }
    }

    /** Tells that things are said in other words from now on, so that what stands on the desk is said anew. */
    public void sayAnew() {
        tell(Change.WORDS);
    }

    /** The name of the edit that {@link #undo()} takes back. */
    public Optional<Message> undoable() {
        return history.undoable();
    }

    /** The name of the edit that {@link #redo()} makes again. */
    public Optional<Message> redoable() {
        return history.redoable();
    }

    /** Whether the study differs from its file, or from what was opened. */
    public boolean isChanged() {
        return history.isChanged();
    }

    /** The study's file; empty for an untitled one. */
    public Optional<Path> file() {
        return file;
    }

    /**
     * Tells that a study was written; nothing is done if another one lies on the desk by now.
     *
     * @param during the {@link #opening()} in which writing began
     * @param study as it was on the desk then
     * @param written as it stands in the file: the same but for where the photograph is found
     */
    public void saved(long during, Study study, Study written, Path path) {
        if (during != opening) {
            return;
        }
        if (study().equals(study)) {
            history.replace(written);
        }
        history.saved(written);
        file = Optional.of(path);
        tell(Change.STUDY, Change.FILE);
    }

    /** The whole upright photograph at working size, once it is decoded. */
    public Optional<Picture> photograph() {
        return photograph;
    }

    /** What there is to see of the photograph: itself, or until it is decoded its first sight, much smaller. */
    public Optional<Picture> sight() {
        return photograph.or(() -> firstSight);
    }

    /** Puts a first sight of the photograph on the desk, unless the photograph itself is there already. */
    public void firstSight(Picture small) {
        if (photograph.isEmpty()) {
            firstSight = Optional.of(small);
            tell(Change.PHOTOGRAPH);
        }
    }

    /** Puts the decoded photograph on the desk, or takes it away. */
    public void photograph(Optional<Picture> decoded) {
        photograph = decoded;
        firstSight = Optional.empty();
        tell(Change.PHOTOGRAPH);
    }
}
