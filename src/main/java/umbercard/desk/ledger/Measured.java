package umbercard.desk.ledger;

import java.util.Map;
import umbercard.door.Finding;
import umbercard.model.Thumbnail;

/**
 * What the ledger shows of one thumbnail.
 *
 * @param dark the share of the frame that is dark, 0..1
 * @param findings by the id of their reading, in the order they are shown
 */
record Measured(Thumbnail thumbnail, double dark, Map<String, Finding> findings) {}
