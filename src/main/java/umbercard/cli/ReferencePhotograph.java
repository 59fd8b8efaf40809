package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** The photograph that a study refers to. */
final class ReferencePhotograph {
    private ReferencePhotograph() {}

    /**
     * Reads it, and tells if it is not the one that the study was begun with.
     *
     * @param file the study's
     */
    static Picture read(Study study, Path file, Reference reference, PrintWriter err) throws Trouble {
        byte[] bytes = References.bytes(study, Optional.of(file));
        if (!References.matches(study, bytes)) {
            err.println(Words.say("cli.first-pass.other-photograph", reference.file(), file.toString()));
        }
        return PhotoReader.read(reference.file(), bytes, Progress.NONE);
    }

    /** The whole photograph; empty, without a word, if there is none or it cannot be read. */
    static Optional<Picture> atHand(Study study, Path file) {
        if (study.reference().isEmpty()) {
            return Optional.empty();
        }
        try {
            String name = study.reference().get().file();
            return Optional.of(PhotoReader.read(name, References.bytes(study, Optional.of(file)), Progress.NONE));
        } catch (Trouble notThere) {
            return Optional.empty();
        }
    }
}
