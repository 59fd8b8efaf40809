package umbercard.door;

import java.util.Map;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;

/**
 * What a face lays out.
 *
 * @param findings the readings of the thumbnail, by id
 * @param width of the card in millimeters
 * @param height of the card in millimeters
 */
public record Deck(
        Study study, Thumbnail chosen, Design design, Map<String, Finding> findings, double width, double height) {
    public Deck {
        findings = Map.copyOf(findings);
    }
}
