package umbercard.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Color profiles made from published primaries, and the same conversions computed by matrix and curve, without any profile.
 *
 * <p>Sources: form of a profile: ICC.1:2001-04 (version 2), clauses 6.1 (header), 6.3.2.1 (three-component input), 6.5.3
 * (curveType), 6.5.26 (XYZType); Bradford adaptation: ICC.1:2010, annex E. Primaries and curves: {@link Space}.
 */
final class Profiles {
    /** D65 as chromaticity (IEC 61966-2-1). */
    private static final double[] D65 = {0.3127, 0.3290};

    /** The profile connection space's white, D50 (ICC.1:2001-04, A.1). */
    private static final double[] D50_XYZ = {0.9642, 1, 0.8249};

    private static final double[][] BRADFORD = {
        {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
    };
    private static final double[][] SRGB_PRIMARIES = {{0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}};

    /** An RGB space with the white of D65. */
    enum Space {
        /** Primaries and gamma of the wide space of "Adobe RGB (1998) Color Image Encoding", version 2005-05, 4.3.1. */
        WIDE(new double[][] {{0.64, 0.33}, {0.21, 0.71}, {0.15, 0.06}}, v -> Math.pow(v, 563.0 / 256), 0x0233),
        /** Primaries of SMPTE RP 431-2 with D65 and the curve of IEC 61966-2-1, as in SMPTE EG 432-1 and CSS Color 4. */
        SCREEN(new double[][] {{0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}}, Profiles::srgbCurve, 0),
        /** IEC 61966-2-1 itself. */
        SRGB(SRGB_PRIMARIES, Profiles::srgbCurve, 0);

        private final double[][] primaries;
        private final DoubleUnaryOperator curve;
        private final int gamma;

        Space(double[][] primaries, DoubleUnaryOperator curve, int gamma) {
            this.primaries = primaries;
            this.curve = curve;
            this.gamma = gamma;
        }

        /** The profile. */
        byte[] profile() {
            double[][] toXyz = adapted(matrix(primaries));
            Map<String, byte[]> tags = common();
            String[] names = {"rXYZ", "gXYZ", "bXYZ"};
            for (int i = 0; i < 3; i++) {
                tags.put(names[i], xyz(toXyz[0][i], toXyz[1][i], toXyz[2][i]));
            }
            for (String name : new String[] {"rTRC", "gTRC", "bTRC"}) {
                tags.put(name, gamma > 0 ? gammaCurve(gamma) : tableCurve(curve));
            }
            return whole("mntr", "RGB ", "XYZ ", tags);
        }

        /** What a color of the space is in sRGB, 0..255 each, clipped but not rounded. */
        double[] toSrgb(int... rgb) {
            double[] light = new double[3];
            for (int i = 0; i < 3; i++) {
                light[i] = curve.applyAsDouble(rgb[i] / 255.0);
            }
            double[] srgb = times(inverse(matrix(SRGB_PRIMARIES)), times(matrix(primaries), light));
            for (int i = 0; i < 3; i++) {
                srgb[i] = 255 * encoded(Math.min(1, Math.max(0, srgb[i])));
            }
            return srgb;
        }
    }

    private Profiles() {}

    /** A gray profile of gamma 2.2, the curve's exponent as the nearest 256th. */
    static byte[] gray() {
        Map<String, byte[]> tags = common();
        tags.put("kTRC", gammaCurve(0x0233));
        return whole("mntr", "GRAY", "XYZ ", tags);
    }

    /** What a gray of {@link #gray()} is in sRGB, 0..255. */
    static double grayToSrgb(int gray) {
        return 255 * encoded(Math.pow(gray / 255.0, 563.0 / 256));
    }

    /** How many steps of ink the nodes of {@link #inks()} lie apart: there nothing is between two nodes. */
    static final int INK_STEP = 51;

    /**
     * A profile of four made-up inks: cyan takes away its share of red light, magenta of green, yellow of blue, black of all
     * (ICC.1:2001-04, 6.3.4.1 for output profiles, 6.5.8 for lut16Type, whose L*a*b* is under D50).
     */
    static byte[] inks() {
        int nodes = 255 / INK_STEP + 1;
        ByteBuffer table = table(4, 3, nodes);
        double[][] toXyz = adapted(matrix(SRGB_PRIMARIES));
        for (int i = 0; i < nodes * nodes * nodes * nodes; i++) {
            double[] xyz = times(
                    toXyz,
                    inkLight(
                            i / nodes / nodes / nodes * INK_STEP,
                            i / nodes / nodes % nodes * INK_STEP,
                            i / nodes % nodes * INK_STEP,
                            i % nodes * INK_STEP));
            double[] f = new double[3];
            for (int k = 0; k < 3; k++) {
                f[k] = cubeRoot(xyz[k] / D50_XYZ[k]);
            }
            table.putShort((short) Math.round((116 * f[1] - 16) * 0xff00 / 100))
                    .putShort((short) Math.round((500 * (f[0] - f[1]) + 128) * 256))
                    .putShort((short) Math.round((200 * (f[1] - f[2]) + 128) * 256));
        }
        Map<String, byte[]> tags = common();
        tags.put("A2B0", ended(table, 3));
        // The way back must be there, and is never gone.
        tags.put("B2A0", ended(table(3, 4, 2), 4));
        return whole("prtr", "CMYK", "Lab ", tags);
    }

    private static ByteBuffer table(int from, int to, int nodes) {
        int count = (int) Math.pow(nodes, from);
        ByteBuffer table = ByteBuffer.allocate(52 + 2 * (2 * from + to * count + 2 * to))
                .put("mft2".getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .put(new byte[] {(byte) from, (byte) to, (byte) nodes, 0});
        for (int i = 0; i < 9; i++) {
            table.putInt(i % 4 == 0 ? 65536 : 0);
        }
        table.putShort((short) 2).putShort((short) 2);
        for (int i = 0; i < from; i++) {
            table.putShort((short) 0).putShort((short) 65535);
        }
        return table;
    }

    /** The table with its last part, which leaves all as it is. */
    private static byte[] ended(ByteBuffer table, int to) {
        table.position(table.capacity() - 4 * to);
        for (int i = 0; i < to; i++) {
            table.putShort((short) 0).putShort((short) 65535);
        }
        return table.array();
    }

    /** What inks of {@link #inks()}, 0..255 each, are in sRGB, 0..255. */
    static double[] inksToSrgb(int... cmyk) {
        double[] srgb = inkLight(cmyk);
        for (int i = 0; i < 3; i++) {
            srgb[i] = 255 * encoded(srgb[i]);
        }
        return srgb;
    }

    private static double[] inkLight(int... cmyk) {
        double[] light = new double[3];
        for (int i = 0; i < 3; i++) {
            light[i] = (1 - cmyk[i] / 255.0) * (1 - cmyk[3] / 255.0);
        }
        return light;
    }

    /** CIE 15, with its straight part near black. */
    private static double cubeRoot(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double srgbCurve(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    private static double encoded(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }

    /** From linear red, green and blue to XYZ: the primaries scaled so that they add up to the white. */
    private static double[][] matrix(double[][] primaries) {
        double[][] columns = new double[3][3];
        for (int i = 0; i < 3; i++) {
            double[] column = ofChromaticity(primaries[i]);
            for (int k = 0; k < 3; k++) {
                columns[k][i] = column[k];
            }
        }
        double[] scale = times(inverse(columns), ofChromaticity(D65));
        for (double[] row : columns) {
            for (int i = 0; i < 3; i++) {
                row[i] *= scale[i];
            }
        }
        return columns;
    }

    private static double[] ofChromaticity(double[] xy) {
        return new double[] {xy[0] / xy[1], 1, (1 - xy[0] - xy[1]) / xy[1]};
    }

    private static double[][] adapted(double[][] matrix) {
        double[] from = times(BRADFORD, ofChromaticity(D65));
        double[] to = times(BRADFORD, D50_XYZ);
        double[][] gains = new double[3][3];
        for (int i = 0; i < 3; i++) {
            gains[i][i] = to[i] / from[i];
        }
        return times(inverse(BRADFORD), times(gains, times(BRADFORD, matrix)));
    }

    private static double[] times(double[][] m, double[] v) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
        }
        return product;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                product[i][k] = a[i][0] * b[0][k] + a[i][1] * b[1][k] + a[i][2] * b[2][k];
            }
        }
        return product;
    }

    private static double[][] inverse(double[][] m) {
        double[][] inverse = new double[3][3];
        double determinant = 0;
        for (int i = 0; i < 3; i++) {
            int p = (i + 1) % 3;
            int q = (i + 2) % 3;
            determinant += m[0][i] * (m[1][p] * m[2][q] - m[1][q] * m[2][p]);
            for (int k = 0; k < 3; k++) {
                int r = (k + 1) % 3;
                int s = (k + 2) % 3;
                inverse[i][k] = m[r][p] * m[s][q] - m[r][q] * m[s][p];
            }
        }
        for (double[] row : inverse) {
            for (int k = 0; k < 3; k++) {
                row[k] /= determinant;
            }
        }
        return inverse;
    }

    private static Map<String, byte[]> common() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        byte[] name = "test".getBytes(StandardCharsets.US_ASCII);
        tags.put(
                "desc",
                ByteBuffer.allocate(12 + 5 + 78)
                        .put("desc".getBytes(StandardCharsets.US_ASCII))
                        .putInt(0)
                        .putInt(5)
                        .put(name)
                        .array());
        tags.put(
                "cprt",
                ByteBuffer.allocate(8 + 5)
                        .put("text".getBytes(StandardCharsets.US_ASCII))
                        .putInt(0)
                        .put(name)
                        .array());
        tags.put("wtpt", xyz(D50_XYZ[0], D50_XYZ[1], D50_XYZ[2]));
        return tags;
    }

    private static byte[] xyz(double x, double y, double z) {
        return ByteBuffer.allocate(20)
                .put("XYZ ".getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .putInt((int) Math.round(x * 65536))
                .putInt((int) Math.round(y * 65536))
                .putInt((int) Math.round(z * 65536))
                .array();
    }

    private static byte[] gammaCurve(int inParts) {
        return ByteBuffer.allocate(14)
                .put("curv".getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .putInt(1)
                .putShort((short) inParts)
                .array();
    }

    private static byte[] tableCurve(DoubleUnaryOperator curve) {
        int count = 4096;
        ByteBuffer table = ByteBuffer.allocate(12 + 2 * count)
                .put("curv".getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .putInt(count);
        for (int i = 0; i < count; i++) {
            table.putShort((short) Math.round(65535 * curve.applyAsDouble(i / (count - 1.0))));
        }
        return table.array();
    }

    private static byte[] whole(String device, String colors, String connection, Map<String, byte[]> tags) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        ByteBuffer table = ByteBuffer.allocate(4 + 12 * tags.size()).putInt(tags.size());
        int start = 128 + table.capacity();
        tags.forEach((name, tag) -> {
            table.put(name.getBytes(StandardCharsets.US_ASCII))
                    .putInt(start + content.size())
                    .putInt(tag.length);
            content.write(tag, 0, tag.length);
            while (content.size() % 4 != 0) {
                content.write(0);
            }
        });
        ByteBuffer file = ByteBuffer.allocate(start + content.size());
        file.putInt(file.capacity()).putInt(0).putInt(0x02400000);
        file.put((device + colors + connection).getBytes(StandardCharsets.US_ASCII));
        file.position(36).put("acsp".getBytes(StandardCharsets.US_ASCII));
        file.position(68)
                .putInt((int) Math.round(D50_XYZ[0] * 65536))
                .putInt(65536)
                .putInt((int) Math.round(D50_XYZ[2] * 65536));
        return file.position(128).put(table.array()).put(content.toByteArray()).array();
    }
}
