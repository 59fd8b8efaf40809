/** Cards as SVG documents in millimeters. */
@NullMarked
package umbercard.cards.svg;

import org.jspecify.annotations.NullMarked;
