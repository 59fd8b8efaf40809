package umbercard.bench;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import umbercard.bench.DecodeTimes.Decoded;
import umbercard.bench.DecodeTimes.Way;

/** The part of the page that tells how long reading a photograph takes. */
final class DecodeReport {
    private DecodeReport() {}

    /** The part, empty where nothing was measured. */
    static String of(Path file) throws IOException {
        if (Files.notExists(file)) {
            return "";
        }
        List<Decoded> all = new ObjectMapper().readValue(file.toFile(), new TypeReference<>() {});
        StringBuilder part = new StringBuilder("\n## Reading a photograph\n\n");
        part.append(
                "From the bytes of a JPEG to a picture of 2000 pixels, all ways in turn on the same bytes; least / median,\n");
        part.append(
                "and how many times the median of the toolkit's decoder alone. Ours averages in linear light, ImageJ in\n");
        part.append("gamma space.\n\n");
        part.append("| file | way | ms | of the bare decode |\n| --- | --- | --- | --- |\n");
        for (Decoded one : all) {
            part.append(String.format(
                    Locale.ROOT,
                    "| %.0f MP%s, %.1f MB | %s | %s / %s | %.2f × |%n",
                    one.megapixels(),
                    one.progressive() ? ", progressive" : "",
                    one.bytes() / 1e6,
                    one.way().words(),
                    Report.number(one.times().get(0)),
                    Report.number(median(one)),
                    median(one) / bare(all, one)));
        }
        return part.toString();
    }

    private static double median(Decoded one) {
        return Report.at(one.times(), .5);
    }

    private static double bare(List<Decoded> all, Decoded like) {
        return all.stream()
                .filter(one -> one.way() == Way.BARE
                        && one.megapixels() == like.megapixels()
                        && one.progressive() == like.progressive())
                .mapToDouble(DecodeReport::median)
                .findFirst()
                .orElse(Double.NaN);
    }
}
