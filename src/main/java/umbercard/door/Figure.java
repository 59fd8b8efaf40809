package umbercard.door;

/**
 * A measured number.
 *
 * @param name stable, for scripts
 * @param unit for example {@code share}, {@code degrees}, {@code count}
 */
public record Figure(String name, double value, String unit) {}
