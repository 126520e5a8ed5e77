package corewright.repair.fill;

import static corewright.DamageFixtures.deck;
import static corewright.DamageFixtures.rectangle;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.DamageFixtures.Deck;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.repair.mix.Curing;
import corewright.repair.pattern.Cavity;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillFlowTest {
    /**
     * 0.6 x 0.4 m, gap 3 mm, 0.5 Pa s, a square of 20 mm in one corner at 50 kPa, in the opposite one at 0. Reference:
     * SciPy 1.10.1 (splu) on 4, 2 and 1 mm, Richardson extrapolation with exponent 4/3; its uncertainty is 5 Pa and 0.05 %.
     * Wanted of a fine grid: 0.2 % of 50 kPa.
     */
    @Test
    void pressuresAgreeWithTheReference() {
        int columns = 302;
        int rows = 202;
        PressureField field = PressureField.closed(rows, columns);
        boolean[] free = new boolean[rows * columns];
        double[] extra = new double[rows * columns];
        double[] source = new double[rows * columns];
        double[] pressure = new double[rows * columns];
        for (int r = 1; r < rows - 1; r++) {
            for (int c = 1; c < columns - 1; c++) {
                free[r * columns + c] = !(r <= 10 && c <= 10) && !(r > rows - 12 && c > columns - 12);
            }
        }
        double t = PressureField.conductance(3, 3);
        for (int i = columns; i < rows * columns - columns; i++) {
            boolean inside = i % columns > 0 && i % columns < columns - 1;
            for (int step : new int[] {1, columns, -1, -columns}) {
                int j = i + step;
                boolean there =
                        j / columns > 0 && j / columns < rows - 1 && j % columns > 0 && j % columns < columns - 1;
                if (!inside || !there || !free[i]) {
                    continue;
                }
                if (free[j]) {
                    (step == 1 || step == -1 ? field.east : field.north)[Math.min(i, j)] = t;
                } else {
                    extra[i] += 2 * t; // the square's edge lies half a cell off
                    source[i] += j / columns <= 10 ? 2 * t * 50_000 : 0;
                }
            }
        }
        int[] cells = IntStream.range(0, free.length).filter(i -> free[i]).toArray();
        field.solve(cells, extra, source, pressure, 1e-8);
        double[][] probes = {
            {100, 100, 34454.6}, {300, 200, 25000}, {500, 300, 15545.4}, {500, 100, 21008.0}, {100, 300, 28992.0}
        };
        for (double[] p : probes) {
            int c = (int) (p[0] / 2); // between the cells c and c + 1, counted with the margin
            int r = (int) (p[1] / 2);
            double mean = (pressure[r * columns + c]
                            + pressure[r * columns + c + 1]
                            + pressure[(r + 1) * columns + c]
                            + pressure[(r + 1) * columns + c + 1])
                    / 4;
            assertThat(mean).as("at %s, %s", p[0], p[1]).isCloseTo(p[2], within(100.0));
        }
        double flow = 0;
        for (int i : cells) {
            flow += source[i] - (source[i] > 0 ? extra[i] * pressure[i] : 0);
        }
        assertThat(flow / 0.5 * 1e-9).isCloseTo(6.1331e-5, Percentage.withPercentage(0.2));
    }

    /**
     * Manufactured: {@code p = cos(pi x) cos(pi y)} between closed edges, {@code h^3 / 12 = 2 + sin(x) y}; one more term
     * of weight 1 makes it definite. Halving the cells quarters the error.
     */
    @Test
    void theErrorFallsWithTheSquareOfTheCell() {
        double coarse = manufactured(20);
        double middle = manufactured(40);
        double fine = manufactured(80);
        assertThat(Math.log(coarse / middle) / Math.log(2)).isBetween(1.9, 2.1);
        assertThat(Math.log(middle / fine) / Math.log(2)).isBetween(1.9, 2.1);
    }

    private static double manufactured(int n) {
        int columns = n + 2;
        double a = 1.0 / n;
        DoubleBinaryOperator k = (x, y) -> 2 + Math.sin(x) * y;
        DoubleBinaryOperator exact = (x, y) -> Math.cos(Math.PI * x) * Math.cos(Math.PI * y);
        PressureField field = PressureField.closed(columns, columns);
        double[] extra = new double[columns * columns];
        double[] source = new double[columns * columns];
        double[] pressure = new double[columns * columns];
        int[] cells = new int[n * n];
        for (int r = 1; r <= n; r++) {
            for (int c = 1; c <= n; c++) {
                int i = r * columns + c;
                double x = (c - 0.5) * a;
                double y = (r - 0.5) * a;
                cells[(r - 1) * n + c - 1] = i;
                double h = Math.cbrt(12 * k.applyAsDouble(x, y));
                if (c < n) {
                    field.east[i] = PressureField.conductance(h, Math.cbrt(12 * k.applyAsDouble(x + a, y)));
                }
                if (r < n) {
                    field.north[i] = PressureField.conductance(h, Math.cbrt(12 * k.applyAsDouble(x, y + a)));
                }
                double p = exact.applyAsDouble(x, y);
                double px = -Math.PI * Math.sin(Math.PI * x) * Math.cos(Math.PI * y);
                double py = -Math.PI * Math.cos(Math.PI * x) * Math.sin(Math.PI * y);
                double divergence =
                        -2 * Math.PI * Math.PI * p * k.applyAsDouble(x, y) + px * Math.cos(x) * y + py * Math.sin(x);
                extra[i] = a * a;
                source[i] = a * a * (p - divergence);
            }
        }
        field.solve(cells, extra, source, pressure, 1e-11);
        double sum = 0;
        for (int i : cells) {
            double e = pressure[i] - exact.applyAsDouble((i % columns - 0.5) * a, (i / columns - 0.5) * a);
            sum += e * e;
        }
        return Math.sqrt(sum) * a;
    }

    /**
     * Constant pressure into a wide gap against the closed form (radial-fill.csv, SciPy brentq): rows N1, N2, X1, X2. The
     * radius comes from the volume. Wanted 3 %: what the step of the front costs on cells of 12.5 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 3, 30000, 0.4, 0, 5, 361.97678",
        "3, 3, 30000, 0.4, 0, 20, 676.3793",
        "1.5, 3, 30000, 0.4, 0, 20, 361.97678",
        "1.5, 3, 30000, 0.4, 0, 60, 593.68514",
        "3, 3, 30000, 0.4, 600, 20, 671.29671",
        "1.5, 3, 30000, 0.4, 300, 60, 567.84634"
    })
    void aHoleInAPlainFillsACircle(
            double gapMm, double r0, double pa, double mu, double tau, double atS, double radiusMm) {
        Cavity cavity = cavity(1500, 1500, gapMm, 12.5);
        FillFlow flow = new FillFlow(cavity, new double[cavity.size()], liquid(0, mu, tau), 0.3);
        int hole = cell(cavity, 750, 750);
        flow.outlet[cell(cavity, 20, 20)] = true;
        flow.begin(hole, 1e99, 0, 0);
        double t = 0;
        double into = flow.volume[hole];
        while (t < atS - 1e-9) {
            FillFlow.Step step = flow.inject(
                    hole, new Pushing.Tool(pa, Double.POSITIVE_INFINITY, r0, 0, 0), Double.MAX_VALUE, atS - t);
            t += step.seconds();
            into += step.intoMm3();
        }
        double held = 0;
        for (int c : cavity.cells) {
            held += flow.liquid[c];
        }
        assertThat(held).isCloseTo(into, Percentage.withPercentage(1e-6)); // nothing lost
        assertThat(Math.sqrt(held / (Math.PI * gapMm))).isCloseTo(radiusMm, Percentage.withPercentage(3));
        double along = reached(cavity, flow, hole, 1);
        double across = reached(cavity, flow, hole, 1 + cavity.columns) * Math.sqrt(2);
        assertThat(along).isCloseTo(across, within(2.5 * cavity.cell));
    }

    private static double reached(Cavity cavity, FillFlow flow, int from, int step) {
        int n = 0;
        while (cavity.inside(from + n * step) && flow.filled(from + n * step) >= 0.5) {
            n++;
        }
        return n * cavity.cell;
    }

    /** {@code t = 6 mu L^2 / (h^2 p)} (channel-fill.csv): from one end of a strip; within 3 %, half a cell at the start. */
    @ParameterizedTest
    @CsvSource({"3, 500, 30000, 0.4, 2.2222222", "1.5, 300, 50000, 0.6, 2.88"})
    void aChannelFillsWithTheSquareOfItsLength(double gapMm, double length, double pa, double mu, double fillS) {
        Cavity cavity = cavity(length + 40, 9.9, gapMm, 5);
        FillFlow flow = new FillFlow(cavity, new double[cavity.size()], liquid(0, mu, 0), 0.3);
        // r0 at 0.2 cells: the cell itself stands at the tool's pressure; one end cell feeds both
        double t = fill(cavity, new double[cavity.size()], liquid(0, mu, 0), pa, length);
        assertThat(t).isCloseTo(fillS, Percentage.withPercentage(3));
    }

    /**
     * Up a slope at constant pressure: {@code dL/dt = h^2 (p - b L) / (12 mu L)} with b the weight of the mix along the slope,
     * so that {@code t = 12 mu / h^2 (-L/b - p/b^2 ln(1 - b L/p))} (plates after Hele-Shaw 1898; Washburn 1921 with a
     * head). Half way to where the weight holds it: within 3 %, half a cell at the start.
     */
    @ParameterizedTest
    @CsvSource({"10, 3000, 400", "90, 6000, 300"})
    void aFrontClimbsASlopeAsItsWeightLetsIt(double tiltDeg, double pa, double length) {
        Cavity cavity = cavity(length + 40, 9.9, 3, 5);
        double b = 1160 * 9.81e-3 * Math.sin(Math.toRadians(tiltDeg)); // Pa a millimetre
        double[] height = new double[cavity.size()];
        for (int c : cavity.cells) {
            height[c] = Math.sin(Math.toRadians(tiltDeg)) * (cavity.x(c) - 1000);
        }
        double mu = 0.4;
        double fillS = 12 * mu / 9 * (-length / b - pa / (b * b) * Math.log(1 - b * length / pa));
        double t = fill(cavity, height, liquid(1160, mu, 0), pa, length);
        assertThat(t).isCloseTo(fillS, Percentage.withPercentage(3));
    }

    /**
     * A gap that grows or shrinks evenly along a strip, {@code h = h0 + k x}: {@code Q = p / (12 mu int dx/h^3)}, so that
     * {@code t = 6 mu / (p k^2) ((h^2 - h0^2) / (2 h0^2) - ln(h/h0))} (lubrication, Reynolds 1886). Within 3 %, as in an even strip.
     */
    @ParameterizedTest
    @CsvSource({"2, 4", "4, 2", "1.5, 6"})
    void aFrontInAWedgeFollowsItsGap(double firstMm, double lastMm) {
        double length = 400;
        double k = (lastMm - firstMm) / length;
        Cavity cavity = cavity(length + 40, 9.9, (x, y) -> firstMm + k * (x - 1000), 5);
        double mu = 0.5;
        double pa = 20_000;
        double fillS = 6
                * mu
                / (pa * k * k)
                * ((lastMm * lastMm - firstMm * firstMm) / (2 * firstMm * firstMm) - Math.log(lastMm / firstMm));
        double t = fill(cavity, new double[cavity.size()], liquid(0, mu, 0), pa, length);
        assertThat(t).isCloseTo(fillS, Percentage.withPercentage(3));
    }

    /**
     * A second cup behind the first, each thickening from its own mixing as {@code mu0 exp(age/tau)}. The first is l long when
     * the second, mixed t1 later, comes in; with r = exp(-t1/tau) and y what it has pushed: {@code l y + r y^2 / 2 = h^2 p tau /
     * (12 mu0) (exp(-t1/tau) - exp(-t/tau))}, two fluids in series between plates (Hele-Shaw 1898). Within 6 % on cells of 5 mm (5.2 % when written): where they meet, ages
     * are averaged in a cell.
     */
    @ParameterizedTest
    @CsvSource({"0, 150, 150", "200, 150, 150", "400, 100, 200"})
    void aSecondCupPushesTheFirstThatIsThicker(double laterS, double firstMm, double secondMm) {
        double mu0 = 0.5;
        double tau = 300;
        double h = 2;
        double pa = 20_000;
        Cavity cavity = cavity(firstMm + secondMm + 40, 9.9, h, 5);
        FillFlow flow = strip(cavity, new double[cavity.size()], liquid(0, mu0, tau), 1e99);
        double width = cells(cavity, 5).length * cavity.cell;
        into(flow, cavity, 1e9, 0, h * width * firstMm);
        double startS = Math.max(flow.nowS, laterS);
        flow.rise(startS);
        double mixedS = laterS;
        double secondS = into(flow, cavity, pa, mixedS, h * width * secondMm);
        double r = Math.exp(-mixedS / tau);
        double pushed = (firstMm * secondMm + r * secondMm * secondMm / 2) * 12 * mu0 / (h * h * pa * tau);
        double endS = -tau * Math.log(Math.exp(-startS / tau) - pushed);
        assertThat(secondS).isCloseTo(endS - startS, Percentage.withPercentage(6));
    }

    /** Liquid into a strip; how long that takes. */
    private static double into(FillFlow flow, Cavity cavity, double pa, double mixedAtS, double mm3) {
        double left = mm3;
        double t = 0;
        while (left > 1e-6 * mm3) {
            FillFlow.Step step = flow.inject(
                    cells(cavity, 5)[0],
                    new Pushing.Tool(pa, Double.POSITIVE_INFINITY, 0.2 * cavity.cell, 0, mixedAtS),
                    left,
                    1e9);
            assertThat(step.intoMm3()).as("it flows").isPositive();
            left -= step.intoMm3();
            t += step.seconds();
        }
        return t;
    }

    /** Until a strip is full to a length. */
    private static double fill(Cavity cavity, double[] height, Curing mix, double pa, double length) {
        FillFlow flow = strip(cavity, height, mix, 1e99);
        int far = cell(cavity, length - 2.5, 2.5);
        double t = 0;
        while (!flow.full[far]) {
            FillFlow.Step step = flow.inject(
                    cells(cavity, 5)[0],
                    new Pushing.Tool(pa, Double.POSITIVE_INFINITY, 0.2 * cavity.cell, 0, 0),
                    Double.MAX_VALUE,
                    1e9);
            assertThat(step.intoMm3()).as("it flows").isPositive();
            t += step.seconds();
        }
        return t;
    }

    private static FillFlow strip(Cavity cavity, double[] height, Curing mix, double most) {
        FillFlow flow = new FillFlow(cavity, height, mix, 0.3);
        flow.outlet[cavity.cells[cavity.cells.length - 1]] = true; // the far end
        for (int end : cells(cavity, 5)) {
            flow.begin(end, most, 0, 0);
        }
        return flow;
    }

    private static int[] cells(Cavity cavity, double toMm) {
        return IntStream.of(cavity.cells).filter(c -> cavity.x(c) < 1000 + toMm).toArray();
    }

    /** A free circle of mix that rises to X times its volume: nothing is lost, the front is a circle still. */
    @Test
    void theRiseKeepsTheMassAndTheCircle() {
        Cavity cavity = cavity(1000, 1000, 4, 12.5);
        FillFlow flow = new FillFlow(
                cavity, new double[cavity.size()], new Curing(1160, 10, Double.POSITIVE_INFINITY, 100, 700, 4.83), 0.6);
        int hole = cell(cavity, 500, 500);
        flow.outlet[cell(cavity, 20, 20)] = true;
        double left = flow.begin(hole, 100_000, 0, 0);
        while (left > 1) {
            left -= flow.inject(hole, new Pushing.Tool(1e9, 3000, 3.2, 0, 0), left, 1e9)
                    .intoMm3();
        }
        for (int i = 0; i <= 60; i++) {
            flow.rise(100 + 10 * i);
        }
        double held = 0;
        double risen = 0;
        for (int c : cavity.cells) {
            held += flow.liquid[c];
            risen += flow.filled(c) * flow.volume[c];
        }
        assertThat(held).isCloseTo(100_000, Percentage.withPercentage(0.01));
        assertThat(risen)
                .isCloseTo(483_000, Percentage.withPercentage(2)); // what still waits in full cells is left out
        double radius = Math.sqrt(483_000 / (Math.PI * 4));
        assertThat(reached(cavity, flow, hole, 1)).isCloseTo(radius, within(2 * cavity.cell));
        assertThat(reached(cavity, flow, hole, 1 + cavity.columns) * Math.sqrt(2))
                .isCloseTo(radius, within(2 * cavity.cell));
    }

    /** Two kilopascals hold up 176 mm of a mix of 1160 kg/m3 and no more. */
    @Test
    void gravityHoldsTheMixDownOnAWall() {
        Cavity cavity = cavity(100, 600, 4, 10);
        double[] height = new double[cavity.size()];
        for (int c : cavity.cells) {
            height[c] = cavity.y(c);
        }
        FillFlow flow = new FillFlow(cavity, height, liquid(1160, 0.4, 0), 0.6);
        int hole = cell(cavity, 50, 5);
        flow.outlet[cell(cavity, 50, 595)] = true;
        flow.begin(hole, 1e9, 0, 0);
        for (int i = 0; i < 2000; i++) {
            flow.inject(hole, new Pushing.Tool(2000, Double.POSITIVE_INFINITY, 3.2, 0, 0), 1e9, 60);
        }
        assertThat(reached(cavity, flow, hole, cavity.columns)).isCloseTo(2000 / 1.16 / 9.81, within(20.0));
    }

    /** A dead end without a vent keeps its air at Boyle's pressure. */
    @Test
    void enclosedAirIsSqueezedNotLost() {
        Cavity cavity = cavity(400, 9.9, 4, 5);
        FillFlow flow = new FillFlow(cavity, new double[cavity.size()], liquid(0, 0.4, 0), 0.3);
        int hole = cell(cavity, 2, 2);
        flow.outlet[hole] = true;
        flow.begin(hole, 1e9, 0, 0);
        for (int i = 0; i < 500; i++) {
            flow.inject(hole, new Pushing.Tool(40_000, Double.POSITIVE_INFINITY, 1, 0, 0), 1e9, 60);
        }
        double filled = 0;
        for (int c : cavity.cells) {
            filled += flow.filled(c) / cavity.cells.length;
        }
        assertThat(filled).isCloseTo(1 - 101.325 / 141.325, within(0.03));
    }

    /** A mix that does not rise; {@code tau} 0 does not thicken. */
    private static Curing liquid(double densityKgM3, double mu, double tau) {
        return new Curing(densityKgM3, mu, tau > 0 ? tau : Double.POSITIVE_INFINITY, 1, 1, 1);
    }

    private static Cavity cavity(double length, double width, double gapMm, double cellMm) {
        return cavity(length, width, (x, y) -> gapMm, cellMm);
    }

    private static Cavity cavity(double length, double width, DoubleBinaryOperator gapMm, double cellMm) {
        Deck deck = deck(rectangle(900, -100, 1200 + length, 200 + width))
                .region(Condition.VOID, rectangle(1000, 0, 1000 + length, width), gapMm, 0.1);
        FaceDamage damage = deck.damage().faces().get(0);
        return Cavity.of(
                damage.regions().get(0).likely(), deck.face(), damage.surfaces().voidDepthMm(), cellMm, 0.3);
    }

    private static int cell(Cavity cavity, double x, double y) {
        int row = (int) Math.floor((y - cavity.y0) / cavity.cell);
        int column = (int) Math.floor((1000 + x - cavity.x0) / cavity.cell);
        return row * cavity.columns + column;
    }
}
