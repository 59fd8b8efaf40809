package umbercard.door;

import java.util.Map;

/** A face's look: what its file in {@code cards/} says, already checked. Numbers are doubles, switches booleans. */
public record Look(Map<String, Object> values) {
    public Look {
        values = Map.copyOf(values);
    }

    /**
     * The number of that name.
     *
     * @throws IllegalArgumentException if there is none: a defect, since looks are checked when read
     */
    public double number(String name) {
        if (values.get(name) instanceof Number number) {
            return number.doubleValue();
        }
        throw new IllegalArgumentException("no number named " + name + " in the look");
    }

    /**
     * The switch of that name.
     *
     * @throws IllegalArgumentException if there is none: a defect, since looks are checked when read
     */
    public boolean on(String name) {
        if (values.get(name) instanceof Boolean on) {
            return on;
        }
        throw new IllegalArgumentException("no switch named " + name + " in the look");
    }

    /**
     * The word of that name.
     *
     * @throws IllegalArgumentException if there is none: a defect, since looks are checked when read
     */
    public String word(String name) {
        if (values.get(name) instanceof String word) {
            return word;
        }
        throw new IllegalArgumentException("no word named " + name + " in the look");
    }
}
