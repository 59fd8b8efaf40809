package umbercard.model;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import umbercard.geometry.Line;

/**
 * The photograph that a study is planned from, and how it is looked at.
 *
 * @param file the photograph, relative to the study's file, with forward slashes
 * @param sha256 of the photograph's bytes, lower-case hexadecimal; empty if not known
 * @param fade 0 (as it is) to 1 (gone)
 * @param split the Munsell value below which it goes dark; empty follows the thumbnail's own dark share
 * @param ownHorizon where the photograph's own horizon runs, in shares of the upright photograph
 * @param copy the photograph itself, when the painter wants it carried in the study's file
 */
@RecordBuilder
public record Reference(
        String file,
        String sha256,
        Frame frame,
        double fade,
        Squint squint,
        OptionalDouble split,
        Optional<Line> ownHorizon,
        Optional<Copy> copy,
        Map<String, Object> more)
        implements ReferenceBuilder.With {

    /** A photograph carried in the file: its media type and its bytes in base 64. */
    public record Copy(String type, String base64) {}

    public Reference {
        if (!(fade >= 0 && fade <= 1)) {
            throw new IllegalArgumentException("fade is 0 to 1: " + fade);
        }
        more = More.copyOf(more);
    }

    /** A reference not yet squinted at, half faded. */
    public static Reference to(String file, String sha256, Frame frame) {
        return new Reference(
                file,
                sha256,
                frame,
                0.5,
                Squint.gaussian(0),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of());
    }
}
