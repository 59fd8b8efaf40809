package umbercard.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import umbercard.kernel.EventThread;
import umbercard.model.Study;
import umbercard.words.Trouble;

/**
 * Studies in files: JSON (RFC 8259) that a person can read, of the format {@code umbercard-study}. What is written is read
 * back as an equal study. Fields that this version does not know are kept wherever a record has room for them.
 */
public final class StudyFile {
    private StudyFile() {}

    /**
     * Reads a study; its file stays as it is.
     *
     * @throws Trouble if the file is missing, is no study, is damaged, holds a wrong value, or is of a newer major version
     */
    public static Study read(Path file) throws Trouble {
        EventThread.refuse("reading a study");
        return parse(Json.text(file), file.toString());
    }

    /**
     * Writes a study, whole or not at all.
     *
     * @throws Trouble if the file cannot be written; it is then as it was
     */
    public static void write(Study study, Path file) throws Trouble {
        EventThread.refuse("saving a study");
        AtomicFile.write(file, text(study).getBytes(StandardCharsets.UTF_8));
    }

    /** The text of a study's file; the same for equal studies. */
    public static String text(Study study) {
        return Printed.text(StudyForm.write(Head.STUDY.begin(), study).node());
    }

    /**
     * The study of a file's text.
     *
     * @param fileName what to call the file where something is wrong
     * @throws Trouble as {@link #read(Path)}
     */
    public static Study parse(String text, String fileName) throws Trouble {
        Fields fields = Head.STUDY.open(Json.tree(text, fileName), fileName);
        try {
            return StudyForm.read(fields);
        } catch (Wrong wrong) {
            throw Head.STUDY.trouble(fileName, wrong);
        }
    }
}
