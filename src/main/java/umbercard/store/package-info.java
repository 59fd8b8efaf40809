/** Files: studies, boxes, samples; saved whole or not at all. May use door, model, geometry, color, picture, words and kernel. */
@NullMarked
package umbercard.store;

import org.jspecify.annotations.NullMarked;
