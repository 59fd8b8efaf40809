package umbercard.notes.layers;

import umbercard.color.Lab;
import umbercard.model.ColorNote;
import umbercard.words.Message;

/**
 * What one note does to the color below it.
 *
 * @param before the mean color of the zone without it
 * @param after the same with it
 * @param words what becomes of its color, in a sentence
 */
public record Coat(ColorNote note, Lab before, Lab after, Message words) {}
