package org.evenhand.chart;

import java.util.List;
import org.evenhand.words.Words;

/** Step curves over time, from 100 % down. */
record SurvivalLayout(SurvivalChart chart, Words words) implements Layout {

    private static final double TOP = 30;
    private static final double PLOT = 230;

    private Key key() {
        boolean censored =
                chart.curves().stream().anyMatch(curve -> !curve.censoredAtS().isEmpty());
        Key key = new Key();
        return censored ? key.with(Key.sign(Sign.STROKE, Ink.INK), chart.censoredMeans()) : key;
    }

    @Override
    public int height(int width) {
        return (int) Math.ceil(TOP + PLOT + 42 + key().height(width) + 4);
    }

    @Override
    public void paint(Sheet sheet) {
        Axis y = new Axis(0, 100, false, TOP + PLOT, TOP);
        Ticks yTicks = Ticks.linear(0, 100, 6).in(words);
        double left = Frame.room(yTicks);
        List<String> labels =
                chart.curves().stream().map(SurvivalChart.Curve::label).toList();
        double right = sheet.width() - EndLabels.room(labels, sheet.width() * 0.28);
        Axis time = new Axis(0, chart.toS(), false, left, right);
        String title = chart.shareTitle() + " (%)";
        sheet.text(
                Ink.INK, Sheet.SMALL, Sheet.Anchor.START, 0, 12, Lettering.shorten(title, Sheet.SMALL, sheet.width()));
        sheet.dashes(Ink.MUTED, 0.7, new float[] {2, 3}, left, y.at(50), right, y.at(50));
        Plot plot = new Plot((int) left - 2, (int) TOP - 6, (int) Math.ceil(right - left) + 6, (int) PLOT + 12);
        EndLabels ends = new EndLabels();
        for (int i = 0; i < chart.curves().size(); i++) {
            SurvivalChart.Curve curve = chart.curves().get(i);
            curve(sheet, plot, curve, LineLook.series(i), time, y);
            ends.add(time.at(curve.endS()), y.at(100 * curve.shareAt(curve.endS())), curve.label());
        }
        plot.paint(sheet);
        ends.paint(sheet, right, TOP, TOP + PLOT);
        Frame.left(sheet, y, left, yTicks);
        Ticks ticks = Ticks.time(0, chart.toS(), (int) Math.max(3, time.lengthPx() / 40))
                .in(words);
        Frame.below(sheet, time, TOP + PLOT, ticks);
        String below = chart.timeTitle() + " (" + ticks.unit() + ")";
        sheet.text(Ink.INK, Sheet.SMALL, Sheet.Anchor.START, left, TOP + PLOT + 36, below);
        key().paint(sheet, 0, sheet.width(), TOP + PLOT + 42);
    }

    private static void curve(Sheet sheet, Plot plot, SurvivalChart.Curve curve, LineLook look, Axis time, Axis y) {
        int n = curve.steps().size();
        double[] times = new double[n + 2];
        double[] shares = new double[n + 2];
        shares[0] = 100;
        for (int i = 0; i < n; i++) {
            times[i + 1] = curve.steps().get(i).timeS();
            shares[i + 1] = 100 * curve.steps().get(i).share();
            sheet.mark("time", "step", times[i + 1], time);
            sheet.mark("share", "step", shares[i + 1], y);
        }
        times[n + 1] = curve.endS();
        shares[n + 1] = shares[n];
        plot.steps(look.ink(), look.widthPx(), look.dash(), time.at(times), y.at(shares));
        double[] ticks =
                curve.censoredAtS().stream().mapToDouble(Double::doubleValue).toArray();
        double[] heights = new double[ticks.length];
        for (int i = 0; i < ticks.length; i++) {
            heights[i] = 100 * curve.shareAt(ticks[i]);
            sheet.mark("time", "censored", ticks[i], time);
        }
        plot.signs(Sign.STROKE, look.ink(), 10, time.at(ticks), y.at(heights));
    }
}
