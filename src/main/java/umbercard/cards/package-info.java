/** Cards at true size: faces that lay out one side each, and how sides become pages. May use the door and what it stands on, notes, transfer and kernel. */
@NullMarked
package umbercard.cards;

import org.jspecify.annotations.NullMarked;
