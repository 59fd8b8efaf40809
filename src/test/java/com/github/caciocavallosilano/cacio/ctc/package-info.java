/** What must live beside the screen in memory to reach it: the toolkit and the robot of the UI tests. */
package com.github.caciocavallosilano.cacio.ctc;
