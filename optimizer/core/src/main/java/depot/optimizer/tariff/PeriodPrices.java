package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The price of each period of a structure, where it has one that does not depend on how much is used. */
final class PeriodPrices {
    private final List<Optional<BigDecimal>> prices;

    private PeriodPrices(List<Optional<BigDecimal>> prices) {
        this.prices = prices;
    }

    /**
     * Looks at the periods that are used.
     *
     * @return empty after telling which of them have no single price
     */
    static Optional<PeriodPrices> of(List<List<Tier>> structure, String field, Set<Integer> used, RateFields fields) {
        long before = fields.remarks().errors();
        List<Optional<BigDecimal>> prices = new ArrayList<>();
        for (int period = 0; period < structure.size(); period++) {
            boolean asked = used.contains(period);
            String place = field + "[" + period + "]";
            prices.add(asked ? price(structure.get(period), place, fields) : Optional.empty());
        }
        return fields.remarks().errors() == before ? Optional.of(new PeriodPrices(prices)) : Optional.empty();
    }

    /** Price of a period that is used, US dollars a unit. */
    BigDecimal of(int period) {
        return prices.get(period).orElseThrow();
    }

    private static Optional<BigDecimal> price(List<Tier> tiers, String place, RateFields fields) {
        Remarks remarks = fields.remarks();
        int line = fields.line(place.substring(0, place.indexOf('[')));
        if (tiers.isEmpty()) {
            remarks.error(place, line, "the period has no tier, so it has no price", "write [{\"rate\": 0}] for free");
            return Optional.empty();
        }
        Set<BigDecimal> different = new TreeSet<>();
        for (Tier tier : tiers) {
            if (tier.price().isEmpty()) {
                remarks.error(
                        tier.value(), tier.place(), "neither rate nor adj", "write \"rate\": 0 when it costs nothing");
                return Optional.empty();
            }
            different.add(tier.price().get());
        }
        if (different.size() > 1) {
            remarks.error(
                    place,
                    tiers.get(0).value().line(),
                    "the price depends on how much is used: %d tiers, %s".formatted(tiers.size(), words(tiers)),
                    "a tariff of a scenario has one price a period; keep the tier that fits and delete the others");
            return Optional.empty();
        }
        return tiers.get(0).price();
    }

    private static String words(List<Tier> tiers) {
        return String.join(
                ", ",
                tiers.stream()
                        .map(tier -> tier.price().orElseThrow().toPlainString())
                        .toList());
    }
}
