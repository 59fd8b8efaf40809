/** What must live beside the windows of the screen in memory to extend them. */
package com.github.caciocavallosilano.cacio.peer;
