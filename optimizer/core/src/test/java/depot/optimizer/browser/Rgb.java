package depot.optimizer.browser;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A colour of the standard screen (sRGB, IEC 61966-2-1), its parts from 0 to 255, and what eyes make of it.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
record Rgb(double red, double green, double blue) {

    static Rgb of(JsonNode parts) {
        return new Rgb(
                parts.get(0).asDouble(), parts.get(1).asDouble(), parts.get(2).asDouble());
    }

    /**
     * Contrast to another colour, 1 (none) to 21 (black on white): (L1 + 0.05) / (L2 + 0.05), L1 being the lighter one's luminance. Source:
     * Web Content Accessibility Guidelines 2.2, W3C Recommendation, definition of contrast ratio (seen).
     */
    double contrast(Rgb other) {
        double lighter = Math.max(luminance(), other.luminance());
        double darker = Math.min(luminance(), other.luminance());
        return (lighter + 0.05) / (darker + 0.05);
    }

    /** Relative luminance, 0 (black) to 1 (white). Source: the same, definition of relative luminance (seen). */
    double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    /** The three parts as light, 0 to 1. */
    double[] light() {
        return new double[] {linear(red), linear(green), linear(blue)};
    }

    private static double linear(double part) {
        double share = part / 255;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Override
    public String toString() {
        return "rgb(%.0f %.0f %.0f)".formatted(red, green, blue);
    }
}
