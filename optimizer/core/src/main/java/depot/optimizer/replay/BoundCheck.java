package depot.optimizer.replay;

import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.BoundProof.DepotBound;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Adds up a plan's bound again, in decimals: from the prices and the depots' own bounds, with the limits as the tables have them. Whether a depot's
 * own bound is right is not looked into; that takes a solve.
 *
 * @param bound as it adds up
 * @param gap between the plan's cost and the bound, as a share of the cost
 * @param lines how the bound adds up
 * @param faults what does not agree; empty: the certificate holds
 */
public record BoundCheck(BigDecimal bound, BigDecimal gap, List<Line> lines, List<String> faults) {

    private static final BigDecimal CENT = new BigDecimal("0.01");

    /** A part of the bound. */
    public record Line(String what, BigDecimal amount) {}

    /** Checks the certificate of a plan. */
    public static BoundCheck of(Scenario scenario, Plan plan) {
        List<String> faults = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        BoundProof proof = plan.proof();
        if (proof.given()) {
            proved(scenario, plan, lines, faults);
        } else {
            plan.depots().stream()
                    .collect(Collectors.groupingBy(
                            depot -> depot.depot(), TreeMap::new, Collectors.summingDouble(depot -> depot.stop()
                                    .certificate()
                                    .bound())))
                    .forEach((depot, bound) -> lines.add(new Line("bound of " + depot, BigDecimal.valueOf(bound))));
        }
        BigDecimal sum = lines.stream().map(Line::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        Certificate certificate = plan.certificate();
        BigDecimal cost = BigDecimal.valueOf(certificate.cost());
        BigDecimal bound = sum.min(cost);
        boolean higher =
                proof.oneModel() && BigDecimal.valueOf(certificate.bound()).compareTo(bound) > 0;
        if (higher) {
            BigDecimal added = BigDecimal.valueOf(certificate.bound()).subtract(sum);
            lines.add(new Line("added by one model of all depots, taken as it is", added));
            bound = BigDecimal.valueOf(certificate.bound()).min(cost);
        }
        if (bound.add(CENT).compareTo(BigDecimal.valueOf(certificate.bound())) < 0) {
            faults.add("the bound adds up to " + cents(bound) + ", the certificate says "
                    + cents(BigDecimal.valueOf(certificate.bound())));
        }
        BigDecimal gap = cost.signum() == 0
                ? BigDecimal.ZERO
                : cost.subtract(bound).divide(cost.abs(), DecimalMoney.DIGITS).max(BigDecimal.ZERO);
        if (gap.doubleValue() > certificate.gap() + 1e-6) {
            faults.add("the gap is " + gap.doubleValue() + ", the certificate says " + certificate.gap());
        }
        return new BoundCheck(bound, gap, List.copyOf(lines), List.copyOf(faults));
    }

    private static void proved(Scenario scenario, Plan plan, List<Line> lines, List<String> faults) {
        Map<String, BigDecimal> limits = limits(scenario);
        Map<String, BigDecimal> prices = new TreeMap<>();
        for (DepotBound depot : plan.proof().depots()) {
            lines.add(new Line("bound of " + depot.depot() + " at the prices", BigDecimal.valueOf(depot.bound())));
        }
        for (String depot :
                plan.depots().stream().map(d -> d.depot()).distinct().toList()) {
            long times = plan.proof().depots().stream()
                    .filter(bound -> bound.depot().equals(depot))
                    .count();
            if (times != 1) {
                faults.add("depot " + depot + " has " + times + " bounds");
            }
        }
        for (PricedLimit limit : plan.proof().limits()) {
            BigDecimal price = BigDecimal.valueOf(limit.price());
            BigDecimal most = limits.get(limit.limit());
            prices.put(limit.limit(), price);
            if (most == null) {
                faults.add("the tables have no limit \"" + limit.limit() + "\"");
            } else if (most.compareTo(BigDecimal.valueOf(limit.most())) != 0) {
                faults.add("the limit \"" + limit.limit() + "\" is " + most.toPlainString() + ", the proof says "
                        + limit.most());
            }
            if (price.signum() < 0 && !limit.equation()) {
                faults.add("the limit \"" + limit.limit() + "\" has a price below 0");
            }
            BigDecimal worth = price.multiply(BigDecimal.valueOf(limit.most()), DecimalMoney.DIGITS);
            if (worth.signum() != 0) {
                lines.add(new Line("less the worth of " + limit.limit(), worth.negate()));
            }
        }
        quantities(scenario, prices, faults);
    }

    /** The price of pieces that count towards a quantity price is at least what any of its tiers takes off. */
    private static void quantities(Scenario scenario, Map<String, BigDecimal> prices, List<String> faults) {
        for (Phase phase : scenario.coupling().phases()) {
            BigDecimal budget = prices.getOrDefault("budget " + phase.id(), BigDecimal.ZERO);
            DecimalMoney money = DecimalMoney.of(scenario, phase);
            for (PriceTier tier : scenario.coupling().priceTiers()) {
                QuantityWorth worth = QuantityWorth.of(scenario, tier.item());
                BigDecimal off = worth.price().subtract(tier.price());
                BigDecimal most = off.multiply(worth.presentPerMoney(money).add(budget), DecimalMoney.DIGITS);
                BigDecimal price = prices.getOrDefault("quantity " + phase.id() + " " + tier.item(), BigDecimal.ZERO);
                if (price.add(new BigDecimal("1e-6")).compareTo(most) < 0) {
                    faults.add("the price of " + tier.item() + " in " + phase.id() + " is below what "
                            + tier.fromCount() + " pieces take off");
                }
            }
        }
    }

    /** Every limit of the tables by the name that proofs give it. */
    private static Map<String, BigDecimal> limits(Scenario scenario) {
        Map<String, BigDecimal> limits = new TreeMap<>();
        for (Phase phase : scenario.coupling().phases()) {
            phase.budget().ifPresent(budget -> limits.put("budget " + phase.id(), budget));
            scenario.coupling()
                    .priceTiers()
                    .forEach(tier -> limits.put("quantity " + phase.id() + " " + tier.item(), BigDecimal.ZERO));
            scenario.crews().stream()
                    .filter(crew -> scenario.basesOf(crew).size() > 1)
                    .forEach(crew -> limits.put("crew " + phase.id() + " " + crew.id(), BigDecimal.ONE));
        }
        for (RegionBudget budget : scenario.coupling().regionBudgets()) {
            limits.put("region budget " + budget.phase() + " " + budget.region(), budget.budget());
        }
        scenario.coupling()
                .deliveryLimits()
                .forEach(limit -> limits.put(
                        "delivery " + limit.phase() + " " + limit.item(), BigDecimal.valueOf(limit.count())));
        visits(scenario, limits);
        scenario.coupling().moves().forEach(move -> limits.put("moves " + move.item(), BigDecimal.ZERO));
        return limits;
    }

    /** What a host gives is at least what its guests count on, whatever the packs: more names than any plan has. */
    private static void visits(Scenario scenario, Map<String, BigDecimal> limits) {
        for (RouteStop stop : scenario.visits()) {
            for (DayOfWeek day : stop.days()) {
                String label = stop.season() + "_" + day.name().substring(0, 3);
                for (Phase phase : scenario.coupling().phases()) {
                    for (PackType pack : scenario.packTypes()) {
                        String name = "visit %s %s %s stop %d %s "
                                .formatted(phase.id(), stop.crew(), label, stop.stop(), pack.id());
                        limits.put(name + "full", BigDecimal.ZERO);
                        limits.put(name + "80", BigDecimal.ZERO);
                    }
                }
            }
        }
    }

    private static String cents(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }
}
