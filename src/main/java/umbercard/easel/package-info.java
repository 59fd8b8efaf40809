/** The painting held against its plan. May use readings and what they use, and photo. Empty until the painting can be photographed. */
@NullMarked
package umbercard.easel;

import org.jspecify.annotations.NullMarked;
