package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Parts of a record that a tariff of a scenario has no place for. A record that has one is refused, unless it is left out on purpose. */
public enum RecordPart {
    /** Prices paid for energy that is fed back. */
    SELL("prices for energy fed back to the grid", EnergyPrices.STRUCTURE) {
        @Override
        boolean isIn(RateFields fields) {
            return tiers(fields, EnergyPrices.STRUCTURE).anyMatch(tier -> charged(tier.sell()));
        }
    },
    /** A charge for the draw at the moment of the grid's own peak. */
    COINCIDENT("a charge for the draw at the time of the grid's own peak", "coincidentratestructure") {
        @Override
        boolean isIn(RateFields fields) {
            return tiers(fields, "coincidentratestructure").anyMatch(tier -> charged(tier.price()));
        }
    },
    /** Demand billed for months after the one that it was drawn in. */
    RATCHET("demand that is billed in later months too", "demandratchetpercentage") {
        @Override
        boolean isIn(RateFields fields) {
            return fields.monthly("demandratchetpercentage").orElse(List.of()).stream()
                    .anyMatch(share -> share.signum() != 0);
        }
    },
    /** A charge for reactive power. */
    REACTIVE("a charge for reactive power", "demandreactivepowercharge") {
        @Override
        boolean isIn(RateFields fields) {
            return charged(fields.number("demandreactivepowercharge"));
        }
    },
    /** A least amount of the bill. */
    MINIMUM("a least amount of the bill", "mincharge") {
        @Override
        boolean isIn(RateFields fields) {
            return Stream.of("mincharge", "minmonthlycharge", "annualmincharge")
                    .anyMatch(field -> charged(fields.number(field)));
        }
    };

    private final String meaning;
    private final String field;

    RecordPart(String meaning, String field) {
        this.meaning = meaning;
        this.field = field;
    }

    /** Its name on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is, in plain words. */
    public String meaning() {
        return meaning;
    }

    abstract boolean isIn(RateFields fields);

    /** Tells which parts a record has: errors, or notices of those that are left out. */
    static void check(RateFields fields, Set<RecordPart> leftOut) {
        for (RecordPart part : values()) {
            if (!part.isIn(fields)) {
                continue;
            }
            int line = fields.line(part.field);
            if (leftOut.contains(part)) {
                fields.remarks().notice(part.field, line, part.meaning + " is left out", "as asked");
            } else {
                String message = "a tariff of a scenario cannot say " + part.meaning;
                fields.remarks().error(part.field, line, message, "--leave-out " + part.word() + " goes on without it");
            }
        }
    }

    private static Stream<Tier> tiers(RateFields fields, String structure) {
        return fields.structure(structure).orElse(List.of()).stream().flatMap(List::stream);
    }

    private static boolean charged(Optional<BigDecimal> amount) {
        return amount.isPresent() && amount.get().signum() != 0;
    }
}
