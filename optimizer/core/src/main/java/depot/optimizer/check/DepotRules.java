package depot.optimizer.check;

import depot.optimizer.dictionary.CrewTables.Crews;
import depot.optimizer.dictionary.DepotTables.Circuits;
import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.util.Set;
import java.util.stream.Collectors;

/** Rules of depots and their circuits. */
final class DepotRules {
    private DepotRules() {}

    /** Staffed hours have a beginning and a later end; swaps need staff. */
    static void staffedHours(Drafts drafts, Findings findings) {
        for (Located<Depot> depot : drafts.depots) {
            pair(depot, Depots.STAFFED_FROM, Depots.STAFFED_TO, findings);
            int from = depot.value().staffedFromMinute().orElse(0);
            int to = depot.value().staffedToMinute().orElse(Integer.MAX_VALUE);
            if (to <= from) {
                findings.error(
                        depot,
                        Depots.STAFFED_TO,
                        "the staffed hours end before they begin, at " + TimeSyntax.text(from),
                        "write the end of the same day; hours past midnight cannot be staffed");
            }
            if (depot.row().find(Depots.SWAP_MINUTES).isPresent()
                    && depot.row().find(Depots.STAFFED_FROM).isEmpty()) {
                findings.error(
                        depot,
                        Depots.SWAP_MINUTES,
                        "nobody is there to swap packs",
                        "fill in staffed_from and staffed_to, or leave it blank");
            }
        }
    }

    /** A bigger supply is bigger and has a price. */
    static void supplyUpgrade(Drafts drafts, Findings findings) {
        for (Located<Depot> depot : drafts.depots) {
            pair(depot, Depots.SUPPLY_UPGRADE_AMPS, Depots.SUPPLY_UPGRADE_COST, findings);
            if (depot.row().find(Depots.SUPPLY_UPGRADE_AMPS).isPresent()
                    && !depot.value().upgradeOffered()) {
                findings.error(
                        depot,
                        Depots.SUPPLY_UPGRADE_AMPS,
                        "not above the present supply of " + depot.value().supplyAmps() + " A",
                        "write the rating after the upgrade, or leave it blank");
            }
        }
    }

    /** A position has both coordinates. */
    static void position(Drafts drafts, Findings findings) {
        drafts.depots.forEach(depot -> pair(depot, Depots.LATITUDE, Depots.LONGITUDE, findings));
    }

    /** A depot that crews work from has a circuit; one without crews is noticed. */
    static void inUse(Drafts drafts, Findings findings) {
        if (!drafts.whole(Crews.TABLE, Circuits.TABLE)) {
            return;
        }
        Set<String> wired =
                drafts.circuits.stream().map(circuit -> circuit.value().depot()).collect(Collectors.toSet());
        Set<String> used =
                drafts.crews.stream().map(crew -> crew.value().depot()).collect(Collectors.toSet());
        for (Located<Depot> depot : drafts.depots) {
            if (!used.contains(depot.value().id())) {
                findings.notice(depot, Depots.DEPOT, "no crew works from this depot", "nothing is planned for it");
            } else if (!wired.contains(depot.value().id())) {
                findings.error(depot, Depots.DEPOT, "the depot has no circuit to charge on", "add one to circuits.csv");
            }
        }
    }

    /** A circuit fits the supply of its depot. */
    static void circuitFitsSupply(Drafts drafts, Findings findings) {
        for (Located<Circuit> circuit : drafts.circuits) {
            Located<Depot> located = drafts.depotsById.get(circuit.value().depot());
            if (located == null) {
                continue;
            }
            Depot depot = located.value();
            if (circuit.value().phases() > depot.supplyPhases()) {
                findings.error(
                        circuit,
                        Circuits.PHASES,
                        "three phases on a supply with one",
                        "see supply_phases of depot " + depot.id());
            }
            if (circuit.value().volts() > depot.supplyVolts()) {
                findings.error(
                        circuit,
                        Circuits.VOLTS,
                        "above the supply's " + depot.supplyVolts() + " V",
                        "a single-phase circuit on a three-phase supply has its voltage divided by 1.73");
            }
        }
    }

    private static void pair(Located<Depot> depot, Field<?> first, Field<?> second, Findings findings) {
        boolean hasFirst = depot.row().find(first).isPresent();
        if (hasFirst != depot.row().find(second).isPresent()) {
            Field<?> blank = hasFirst ? second : first;
            Field<?> given = hasFirst ? first : second;
            findings.error(depot, blank, given.name() + " is given without it", "fill in both, or leave both blank");
        }
    }
}
