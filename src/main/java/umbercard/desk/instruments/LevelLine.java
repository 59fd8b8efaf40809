package umbercard.desk.instruments;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import umbercard.model.Level;
import umbercard.model.Thumbnail;

/**
 * One of the lines that run across a thumbnail.
 *
 * @param id the instrument that draws it
 * @param of the line as the thumbnail has it
 * @param put the thumbnail with another line, or without it
 */
record LevelLine(
        String id, Function<Thumbnail, Optional<Level>> of, BiFunction<Thumbnail, Optional<Level>, Thumbnail> put) {}
