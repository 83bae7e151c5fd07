package depot.optimizer.browser;

/**
 * How far apart two colours are for readers with full colour vision, and for those who lack one kind of cone. Source of the matrices, which
 * work on light: Machado, Oliveira, Fernandes, "A physiologically-based model for simulation of color vision deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15 (2009), severity 1.0 (seen where others give them; the rows add up to 1, so that greys stay grey).
 */
enum Eyes {
    /** All cones. */
    FULL,
    /** No cones for long waves. */
    PROTANOPIA,
    /** No cones for middle waves. */
    DEUTERANOPIA,
    /** No cones for short waves. */
    TRITANOPIA;

    /** White of the standard screen (D65) in CIE XYZ. */
    private static final double[] WHITE = {0.95047, 1, 1.08883};

    private double[][] matrix() {
        return switch (this) {
            case FULL -> new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
            case PROTANOPIA ->
                new double[][] {
                    {0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}
                };
            case DEUTERANOPIA ->
                new double[][] {
                    {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                };
            case TRITANOPIA ->
                new double[][] {
                    {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
                };
        };
    }

    /**
     * Distance in CIE L*a*b* (1976; ISO/CIE 11664-4, from memory): below 2.3 hardly anybody sees a difference.
     */
    double distance(Rgb one, Rgb other) {
        double[] a = lab(one);
        double[] b = lab(other);
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }

    /** The light that readers with these eyes would take for the same, each part 0 to 1. */
    double[] seen(Rgb colour) {
        double[] seen = times(matrix(), colour.light());
        for (int i = 0; i < seen.length; i++) {
            seen[i] = Math.max(0, Math.min(1, seen[i]));
        }
        return seen;
    }

    private double[] lab(Rgb colour) {
        // From the light of the standard screen to CIE XYZ: IEC 61966-2-1 (from memory).
        double[] xyz = times(
                new double[][] {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}},
                seen(colour));
        double x = root(xyz[0] / WHITE[0]);
        double y = root(xyz[1] / WHITE[1]);
        double z = root(xyz[2] / WHITE[2]);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double share) {
        double small = 6.0 / 29;
        return share > small * small * small ? Math.cbrt(share) : share / (3 * small * small) + 4.0 / 29;
    }

    private static double[] times(double[][] matrix, double[] light) {
        double[] result = new double[matrix.length];
        for (int row = 0; row < matrix.length; row++) {
            for (int column = 0; column < light.length; column++) {
                result[row] += matrix[row][column] * light[column];
            }
        }
        return result;
    }
}
