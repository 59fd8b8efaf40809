package umbercard.color;

/** Three rows of three numbers: {@code a b c}, {@code d e f}, {@code g h i}. */
record Matrix(double a, double b, double c, double d, double e, double f, double g, double h, double i) {
    Xyz times(double x, double y, double z) {
        return new Xyz(a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z);
    }

    Xyz times(Xyz color) {
        return times(color.x(), color.y(), color.z());
    }

    /** By cofactors; of a matrix that can be inverted. */
    Matrix inverse() {
        double det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
        return new Matrix(
                (e * i - f * h) / det,
                (c * h - b * i) / det,
                (b * f - c * e) / det,
                (f * g - d * i) / det,
                (a * i - c * g) / det,
                (c * d - a * f) / det,
                (d * h - e * g) / det,
                (b * g - a * h) / det,
                (a * e - b * d) / det);
    }
}
