package umbercard.notes.turned;

import umbercard.model.ColorNote;
import umbercard.words.Message;

/**
 * A note that could go on the color card, and why.
 *
 * @param note ready to be added: its id is free in the study it was made for, and differs from those of the others offered
 */
public record Offer(ColorNote note, Message reason) {}
