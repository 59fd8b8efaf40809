package umbercard.geometry;

/** A part of a line, from one place along it to another; {@code from} is not beyond {@code to}. In units from the line's start. */
public record Stretch(double from, double to) {
    public Stretch {
        if (!(from <= to)) {
            throw new IllegalArgumentException("a stretch runs forward: " + from + ", " + to);
        }
    }

    public double length() {
        return to - from;
    }
}
