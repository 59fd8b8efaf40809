package umbercard.desk;

import java.text.Normalizer;
import java.util.Locale;

/** Names of files from words of the painter's. */
final class FileNames {
    private FileNames() {}

    /** The words in lower case with hyphens, safe as a file name everywhere; {@code study} when nothing is left of them. */
    static String safe(String words) {
        String plain = Normalizer.normalize(words, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "study" : plain;
    }
}
