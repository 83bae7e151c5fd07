package depot.optimizer.finance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Sums flows by kind and year. What is paid within a year is carried to its end with interest, so that its present value stays. */
final class YearFlows {

    private final PresentCost money;
    private final Map<FlowKind, double[]> sums = new EnumMap<>(FlowKind.class);

    YearFlows(PresentCost money) {
        this.money = money;
        for (FlowKind kind : FlowKind.values()) {
            sums.put(kind, new double[money.horizonYears() + 1]);
        }
    }

    /** Adds what is received at a time; below 0: paid. */
    void add(FlowKind kind, double years, double amount) {
        int year = (int) Math.ceil(years - PresentCost.ROUNDING);
        double early = year - years;
        sums.get(kind)[year] += early < PresentCost.ROUNDING ? amount : amount * money.factor(-early);
    }

    double at(FlowKind kind, int year) {
        return sums.get(kind)[year];
    }

    Map<FlowKind, List<Double>> byKind() {
        Map<FlowKind, List<Double>> lists = new EnumMap<>(FlowKind.class);
        sums.forEach((kind, yearly) -> {
            List<Double> list = new ArrayList<>();
            for (double amount : yearly) {
                list.add(amount);
            }
            lists.put(kind, List.copyOf(list));
        });
        return lists;
    }
}
