/**
 * The faces that come with the program: the thumbnail, and the color notes. Each is a plug-in that lays out one side of a
 * card with the words and measures of its look. May use what cards may.
 */
@NullMarked
package umbercard.cards.faces;

import org.jspecify.annotations.NullMarked;
