package depot.optimizer.cli;

import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Certificate;
import depot.optimizer.report.text.Figures;

/** Tells on the terminal how far planning is. */
final class PlanProgress implements ProgressListener {

    private final Terminal terminal;

    PlanProgress(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void depotDone(String depot, int done, int total, Certificate certificate) {
        terminal.progress("Planned %d of %d depots: %s costs %s, proven to %s"
                .formatted(
                        done, total, depot, Figures.read(certificate.cost(), 0), Figures.percent(certificate.gap())));
    }

    @Override
    public void pricesFound(double bound, double cost) {
        terminal.progress("Priced what the depots share: the fleet costs at least about %s".formatted(amount(bound)));
    }

    @Override
    public void fleetPlan(Certificate certificate) {
        terminal.progress("Planned the fleet: costs %s, proven to %s"
                .formatted(amount(certificate.cost()), Figures.percent(certificate.gap())));
    }

    @Override
    public void stopped() {
        terminal.progress("Ending with the best plan so far");
    }

    private static String amount(double amount) {
        return Figures.read(amount, 0);
    }
}
