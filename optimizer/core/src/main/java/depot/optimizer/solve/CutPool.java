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
}
