package umbercard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.photo.FramedView;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** The part of a study's photograph that lies in a frame. */
final class FramedReference {
    private FramedReference() {}

    /**
     * Reads and frames it, and tells if it is not the photograph that the study was begun with.
     *
     * @param file the study's
     * @param height how many rows the picture has
     */
    static Picture of(Study study, Path file, Reference reference, Frame frame, int height, PrintWriter err)
            throws Trouble {
        byte[] bytes = References.bytes(study, Optional.of(file));
        if (!References.matches(study, bytes)) {
            err.println(Words.say("cli.first-pass.other-photograph", reference.file(), file.toString()));
        }
        Picture photograph = PhotoReader.read(reference.file(), bytes, Progress.NONE);
        return FramedView.of(photograph, frame, study.ratio(), height);
    }
}
