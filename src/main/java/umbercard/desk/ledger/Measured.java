package umbercard.desk.ledger;

import java.util.Map;
import umbercard.door.Finding;
import umbercard.model.Thumbnail;

/**
 * What the readings found in one thumbnail.
 *
 * @param findings by the id of their reading, in the order they are shown
 * @param milliseconds that it took to find
 */
record Measured(Thumbnail thumbnail, Map<String, Finding> findings, long milliseconds) {}
