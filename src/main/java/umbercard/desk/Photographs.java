package umbercard.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
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
                task -> PhotoReader.read(file, progress(task)),
                then,
                telling::failed);
    }

    /** Shows a picture already decoded. */
    void shown(PhotographSource from, Picture picture) {
        source = from;
        session.photograph(Optional.of(picture));
    }

    /** Decodes and shows a photograph that the program or the study carries. */
    void show(Carried carried) {
        source = carried;
        background.run(
                Message.of("desk.work.photograph", carried.name()),
                task -> PhotoReader.read(carried.name(), carried.bytes().all(), progress(task)),
                picture -> shown(carried, picture),
                telling::failed);
    }

    /** Finds, decodes and shows the photograph of a study read from a file. */
    void find(Study study, Path file) {
        source = new None();
        study.reference().ifPresent(reference -> {
            source = References.file(reference.file(), Optional.of(file))
                    .filter(Files::isRegularFile)
                    .<PhotographSource>map(InFile::new)
                    .orElseGet(None::new);
            background.run(
                    Message.of("desk.work.photograph", reference.file()),
                    task -> PhotoReader.read(
                            reference.file(), References.bytes(study, Optional.of(file)), progress(task)),
                    picture -> shown(source, picture),
                    telling::failed);
        });
    }

    /**
     * Saves the study so that it finds its photograph from its new place; one that the program carries is written beside it.
     *
     * @return the study as it was saved
     */
    Study save(Study study, Path file) throws IOException {
        if (study.reference().isPresent() && source instanceof Carried carried) {
            return StudyFolder.save(study, carried.bytes().all(), carried.name(), file);
        }
        Study placed = study;
        if (source instanceof InFile inFile) {
            Path photograph = inFile.file();
            placed = study.withReference(
                    study.reference().map(reference -> reference.withFile(References.relativeName(file, photograph))));
        }
        StudyFile.write(placed, file);
        return placed;
    }

    private static Progress progress(Task task) {
        return new Progress() {
            @Override
            public void at(double share) {
                task.at(share);
            }

            @Override
            public boolean stopped() {
                return task.stopped();
            }
        };
    }
}
