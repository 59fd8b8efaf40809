package umbercard.desk.ledger;

import umbercard.model.Thumbnail;

/**
 * What the ledger shows of one thumbnail at once.
 *
 * @param dark the share of the frame that is dark, 0..1
 */
record Glanced(Thumbnail thumbnail, double dark) {}
