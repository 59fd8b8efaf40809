package umbercard.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** Finds the photograph that a study refers to, and names one for a study to refer to. */
public final class References {
    private References() {}

    /**
     * The bytes of a study's photograph: the file it names, sought from the study's folder; where that is not there, the
     * copy that the study carries. Another photograph than the one named by {@link Reference#sha256()} is no error here; see
     * {@link #matches(Study, byte[])}.
     *
     * @param studyFile where the study was read from; empty for an untitled one
     * @throws Trouble if there is no reference, or neither a file nor a copy of it that can be read
     */
    public static byte[] bytes(Study study, Optional<Path> studyFile) throws Trouble {
        EventThread.refuse("reading a photograph");
        Reference reference =
                study.reference().orElseThrow(() -> new Trouble(Message.of("store.no-reference", study.title())));
        Optional<Path> file = file(reference.file(), studyFile).filter(Files::isRegularFile);
        if (file.isPresent()) {
            try {
                return Files.readAllBytes(file.get());
            } catch (IOException unreadable) {
                if (reference.copy().isEmpty()) {
                    throw new Trouble(Message.of("store.unreadable", file.get().toString()), unreadable);
                }
            }
        }
        String name = file(reference.file(), studyFile).map(Path::toString).orElse(reference.file());
        Reference.Copy copy = reference.copy().orElseThrow(() -> new Trouble(Message.of("store.no-photograph", name)));
        try {
            return Base64.getDecoder().decode(copy.base64());
        } catch (IllegalArgumentException damaged) {
            throw new Trouble(Message.of("store.damaged-copy", name), damaged);
        }
    }

    /** Where the photograph should lie; empty if its name is none here, or if it is sought from a file that is not there. */
    public static Optional<Path> file(String name, Optional<Path> studyFile) {
        try {
            Path path = Path.of(name);
            if (name.isEmpty() || path.isAbsolute()) {
                return name.isEmpty() ? Optional.empty() : Optional.of(path);
            }
            return studyFile.map(file -> file.resolveSibling(path).normalize());
        } catch (InvalidPathException foreign) {
            return Optional.empty();
        }
    }

    /** Whether the bytes are those of the photograph that the study was begun with; also if it does not say. */
    public static boolean matches(Study study, byte[] photograph) {
        return study.reference()
                .map(Reference::sha256)
                .filter(sum -> !sum.isEmpty())
                .map(sum -> sum.equalsIgnoreCase(sha256(photograph)))
                .orElse(true);
    }

    /** How a study's file refers to a photograph: relative to the study's folder, with forward slashes on every system. */
    public static String relativeName(Path studyFile, Path photograph) {
        Path folder = studyFile.toAbsolutePath().normalize().resolveSibling("");
        Path target = photograph.toAbsolutePath().normalize();
        Path name;
        try {
            name = folder.relativize(target);
        } catch (IllegalArgumentException onAnotherDisk) {
            name = target;
        }
        return name.toString().replace(name.getFileSystem().getSeparator(), "/");
    }

    /**
     * The study referring to a photograph from its own place: by a name relative to the study's file, and by the sum of the
     * photograph's bytes, which is what {@link #matches(Study, byte[])} compares with. A sum that the study has already stays,
     * for it tells what the study was begun with; so does its lack where the photograph cannot be read. A study without a
     * reference stays as it is.
     */
    public static Study named(Study study, Path studyFile, Path photograph) {
        EventThread.refuse("reading a photograph");
        return study.withReference(study.reference()
                .map(reference -> reference.withFile(relativeName(studyFile, photograph)))
                .map(reference -> reference.sha256().isEmpty() ? reference.withSha256(sum(photograph)) : reference));
    }

    /** The sum of a file; empty if it cannot be read, because a study is to be saved even if its photograph is gone. */
    private static String sum(Path photograph) {
        try {
            return sha256(Files.readAllBytes(photograph));
        } catch (IOException unreadable) {
            return "";
        }
    }

    /** The bytes' SHA-256 sum (FIPS 180-4) in lower-case hexadecimal. */
    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
