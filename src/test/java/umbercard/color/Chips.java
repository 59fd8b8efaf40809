package umbercard.color;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** Chips of the Munsell renotation of 1943 under D65; the file names its sources. */
final class Chips {
    private static final Path FILE = Path.of("src/test/resources/umbercard/color/munsell_chips.csv");

    private Chips() {}

    static Map<String, Lab> read() {
        Map<String, Lab> chips = new LinkedHashMap<>();
        try {
            Files.readAllLines(FILE).stream()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("notation"))
                    .map(line -> line.split(","))
                    .forEach(row -> chips.put(row[0], new Lab(number(row[11]), number(row[12]), number(row[13]))));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
        return chips;
    }

    private static double number(String written) {
        return Double.parseDouble(written);
    }

    static double hue(String chip) {
        return Objects.requireNonNull(read().get(chip), chip).hue();
    }
}
