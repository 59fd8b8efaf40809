/** What the program says: messages by key, and the bundles that put them into words. Uses nothing of ours. */
@NullMarked
package umbercard.words;

import org.jspecify.annotations.NullMarked;
