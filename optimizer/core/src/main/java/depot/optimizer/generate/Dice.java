package depot.optimizer.generate;

import java.util.List;
import java.util.Random;

/** Random draws that repeat: {@link Random}'s sequence is part of the language's specification. */
final class Dice {
    private static final long STREAM_STEP = 0x9E3779B97F4A7C15L;
    private static final long KIND_STEP = 0xD1B54A32D192ED03L;

    private final Random random;

    /**
     * A stream of its own for each depot, so that a fleet with more depots keeps the ones that a smaller fleet has.
     *
     * @param stream number of the stream, 0 and up
     */
    Dice(long seed, int stream) {
        random = new Random(seed ^ (STREAM_STEP * (stream + 1)));
    }

    /** Streams beside those of the depots, so that what couples depots does not change what they are. */
    static Dice beside(long seed, CouplingSettings.Kind kind, int stream) {
        return new Dice(seed ^ (KIND_STEP * kind.name().hashCode()), stream);
    }

    /** A whole number from {@code least} to {@code most}, both possible. */
    int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    /** A number from {@code least} to below {@code most}. */
    double within(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** A multiple of {@code step} from {@code least} to {@code most}. */
    int stepped(int least, int most, int step) {
        return least + step * random.nextInt((most - least) / step + 1);
    }

    /** True in {@code percent} of a hundred draws. */
    boolean percent(int percent) {
        return random.nextInt(100) < percent;
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
