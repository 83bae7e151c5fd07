package depot.optimizer.model;

import java.util.List;

/**
 * What is bought, read from a solver's point; indices as in {@link CapacityVars}.
 *
 * @param plain chargers by circuit and type
 * @param shared chargers behind a unit by circuit and type
 * @param priority how many of those sit on priority outlets
 * @param unit type of the unit on each circuit, -1: none
 * @param built whether each circuit is there
 * @param packs by pool and type
 * @param kit portable chargers by crew and type
 * @param banks power banks by crew and type
 * @param bankPlugs outlets for power banks by circuit and type
 * @param electric whether each crew works from here with packs
 * @param services packs that crews count on getting charged at other depots, for each of the problem's services
 * @param hosted packs of guests that the depot charges, for each of the problem's services for guests
 * @param moved pieces that come from other depots less those that go, for each of the problem's offers
 */
public record CapacityDecision(
        List<List<Integer>> plain,
        List<List<Integer>> shared,
        List<List<Integer>> priority,
        List<Integer> unit,
        List<Boolean> built,
        boolean upgraded,
        List<List<Integer>> packs,
        List<List<Integer>> kit,
        List<List<Integer>> banks,
        List<List<Integer>> bankPlugs,
        List<Boolean> electric,
        List<Integer> services,
        List<Integer> hosted,
        List<Integer> moved) {}
