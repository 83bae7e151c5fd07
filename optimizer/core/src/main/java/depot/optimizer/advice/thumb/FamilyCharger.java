package depot.optimizer.advice.thumb;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.problem.ChargerOption;

/** A charger in its place that is kept for one pack family. */
record FamilyCharger(ChargerPlacement placement, ChargerOption option, String family) {}
