/** Umbercard: plans a soft pastel landscape on two index cards. Each package says what it is for and what it may use. */
@NullMarked
package umbercard;

import org.jspecify.annotations.NullMarked;
