package depot.optimizer.finance;

import java.util.List;

/**
 * What taxes change. Purchases at what was paid for them (spare pieces with them, and less what quantity prices take off),
 * installation, and replacements at the end of a life are written off by the schedule, its first share in the year after
 * the payment. Running costs and worn packs are costs of their year. What is sold at the end for more than is left in the
 * books is taxed, and a loss is set off. Without a schedule neither happens. A loss of a year counts against other profits
 * of the firm.
 */
final class TaxFlows {

    private static final List<FlowKind> WRITTEN_OFF =
            List.of(FlowKind.PURCHASES, FlowKind.FLEET_PURCHASES, FlowKind.INSTALLATION, FlowKind.REPLACEMENTS);

    private static final List<FlowKind> OF_THE_YEAR = List.of(
            FlowKind.PACK_REPLACEMENT,
            FlowKind.ENERGY,
            FlowKind.DEMAND,
            FlowKind.STANDING,
            FlowKind.CREW_BASES,
            FlowKind.SHORTAGE,
            FlowKind.PETROL_SAVED,
            FlowKind.CARBON_SAVED);

    private final YearFlows flows;
    private final int horizonYears;
    private final double taxRate;
    private final List<Double> writeOffs;

    TaxFlows(YearFlows flows, int horizonYears, double taxRate, List<Double> writeOffs) {
        this.flows = flows;
        this.horizonYears = horizonYears;
        this.taxRate = taxRate;
        this.writeOffs = writeOffs;
    }

    /** Adds the taxes to the flows that they are worked out from. */
    void add() {
        double inBooks = intoBooks(0);
        for (int year = 1; year <= horizonYears; year++) {
            double writeOff = writeOff(year);
            inBooks += intoBooks(year) - writeOff;
            flows.add(FlowKind.TAX_SHIELD, year, taxRate * writeOff);
            flows.add(FlowKind.TAX_ON_SAVING, year, -taxRate * saving(year));
        }
        if (!writeOffs.isEmpty()) {
            double gain = flows.at(FlowKind.VALUE_AT_END, horizonYears) - inBooks;
            flows.add(FlowKind.TAX_ON_SAVING, horizonYears, -taxRate * gain);
        }
    }

    /** What is paid in a year and goes into the books. */
    private double intoBooks(int year) {
        return -WRITTEN_OFF.stream().mapToDouble(kind -> flows.at(kind, year)).sum();
    }

    private double writeOff(int year) {
        double sum = 0;
        for (int age = 1; age <= Math.min(year, writeOffs.size()); age++) {
            sum += intoBooks(year - age) * writeOffs.get(age - 1);
        }
        return sum;
    }

    private double saving(int year) {
        return OF_THE_YEAR.stream().mapToDouble(kind -> flows.at(kind, year)).sum();
    }
}
