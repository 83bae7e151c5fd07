package depot.optimizer.replay;

import java.util.Arrays;

/** Values over a day in equal steps. */
public final class Series {
    private final int startMinute;
    private final int stepMinutes;
    private final float[] values;

    private Series(int startMinute, int stepMinutes, float[] values) {
        this.startMinute = startMinute;
        this.stepMinutes = stepMinutes;
        this.values = values;
    }

    /** The highest value of each step. */
    static Series highest(int startMinute, int stepMinutes, double[] minutes) {
        return thin(startMinute, stepMinutes, minutes, 1);
    }

    /** The lowest value of each step. */
    static Series lowest(int startMinute, int stepMinutes, double[] minutes) {
        return thin(startMinute, stepMinutes, minutes, -1);
    }

    private static Series thin(int startMinute, int stepMinutes, double[] minutes, int sign) {
        float[] values = new float[(minutes.length + stepMinutes - 1) / stepMinutes];
        Arrays.fill(values, Float.NEGATIVE_INFINITY);
        for (int i = 0; i < minutes.length; i++) {
            values[i / stepMinutes] = Math.max(values[i / stepMinutes], (float) (sign * minutes[i]));
        }
        for (int i = 0; i < values.length; i++) {
            values[i] *= sign;
        }
        return new Series(startMinute, stepMinutes, values);
    }

    /** Start of the first step, minutes after midnight. */
    public int startMinute() {
        return startMinute;
    }

    public int stepMinutes() {
        return stepMinutes;
    }

    public int size() {
        return values.length;
    }

    /** Value of a step, counted from 0. */
    public double at(int step) {
        return values[step];
    }

    /** Start of a step, minutes after midnight. */
    public int minuteOf(int step) {
        return startMinute + step * stepMinutes;
    }

    public double max() {
        double max = Double.NEGATIVE_INFINITY;
        for (float value : values) {
            max = Math.max(max, value);
        }
        return max;
    }
}
