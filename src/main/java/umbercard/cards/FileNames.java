package umbercard.cards;

import java.text.Normalizer;
import java.util.Locale;

/** Names for files that every system takes: lower-case letters without accents, digits, single hyphens. */
public final class FileNames {
    private static final int LONGEST = 60;

    private FileNames() {}

    /** The title as part of a file name; {@code study} where nothing of it is left. */
    public static String safe(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
        String trimmed = cut.replaceAll("^-|-$", "");
        return trimmed.isEmpty() ? "study" : trimmed;
    }
}
