package umbercard.zones;

import umbercard.geometry.Region;
import umbercard.model.Zone;
import umbercard.words.Message;

/**
 * A zone that a thumbnail could have.
 *
 * @param zone with an id that the study does not have yet
 * @param area where it would lie, never empty
 * @param reason why, in a sentence
 */
public record Proposal(Zone zone, Region area, Message reason) {}
