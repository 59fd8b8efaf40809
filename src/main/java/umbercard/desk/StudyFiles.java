package umbercard.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import umbercard.cards.FileNames;
import umbercard.desk.PhotographSource.Carried;
import umbercard.desk.PhotographSource.InFile;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.model.Study;
import umbercard.store.Samples;
import umbercard.store.StudyFile;
import umbercard.words.Message;
import umbercard.words.Words;

/** Opening, beginning and saving studies from the desk. Files are read and written in the background; nothing is lost. */
final class StudyFiles {
    /** What names of studies end in. */
    static final String ENDING = ".json";

    private final Session session;
    private final Background background;
    private final Telling telling;
    private final Choosing choosing;
    private final Photographs photographs;
    private final Replacing replacing;
    private Optional<FileTime> known = Optional.empty();

    StudyFiles(Session session, Background background, Telling telling, Choosing choosing, Photographs photographs) {
        this.session = session;
        this.background = background;
        this.telling = telling;
        this.choosing = choosing;
        this.photographs = photographs;
        this.replacing = new Replacing(session, photographs);
    }

    /** Asks for a study and puts it on the desk. */
    void open() {
        leaving(() -> choosing.open("desk.choose.study", "json").ifPresent(this::open));
    }

    /** Puts the study in the file in the place of the one on the desk, after asking about changes. */
    void openInstead(Path file) {
        leaving(() -> open(file));
    }

    /** Puts the study in the file on the desk, and then its photograph. */
    void open(Path file) {
        Study left = session.study();
        background.run(
                Message.of("desk.work.open", name(file)),
                task -> new InFolder(time(file), StudyFile.read(file)),
                read -> leavingSince(left, () -> {
                    session.open(read.study(), Optional.of(file));
                    known = read.time();
                    photographs.find(read.study(), file);
                }),
                telling::failed);
    }

    /** Puts the packed sample on the desk as an untitled copy. */
    void openKilnHill() {
        leaving(this::showKilnHill);
    }

    void showKilnHill() {
        Study left = session.study();
        background.run(
                Message.of("desk.work.open", Words.say("desk.kiln-hill")),
                task -> Samples.kilnHill(),
                sample -> leavingSince(left, () -> {
                    session.open(sample.study(), Optional.empty());
                    photographs.show(
                            new Carried(sample.photographName(), new PhotographSource.Bytes(sample.photograph())));
                }),
                telling::failed);
    }

    /** Begins a study from a photograph: the photograph is read first, then the surface is asked for. */
    void begin() {
        leaving(() -> choosing.photograph().ifPresent(this::begin));
    }

    private void begin(Path photograph) {
        Study left = session.study();
        photographs.read(
                photograph,
                picture -> NewStudy.ask(choosing.window(), photograph, picture)
                        .ifPresent(study -> leavingSince(left, () -> {
                            session.open(study, Optional.empty());
                            photographs.shown(new InFile(photograph), picture);
                        })));
    }

    /** Asks what to do with a photograph that was pasted or dropped: begin a study, or replace the photograph of this one. */
    void arrived(Pasting.Arrived photograph) {
        boolean begins = session.study().thumbnails().isEmpty();
        int answer =
                begins ? 0 : telling.ask("desk.paste.ask", "desk.paste.begin", "desk.paste.replace", "desk.cancel");
        if (answer == 0) {
            leaving(() -> NewStudy.ask(choosing.window(), photograph.name(), photograph.picture())
                    .ifPresent(study -> {
                        session.open(study, Optional.empty());
                        photographs.shown(photograph.source(), photograph.picture());
                    }));
        } else if (answer == 1) {
            replacing.replace(photograph);
        }
    }

    /** Saves to the study's own file; an untitled study is asked where, and a file changed by others whether to replace it. */
    void save(Runnable then) {
        session.file()
                .ifPresentOrElse(
                        file -> background.run(
                                Message.of("desk.work.save", name(file)),
                                task -> time(file),
                                now -> {
                                    boolean changed = now.isPresent() && known.isPresent() && !now.equals(known);
                                    if (!changed || telling.askReplace("desk.changed", name(file))) {
                                        write(file, then);
                                    }
                                },
                                telling::failed),
                        () -> saveAs(then));
    }

    /** When the file was last written, if it is there. */
    private static Optional<FileTime> time(Path file) throws IOException {
        return Files.exists(file) ? Optional.of(Files.getLastModifiedTime(file)) : Optional.empty();
    }

    /** A study as it stands in its file, and when that was last written. */
    private record InFolder(Optional<FileTime> time, Study study) {}

    /** Asks where, and saves there. */
    void saveAs(Runnable then) {
        String suggested = session.file()
                .map(StudyFiles::name)
                .orElseGet(() -> FileNames.safe(session.study().title()) + ENDING);
        choosing.save("desk.choose.save", suggested, ENDING).ifPresent(file -> {
            if (!Files.exists(file)
                    || session.file().map(file::equals).orElse(false)
                    || telling.askReplace("desk.replace", name(file))) {
                write(file, then);
            }
        });
    }

    private void write(Path file, Runnable then) {
        Study study = session.study();
        long opening = session.opening();
        Background.Work<Study> saving = photographs.saving(study, file);
        background.run(
                Message.of("desk.work.save", name(file)),
                task -> {
                    Study placed = saving.run(task);
                    return new InFolder(time(file), placed);
                },
                read -> {
                    if (session.opening() == opening) {
                        session.saved(opening, study, read.study(), file);
                        known = read.time();
                        photographs.saved(read.study(), file);
                    }
                    then.run();
                },
                telling::failed);
    }

    /** Closes the window, after asking about changes that are not saved, once all work under way is done. */
    void close() {
        leaving(() -> background.afterAll(
                Message.of("desk.work.close"), () -> choosing.window().dispose()));
    }

    /** Asks again if the painter went on with the study while another was being read. */
    private void leavingSince(Study left, Runnable then) {
        if (session.study().equals(left)) {
            then.run();
        } else {
            leaving(then);
        }
    }

    private void leaving(Runnable then) {
        if (!session.isChanged()) {
            then.run();
            return;
        }
        switch (telling.askUnsaved(session.study().title())) {
            case SAVE -> save(then);
            case LEAVE -> then.run();
            case STAY -> {}
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
