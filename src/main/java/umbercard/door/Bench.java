package umbercard.door;

import java.util.Map;
import java.util.function.Supplier;
import umbercard.model.Study;

/**
 * What an instrument works on.
 *
 * @param study the study as it is now
 * @param thumbnail the id of the thumbnail under the pointer
 * @param settings the painter's settings for instruments, by key
 */
public record Bench(Supplier<Study> study, Supplier<String> thumbnail, Map<String, String> settings) {}
