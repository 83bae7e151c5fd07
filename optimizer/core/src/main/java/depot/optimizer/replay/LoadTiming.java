package depot.optimizer.replay;

/**
 * When a load was ready.
 *
 * @param readyMinute when its last pack reached its level, {@link #NEVER}: not by the end of the day
 */
public record LoadTiming(
        String charger, String circuit, int loadMinute, int readyMinute, int collectMinute, int packs) {

    /** In place of a minute: the load was not ready by the end of the day. */
    public static final int NEVER = -1;

    /** Minutes between being ready and being collected; negative or very negative: late or never. */
    public int marginMinutes() {
        return readyMinute == NEVER ? Integer.MIN_VALUE : collectMinute - readyMinute;
    }
}
