package umbercard.desk.instruments;

import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.door.Edit;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Study;

/** What an outline that a hand has closed becomes. */
interface Making {
    /** The edit that an outline leads to. */
    Edit edit(Draft made, Outline outline);

    /** The study as it would be, to be shown while the outline is half made; empty where its line says enough. */
    Optional<UnaryOperator<Study>> asIf(Draft made, Outline outline);

    /** What a press of the second button makes at once; empty where it begins an outline of the other kind. */
    Optional<Edit> atOnce(String thumbnail, Point at);
}
