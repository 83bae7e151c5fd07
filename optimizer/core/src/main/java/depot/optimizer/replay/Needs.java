package depot.optimizer.replay;

import depot.optimizer.replay.TripRoute.FamilyWork;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Energy that a trip needs of one pack family, stop by stop, at the planned quantile.
 */
final class Needs {
    private final String family;
    private final double[] usedWh;
    private final double[] meanWh;
    private final int[] toolsAtOnce;

    private Needs(String family, double[] usedWh, double[] meanWh, int[] toolsAtOnce) {
        this.family = family;
        this.usedWh = usedWh;
        this.meanWh = meanWh;
        this.toolsAtOnce = toolsAtOnce;
    }

    String family() {
        return family;
    }

    /** By stop: how much the need up to and with it exceeds the need before it. */
    double[] usedWh() {
        return usedWh;
    }

    /** By stop: the average. */
    double[] meanWh() {
        return meanWh;
    }

    /** By stop; 0: no work of the family. */
    int[] toolsAtOnce() {
        return toolsAtOnce;
    }

    /** Needs of every family of a trip, by name. */
    static List<Needs> of(TripRoute route, Quantile quantile) {
        TreeSet<String> families = new TreeSet<>();
        route.work().forEach(work -> families.addAll(work.keySet()));
        return families.stream().map(family -> of(route, family, quantile)).toList();
    }

    private static Needs of(TripRoute route, String family, Quantile quantile) {
        int stops = route.stops().size();
        double[] used = new double[stops];
        double[] means = new double[stops];
        int[] tools = new int[stops];
        double mean = 0;
        double squares = 0;
        double before = 0;
        for (int i = 0; i < stops; i++) {
            FamilyWork work = route.work().get(i).getOrDefault(family, new FamilyWork(0, 0));
            means[i] = work.meanWh();
            tools[i] = work.toolsAtOnce();
            mean += work.meanWh();
            squares += work.meanWh() * work.meanWh();
            // A prefix never needs less than a shorter one, though a narrower spread can make its quantile smaller.
            double need = Math.max(before, quantile.of(mean, squares));
            used[i] = need - before;
            before = need;
        }
        return new Needs(family, used, means, tools);
    }

    double totalWh() {
        double total = 0;
        for (double wattHours : usedWh) {
            total += wattHours;
        }
        return total;
    }

    int mostToolsAtOnce() {
        int most = 0;
        for (int tools : toolsAtOnce) {
            most = Math.max(most, tools);
        }
        return most;
    }

    /**
     * Quantile of a sum of stops that vary on their own: lognormal with the sum's mean m and standard deviation
     * s = spread * sqrt(sum of squared means), so exp(mu + z sigma) with sigma^2 = ln(1 + (s/m)^2), mu = ln m - sigma^2 / 2.
     */
    static final class Quantile {
        private final double spread;
        private final double z;

        Quantile(double share, double spread) {
            this.spread = spread;
            this.z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(share);
        }

        double of(double mean, double squares) {
            if (mean <= 0) {
                return 0;
            }
            double ratio = spread * Math.sqrt(squares) / mean;
            double variance = Math.log1p(ratio * ratio);
            return Math.exp(Math.log(mean) - variance / 2 + z * Math.sqrt(variance));
        }
    }
}
