package umbercard.notes.turned;

import umbercard.model.ColorNote;
import umbercard.words.Message;

/** A color note that could be put on the card, and why. */
public record Offer(ColorNote note, Message reason) {}
