package umbercard.desk.ledger;

import java.util.Map;
import java.util.Set;
import umbercard.door.Finding;

/**
 * What the readings found so far.
 *
 * @param findings by the id of their reading
 * @param waiting the ids of those that are still to be taken
 * @param quick milliseconds until all were taken but those that take long
 * @param slow whether some take long
 */
record Measured(Question question, Map<String, Finding> findings, Set<String> waiting, long quick, boolean slow) {}
