package depot.optimizer.generate;

import java.util.ArrayList;
import java.util.List;

/**
 * What a crew works with. Energies keep a crew at four to about twelve packs a day: up to 2.0 kWh from hand packs of
 * about 275 Wh, or up to 3.6 kWh from back packs of about 920 Wh with up to 0.9 kWh from hand packs beside.
 */
enum WorkDraw {
    HAND,
    BACK_AND_HAND;

    private static final List<ToolUse> HAND_TOOLS =
            List.of(new ToolUse("hedge-cutter", 450), new ToolUse("limbing-saw", 750));
    private static final List<ToolUse> BACK_TOOLS =
            List.of(new ToolUse("brush-cutter", 900), new ToolUse("walk-mower", 1100));

    /** A tool and its average draw, as in {@link GeneratedEquipment#tools}. */
    private record ToolUse(String tool, double watts) {}

    /** Work with one tool at a stop, before the season scales it. */
    record Task(String tool, double watts, double wattHours, int toolsAtOnce) {

        /** Running time of each of the tools in a season, in tenths of an hour, no longer than the stop. */
        double hours(double scale, double stopHours) {
            double hours = wattHours * scale / (watts * toolsAtOnce);
            double tenths = Math.max(1, Math.floor(10 * Math.min(hours, stopHours)));
            return tenths / 10;
        }
    }

    static WorkDraw of(GeneratorSettings settings, Dice dice) {
        return settings.packTypes() > 1 && dice.percent(60) ? BACK_AND_HAND : HAND;
    }

    /** Tasks of each stop of a day. */
    List<List<Task>> draw(int stops, Dice dice) {
        double hand = this == HAND ? dice.within(1300, 2000) : dice.within(400, 900);
        double back = this == HAND ? 0 : dice.within(2000, 3600);
        List<Double> shares = shares(stops, dice);
        List<List<Task>> tasks = new ArrayList<>();
        for (double share : shares) {
            List<Task> atStop = new ArrayList<>();
            atStop.add(task(HAND_TOOLS, hand * share, dice));
            if (back > 0) {
                atStop.add(task(BACK_TOOLS, back * share, dice));
            }
            tasks.add(atStop);
        }
        return tasks;
    }

    private static Task task(List<ToolUse> tools, double wattHours, Dice dice) {
        ToolUse use = dice.oneOf(tools);
        return new Task(use.tool(), use.watts(), wattHours, dice.percent(25) ? 2 : 1);
    }

    private static List<Double> shares(int stops, Dice dice) {
        List<Double> weights = new ArrayList<>();
        double sum = 0;
        for (int stop = 0; stop < stops; stop++) {
            double weight = dice.within(0.7, 1.3);
            weights.add(weight);
            sum += weight;
        }
        double total = sum;
        return weights.stream().map(weight -> weight / total).toList();
    }
}
