/** What the program says: messages by key, and the bundles that put them into words. May use color, for values. */
@NullMarked
package umbercard.words;

import org.jspecify.annotations.NullMarked;
