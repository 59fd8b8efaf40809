package umbercard.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import umbercard.desk.PhotographSource.Carried;
import umbercard.desk.PhotographSource.InFile;
import umbercard.desk.PhotographSource.None;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.desk.work.Task;
import umbercard.model.Study;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.store.StudyFile;
import umbercard.store.StudyFolder;
import umbercard.words.Message;
import umbercard.words.Words;

/** The photograph on the desk: decoding it in the background, and keeping it findable when the study moves. */
final class Photographs {
    private final Session session;
    private final Background background;
    private final Telling telling;
    private PhotographSource source = new None();

    Photographs(Session session, Background background, Telling telling) {
        this.session = session;
        this.background = background;
        this.telling = telling;
    }

    /** Decodes a file and hands the picture on; nothing on the desk changes. */
    void read(Path file, Consumer<Picture> then) {
        background.run(
                Message.of("desk.work.photograph", String.valueOf(file.getFileName())),
                task -> Read.by(task, small -> {}, looking -> PhotoReader.read(file, looking)),
                read -> {
                    read.said().ifPresent(telling::say);
                    then.accept(read.picture());
                },
                telling::failed);
    }

    /** Shows a picture already decoded. */
    void shown(PhotographSource from, Picture picture) {
        source = from;
        session.photograph(Optional.of(picture));
    }

    /** Where the photograph on the desk comes from. */
    PhotographSource source() {
        return source;
    }

    /** Decodes and shows a photograph that was on the desk before, or takes away the one that is. */
    void showAgain(PhotographSource from) {
        if (from instanceof Carried carried) {
            show(carried);
        } else if (from instanceof InFile inFile) {
            Path file = inFile.file();
            decode(from, String.valueOf(file.getFileName()), () -> PhotoReader.bytes(file));
        } else {
            source = from;
            session.photograph(Optional.empty());
            session.file().ifPresent(file -> find(session.study(), file));
        }
    }

    /** Decodes and shows a photograph that the program carries. */
    void show(Carried carried) {
        decode(carried, carried.name(), () -> carried.bytes().all());
    }

    /** Finds, decodes and shows the photograph of a study read from a file. */
    void find(Study study, Path file) {
        source = new None();
        study.reference().ifPresent(reference -> {
            PhotographSource found = References.file(reference.file(), Optional.of(file))
                    .filter(Files::isRegularFile)
                    .<PhotographSource>map(InFile::new)
                    .orElseGet(None::new);
            decode(found, reference.file(), () -> References.bytes(study, Optional.of(file)));
        });
    }

    private void decode(PhotographSource from, String name, Callable<byte[]> bytes) {
        long opening = session.opening();
        source = from;
        background.run(
                Message.of("desk.work.photograph", name),
                task -> Read.by(
                        task,
                        small -> SwingUtilities.invokeLater(() -> glimpsed(small, opening)),
                        looking -> PhotoReader.read(name, bytes.call(), looking)),
                read -> {
                    if (session.opening() == opening) {
                        shown(from, read.picture());
                        read.said().ifPresent(telling::say);
                    }
                },
                telling::failed);
    }

    /**
     * How to save the study so that it finds its photograph from its new place; one that the program carries is written
     * beside it. The work gives the study as it was saved. On the event thread: the work knows the photograph of now.
     */
    Background.Work<Study> saving(Study study, Path file) {
        PhotographSource from = source;
        return task -> {
            if (study.reference().isPresent() && from instanceof Carried carried) {
                return StudyFolder.save(study, carried.bytes().all(), carried.name(), file);
            }
            Study placed = from instanceof InFile inFile ? References.named(study, file, inFile.file()) : study;
            StudyFile.write(placed, file);
            return placed;
        };
    }

    /** Tells that the study stands in its file: a carried photograph now lies beside it. */
    void saved(Study study, Path file) {
        if (source instanceof Carried) {
            study.reference()
                    .flatMap(reference -> References.file(reference.file(), Optional.of(file)))
                    .ifPresent(beside -> source = new InFile(beside));
        }
    }

    private void glimpsed(Picture small, long opening) {
        if (session.opening() == opening) {
            session.firstSight(small);
        }
    }

    /** Tells the task how far reading is, and stops when it is; takes whole photographs only. */
    static Progress progress(Task task) {
        return new Following(task);
    }

    /** A photograph that was read, and what is to be said about it. */
    private record Read(Picture picture, Optional<String> said) {
        /** Reads by a task, handing on the first sight; a part of a broken photograph is taken, and what is said of it kept. */
        static Read by(Task task, Consumer<Picture> firstSight, Reading reading) throws Exception {
            Looking looking = new Looking(task, firstSight);
            Picture picture = reading.read(looking);
            return new Read(picture, looking.said);
        }
    }

    @FunctionalInterface
    private interface Reading {
        Picture read(Progress progress) throws Exception;
    }

    /** A task that goes along with reading. */
    private static class Following implements Progress {
        private final Task task;

        Following(Task task) {
            this.task = task;
        }

        @Override
        public void at(double share) {
            task.at(share);
        }

        @Override
        public boolean stopped() {
            return task.stopped();
        }
    }

    /** The desk looking on while a photograph is read. */
    private static final class Looking extends Following {
        private final Consumer<Picture> firstSight;
        private Optional<String> said = Optional.empty();

        Looking(Task task, Consumer<Picture> firstSight) {
            super(task);
            this.firstSight = firstSight;
        }

        @Override
        public void firstSight(Picture small) {
            firstSight.accept(small);
        }

        @Override
        public boolean takesPart(Message why) {
            said = Optional.of(Words.say(why));
            return true;
        }
    }
}
