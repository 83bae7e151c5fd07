package depot.optimizer.model;

import java.util.ArrayList;
import java.util.List;

/**
 * The whole numbers of packs of two types that cover a need, and the inequalities that describe their convex hull.
 *
 * <p>For packs (a, b) &gt;= 0 with A a + B b &gt;= need and a + b &gt;= tools, the lower left boundary of the hull runs through the minimal covers; each of
 * its edges is an inequality alpha a + beta b &gt;= 1. The two types may hold any energy, so that rounding by one of them alone is weaker.
 */
final class CoverHull {

    /**
     * alpha a + beta b + perWh * short &gt;= 1.
     *
     * @param perWh what a Wh of shortage is worth at most, so that the inequality holds for every partly covered need too
     */
    record Facet(double alpha, double beta, double perWh) {}

    private record Point(int a, int b) {}

    private final double firstWh;
    private final double secondWh;
    private final double needWh;
    private final int tools;

    /**
     * @param firstWh usable energy of a pack of the first type, positive
     * @param secondWh of the second
     * @param tools least number of packs
     */
    CoverHull(double firstWh, double secondWh, double needWh, int tools) {
        this.firstWh = firstWh;
        this.secondWh = secondWh;
        this.needWh = needWh;
        this.tools = tools;
    }

    /** Facets of the hull, from many of the second type to many of the first. */
    List<Facet> facets() {
        List<Point> corners = corners();
        List<Facet> facets = new ArrayList<>();
        for (int i = 0; i + 1 < corners.size(); i++) {
            Point p = corners.get(i);
            Point q = corners.get(i + 1);
            double alpha = p.b() - q.b();
            double beta = q.a() - p.a();
            double right = alpha * p.a() + beta * p.b();
            facets.add(new Facet(alpha / right, beta / right, perWh(alpha / right, beta / right)));
        }
        return facets;
    }

    /** Least number of the second type beside a of the first. */
    private int least(int a) {
        int byEnergy = (int) Math.max(0, Math.ceil((needWh - a * firstWh) / secondWh - 1e-9));
        return Math.max(byEnergy, Math.max(0, tools - a));
    }

    /** Corners of the lower left hull of the minimal covers, by rising a (Andrew's monotone chain). */
    private List<Point> corners() {
        List<Point> hull = new ArrayList<>();
        for (int a = 0; ; a++) {
            Point next = new Point(a, least(a));
            while (hull.size() >= 2 && !turnsLeft(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next)) {
                hull.remove(hull.size() - 1);
            }
            hull.add(next);
            if (next.b() == 0) {
                return hull;
            }
        }
    }

    private static boolean turnsLeft(Point o, Point p, Point q) {
        return (long) (p.a() - o.a()) * (q.b() - o.b()) - (long) (p.b() - o.b()) * (q.a() - o.a()) > 0;
    }

    /** Largest share of the inequality that a Wh of shortage can be standing in for, over all packs that break it. */
    private double perWh(double alpha, double beta) {
        double most = 1 / needWh;
        for (int a = 0; alpha * a < 1; a++) {
            for (int b = 0; alpha * a + beta * b < 1 - 1e-9; b++) {
                double lacking = 1 - alpha * a - beta * b;
                double wh = Math.max(needWh - a * firstWh - b * secondWh, missingTools(a + b));
                if (wh > 0) {
                    most = Math.max(most, lacking / wh);
                }
                if (beta == 0) {
                    break;
                }
            }
            if (alpha == 0) {
                break;
            }
        }
        return most;
    }

    /** The shortage that excuses packs missing for tools: as large a share of the need as of the tools. */
    private double missingTools(int packs) {
        return needWh * Math.max(0, tools - packs) / Math.max(1, tools);
    }
}
