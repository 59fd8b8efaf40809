package umbercard.cards;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import umbercard.geometry.Size;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/**
 * The sizes of cards, by name or as a width and a height. An inch is exactly 25.4 mm; the A sizes are those of ISO 216;
 * 3 × 5, 4 × 6 and 5 × 8 in are the sizes that index cards are sold in.
 */
public final class CardSizes {
    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,4}(?:\\.\\d{1,4})?)\\s*[x×]\\s*(\\d{1,4}(?:\\.\\d{1,4})?)\\s*(in|cm|mm)");

    private static final Map<String, BigDecimal> UNITS =
            Map.of("in", new BigDecimal("25.4"), "cm", BigDecimal.TEN, "mm", BigDecimal.ONE);

    /** A card is at least as wide as two fingers and no larger than a drawing board, in millimeters. */
    private static final double LEAST = 40;

    private static final double MOST = 600;

    private static final Map<String, Size> NAMED = named();

    private CardSizes() {}

    private static Map<String, Size> named() {
        Map<String, Size> sizes = new LinkedHashMap<>();
        for (String inches : List.of("3x5in", "4x6in", "5x8in")) {
            written(inches).ifPresent(size -> sizes.put(inches, size));
        }
        sizes.put("a7", new Size(74, 105));
        sizes.put("a6", new Size(105, 148));
        sizes.put("a5", new Size(148, 210));
        return Collections.unmodifiableMap(sizes);
    }

    /** The sizes that have a name, upright, in millimeters. */
    public static List<Size> usual() {
        return List.copyOf(NAMED.values());
    }

    /** The names of the sizes that have one. */
    public static List<String> names() {
        return List.copyOf(NAMED.keySet());
    }

    /**
     * The size in millimeters, width × height as written, named ones upright. Exact: {@code 4x6in} is 101.6 × 152.4.
     *
     * @param words a name such as {@code 4x6in} or {@code a6}, or any width and height with {@code in}, {@code cm} or
     *     {@code mm}; case and spaces do not matter
     * @throws Trouble if it is neither, or no card
     */
    public static Size parse(String words) throws Trouble {
        String size = words.strip().toLowerCase(Locale.ROOT);
        Size known = NAMED.get(size);
        if (known != null) {
            return known;
        }
        Optional<Size> written = written(size);
        if (written.isEmpty()) {
            throw new Trouble(Message.of("cards.size.unknown", words, String.join(", ", names())));
        }
        Size upright = written.get().turned(false);
        if (upright.width() < LEAST || upright.height() > MOST) {
            throw new Trouble(Message.of("cards.size.range", words, LEAST, MOST));
        }
        return written.get();
    }

    /** In decimal arithmetic, because 3 times 25.4 is not 76.2 in binary. */
    private static Optional<Size> written(String words) {
        Matcher written = WRITTEN.matcher(words);
        if (!written.matches()) {
            return Optional.empty();
        }
        BigDecimal unit = UNITS.getOrDefault(written.group(3), BigDecimal.ONE);
        BigDecimal width = new BigDecimal(written.group(1)).multiply(unit);
        BigDecimal height = new BigDecimal(written.group(2)).multiply(unit);
        return width.signum() == 0 || height.signum() == 0
                ? Optional.empty()
                : Optional.of(new Size(width.doubleValue(), height.doubleValue()));
    }

    /** What to call a size, however it lies: by its name in the trade, else in millimeters. */
    public static String label(Size size) {
        Optional<String> name = NAMED.entrySet().stream()
                .filter(named -> same(named.getValue(), size))
                .map(Map.Entry::getKey)
                .findFirst();
        return name.map(CardSizes::spoken)
                .orElseGet(() -> Words.say("cards.size.millimeters", size.width(), size.height()));
    }

    /** The named sizes that are larger than this one both ways, smallest first, lying as this one lies. */
    public static List<Size> larger(Size size) {
        boolean landscape = size.width() > size.height();
        return NAMED.values().stream()
                .map(named -> named.turned(landscape))
                .filter(named -> named.width() >= size.width() && named.height() >= size.height() && !same(named, size))
                .sorted(Comparator.comparingDouble(named -> named.width() * named.height()))
                .toList();
    }

    private static String spoken(String name) {
        Matcher written = WRITTEN.matcher(name);
        return written.matches()
                ? written.group(1) + " × " + written.group(2) + " " + written.group(3)
                : name.toUpperCase(Locale.ROOT);
    }

    private static boolean same(Size one, Size other) {
        Size upright = one.turned(false);
        Size second = other.turned(false);
        return Math.abs(upright.width() - second.width()) < 0.05 && Math.abs(upright.height() - second.height()) < 0.05;
    }
}
