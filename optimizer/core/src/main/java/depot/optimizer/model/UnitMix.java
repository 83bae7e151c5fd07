package depot.optimizer.model;

import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Types of charger that may be behind a load-sharing unit together. A unit feeds whole chargers, so that the type that fills it worst says how much it can
 * feed; types that lower this no further may be there as well. A mix is the most types that leave a unit the same power in every slice.
 *
 * @param chargers places of the types, in {@link DepotProblem#chargers()}
 */
record UnitMix(BitSet chargers) {

    /** Whether chargers of a type may be there. */
    boolean has(int charger) {
        return chargers.get(charger);
    }

    /**
     * Place of the first mix, and so of the smallest, that some chargers are in; -1 where none is.
     *
     * @param pieces by charger type
     */
    static int smallest(List<UnitMix> mixes, List<Integer> pieces) {
        return IntStream.range(0, mixes.size())
                .filter(m -> mixes.get(m).holds(pieces))
                .findFirst()
                .orElse(-1);
    }

    private boolean holds(List<Integer> pieces) {
        return IntStream.range(0, pieces.size()).allMatch(c -> pieces.get(c) == 0 || has(c));
    }

    /** What a unit with this mix behind it can feed, at most, of what it may draw, in W. */
    double fedWatts(DepotProblem problem, double watts) {
        return chargers.stream()
                .mapToDouble(c -> fed(problem.chargers().get(c), watts))
                .min()
                .orElseThrow();
    }

    /** Watts of whole chargers of a type. */
    private static double fed(ChargerOption charger, double watts) {
        double draw = charger.peakWatts();
        return Math.min(watts, Math.floor(watts / draw + 1e-9) * draw);
    }

    /** Every mix behind a unit type on a circuit, of types that fit there. */
    static List<UnitMix> of(DepotProblem problem, int circuit, int unit) {
        CircuitSite site = problem.circuits().get(circuit);
        double amps = problem.unitTypes().get(unit).amps();
        double[] watts = problem.days().stream()
                .flatMap(day -> day.slices().stream())
                .mapToDouble(slice -> slice.circuitBaseAmps().get(circuit))
                .distinct()
                .map(base -> SharedEnergy.unitWatts(site, amps, base))
                .distinct()
                .toArray();
        List<Integer> fitting = IntStream.range(0, problem.chargers().size())
                .filter(c -> fits(problem, site, c))
                .boxed()
                .toList();
        Set<BitSet> found = new LinkedHashSet<>();
        ArrayDeque<BitSet> open = new ArrayDeque<>();
        open.add(new BitSet());
        while (!open.isEmpty()) {
            BitSet mix = open.remove();
            for (int c : fitting) {
                if (!mix.get(c)) {
                    BitSet more = (BitSet) mix.clone();
                    more.set(c);
                    BitSet closed = closed(problem, more, fitting, watts);
                    if (found.add(closed)) {
                        open.add(closed);
                    }
                }
            }
        }
        List<UnitMix> mixes = new ArrayList<>(found.stream().map(UnitMix::new).toList());
        mixes.sort(Comparator.comparing(mix -> mix.chargers().cardinality()));
        return mixes;
    }

    /** Whether a charger of a type can be fed on a circuit at all. */
    static boolean fits(DepotProblem problem, CircuitSite site, int charger) {
        return problem.chargers().get(charger).peakWatts() / site.wattsPerAmp() <= site.usableAmps(0) + 1e-9;
    }

    /** With all types that take nothing more away. */
    private static BitSet closed(DepotProblem problem, BitSet mix, List<Integer> fitting, double[] watts) {
        BitSet closed = new BitSet();
        for (int c : fitting) {
            boolean free = true;
            for (double w : watts) {
                double least = new UnitMix(mix).fedWatts(problem, w);
                free &= fed(problem.chargers().get(c), w) >= least - 1e-9;
            }
            if (free) {
                closed.set(c);
            }
        }
        return closed;
    }
}
