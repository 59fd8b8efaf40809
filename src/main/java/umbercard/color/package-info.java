/**
 * The arithmetic of color: sRGB, CIE L*a*b*, Munsell value, color difference. Uses nothing of ours; results are the same
 * on every machine, because only {@link java.lang.StrictMath} is used where it matters.
 */
@NullMarked
package umbercard.color;

import org.jspecify.annotations.NullMarked;
