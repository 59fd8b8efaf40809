package umbercard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.model.Study;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** A study and its photograph, side by side in one folder. */
public final class StudyFolder {
    private StudyFolder() {}

    /**
     * Saves an untitled study and puts its photograph beside it, under its own name if that is free or already holds the
     * same photograph, otherwise under the next free one. No other photograph is ever overwritten.
     *
     * @param photographName a plain file name
     * @return the study as it was saved: it refers to the photograph beside it
     * @throws Trouble if either cannot be written
     */
    public static Study save(Study study, byte[] photograph, String photographName, Path studyFile) throws Trouble {
        EventThread.refuse("saving a study");
        Path beside = free(studyFile, photograph, photographName);
        if (!Files.exists(beside)) {
            AtomicFile.write(beside, photograph);
        }
        Study placed = refer(study, References.relativeName(studyFile, beside), References.sha256(photograph));
        StudyFile.write(placed, studyFile);
        return placed;
    }

    /**
     * Saves a study that has a file under another name; its photograph stays where it is and the study refers to it from
     * its new place.
     *
     * @return the study as it was saved
     * @throws Trouble if it cannot be written
     */
    public static Study saveAs(Study study, Path oldFile, Path newFile) throws Trouble {
        EventThread.refuse("saving a study");
        Study placed = study.withReference(study.reference()
                .map(reference -> References.file(reference.file(), Optional.of(oldFile))
                        .filter(Files::exists)
                        .map(photograph -> reference.withFile(References.relativeName(newFile, photograph)))
                        .orElse(reference)));
        StudyFile.write(placed, newFile);
        return placed;
    }

    private static Study refer(Study study, String name, String sha256) {
        return study.withReference(
                study.reference().map(reference -> reference.withFile(name).withSha256(sha256)));
    }

    /** A name beside the study that is free or holds these very bytes. */
    private static Path free(Path studyFile, byte[] photograph, String name) throws Trouble {
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String suffix = dot > 0 ? name.substring(dot) : "";
        Path beside = studyFile.resolveSibling(name);
        for (int number = 2; !isFreeOrSame(beside, photograph) || isSameFile(beside, studyFile); number++) {
            beside = studyFile.resolveSibling(stem + "-" + number + suffix);
        }
        return beside;
    }

    private static boolean isSameFile(Path beside, Path studyFile) {
        return beside.toAbsolutePath()
                .normalize()
                .equals(studyFile.toAbsolutePath().normalize());
    }

    private static boolean isFreeOrSame(Path file, byte[] bytes) throws Trouble {
        if (!Files.exists(file)) {
            return true;
        }
        try {
            return Files.isRegularFile(file)
                    && Files.size(file) == bytes.length
                    && Arrays.equals(Files.readAllBytes(file), bytes);
        } catch (IOException unreadable) {
            throw new Trouble(Message.of("store.unreadable", file.toString()), unreadable);
        }
    }
}
