package umbercard.door;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.picture.Picture;

/**
 * What a reading reads: a thumbnail of a study, what it comes to, and the framed reference at hand, if there is one.
 *
 * @param stopped whether nobody waits for the answer any more
 */
public record Plan(
        Study study, Thumbnail thumbnail, Design design, Optional<Picture> reference, BooleanSupplier stopped) {}
