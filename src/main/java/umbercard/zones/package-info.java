/** Where the zones of a study lie on a thumbnail: what covers what, what touches, what no zone covers. */
@NullMarked
package umbercard.zones;

import org.jspecify.annotations.NullMarked;
