/** The cards' typeface, measured without a toolkit. */
@NullMarked
package umbercard.cards.type;

import org.jspecify.annotations.NullMarked;
