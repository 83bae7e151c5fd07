package depot.optimizer.solve;

import java.util.ArrayList;
import java.util.List;

/** The cuts collected so far. They hold for tighter days too, since those cost no less. */
final class CutPool {

    private final List<RecourseCut> cuts = new ArrayList<>();

    void addAll(CutPool other) {
        cuts.addAll(other.cuts);
    }

    void add(RecourseCut cut) {
        cuts.add(cut);
    }

    List<RecourseCut> all() {
        return cuts;
    }

    /**
     * What the cuts take a day to cost.
     *
     * @param capacityValues what is bought
     * @param cyclePrices what charges count for in the cost
     */
    double judged(int day, double[] capacityValues, List<Double> cyclePrices) {
        double judged = 0;
        for (RecourseCut cut : cuts) {
            if (cut.day() == day && cut.cyclePrices().equals(cyclePrices)) {
                double value = cut.value();
                for (int j = 0; j < capacityValues.length; j++) {
                    value += cut.slopes()[j] * (capacityValues[j] - cut.at()[j]);
                }
                judged = Math.max(judged, value);
            }
        }
        return judged;
    }
}
