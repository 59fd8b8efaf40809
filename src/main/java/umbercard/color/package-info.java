/**
 * The arithmetic of color: sRGB, CIE XYZ, L*a*b* and LCh, change of white, Munsell value and
 * how it is numbered, color difference, families of hue, warmth. Uses nothing of ours; results are the same
 * on every machine, because only {@link java.lang.StrictMath} is used where it matters.
 */
@NullMarked
package umbercard.color;

import org.jspecify.annotations.NullMarked;
