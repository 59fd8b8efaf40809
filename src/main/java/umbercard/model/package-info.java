/**
 * What a study is made of, as immutable records in the trade's words. {@code more} holds the fields of a file that this
 * version does not know. May use geometry and color.
 */
@NullMarked
package umbercard.model;

import org.jspecify.annotations.NullMarked;
