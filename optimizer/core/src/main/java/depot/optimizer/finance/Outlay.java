package depot.optimizer.finance;

import depot.optimizer.finance.Payment.Reason;
import java.util.ArrayList;
import java.util.List;

/** What one unit of a cost line pays, and when. The payments have the outlay's present cost. */
public sealed interface Outlay {

    /** Present cost over the horizon. */
    double presentCost(PresentCost money);

    /** Every payment within the horizon. */
    List<Payment> payments(PresentCost money);

    /** A piece bought and mounted when the phase begins, and those that follow it. */
    record Piece(double price, double installCost, double lifeYears) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return money.newPiece(price, installCost, lifeYears);
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            List<Payment> payments = new ArrayList<>();
            payments.add(new Payment(Reason.PURCHASE, money.fromYear(), price));
            payments.add(new Payment(Reason.INSTALLATION, money.fromYear(), installCost));
            payments.addAll(replacements(money, price, lifeYears));
            payments.add(new Payment(Reason.VALUE_AT_END, money.horizonYears(), -money.valueAtEnd(price, lifeYears)));
            return payments;
        }
    }

    /** A piece that is there already, as good as new: only those that follow it are paid for. */
    record OwnedPiece(double price, double lifeYears) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return money.ownedPiece(price, lifeYears);
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            List<Payment> payments = new ArrayList<>(replacements(money, price, lifeYears));
            if (!payments.isEmpty()) {
                double value = money.valueAtEnd(price, lifeYears);
                payments.add(new Payment(Reason.VALUE_AT_END, money.horizonYears(), -value));
            }
            return payments;
        }
    }

    /**
     * A piece bought when the phase begins that nothing paid here follows: it is worth its remaining life at the end, and nothing once its life is over.
     * So is what a quantity price takes off (price below 0): it holds for the purchase, while pieces that follow at the end of a life cost their own price.
     */
    record SinglePiece(double price, double lifeYears) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return followed(money) ? price * money.atStart() : money.newPiece(price, 0, lifeYears);
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            double value = followed(money) ? 0 : money.valueAtEnd(price, lifeYears);
            return List.of(
                    new Payment(Reason.PURCHASE, money.fromYear(), price),
                    new Payment(Reason.VALUE_AT_END, money.horizonYears(), -value));
        }

        private boolean followed(PresentCost money) {
            return !money.replacementYears(lifeYears).isEmpty();
        }
    }

    /** A pack of a stock that is kept whole: at the end it is worth its price. */
    record StockedPack(double price) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return money.stockedPack(price);
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            return List.of(
                    new Payment(Reason.PURCHASE, money.fromYear(), price),
                    new Payment(Reason.VALUE_AT_END, money.horizonYears(), -price));
        }
    }

    /** Something built when the phase begins that leaves nothing. */
    record Building(double cost) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return cost * money.atStart();
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            return List.of(new Payment(Reason.INSTALLATION, money.fromYear(), cost));
        }
    }

    /** The same at the end of every year of the phase. */
    record EveryYear(double cost) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return cost * money.annuity();
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            return running(money.growing(0), cost);
        }
    }

    /** At the end of every year of the phase, and rising with the price of electricity from the horizon's first one on. */
    record Electricity(double costInFirstYear) implements Outlay {

        @Override
        public double presentCost(PresentCost money) {
            return costInFirstYear * money.electricityAnnuity();
        }

        @Override
        public List<Payment> payments(PresentCost money) {
            return running(money.growing(money.electricityPriceGrowth()), costInFirstYear);
        }
    }

    private static List<Payment> replacements(PresentCost money, double price, double lifeYears) {
        return money.replacementYears(lifeYears).stream()
                .map(years -> new Payment(Reason.REPLACEMENT, years, price))
                .toList();
    }

    private static List<Payment> running(List<Double> yearly, double cost) {
        List<Payment> payments = new ArrayList<>();
        for (int year = 1; year <= yearly.size(); year++) {
            payments.add(new Payment(Reason.RUNNING, year, cost * yearly.get(year - 1)));
        }
        return payments;
    }
}
