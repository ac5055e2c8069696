package org.evenhand.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Consumer;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The inside of a chart, plotted by XChart: lines, steps, bands and marks.
 *
 * <p>XChart is given pixels as its data, one to one. Where a value lies is thus decided by {@link Axis} alone, for
 * linear and logarithmic axes alike, and the axes themselves are drawn by {@link Frame}: XChart can neither be told
 * which ticks to use nor draw intervals along x.
 */
final class Plot {

    private static final Color NOTHING = new Color(0, 0, 0, 0);

    private final int left;
    private final int top;
    private final int width;
    private final int height;
    private final XYChart chart;
    private int count;

    /** A plot that covers the given rectangle of the page, in pixels; what reaches beyond is cut off. */
    Plot(int left, int top, int width, int height) {
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.chart = new XYChartBuilder().width(width).height(height).build();
        XYStyler style = chart.getStyler();
        style.setLocale(Locale.ROOT);
        style.setTimezone(TimeZone.getTimeZone("UTC"));
        style.setBaseFont(Lettering.font(12));
        style.setAxisTickLabelsFont(Lettering.font(12));
        style.setAxisTitleFont(Lettering.font(12));
        style.setLegendFont(Lettering.font(12));
        style.setChartTitleFont(Lettering.font(12));
        style.setLegendVisible(false);
        style.setChartTitleVisible(false);
        style.setAxisTicksVisible(false);
        style.setAxisTitlesVisible(false);
        style.setPlotGridLinesVisible(false);
        style.setPlotBorderVisible(false);
        style.setPlotTicksMarksVisible(false);
        style.setChartPadding(0);
        style.setPlotMargin(0);
        style.setPlotContentSize(1);
        style.setChartBackgroundColor(NOTHING);
        style.setPlotBackgroundColor(NOTHING);
        style.setXAxisMin(0.0);
        style.setXAxisMax((double) width);
        style.setYAxisMin(0.0);
        style.setYAxisMax((double) height);
    }

    /** A line through points; a NaN in {@code ys} leaves a gap. */
    void line(Ink ink, double widthPx, float[] dash, double[] xs, double[] ys) {
        add(XYSeriesRenderStyle.Line, xs, ys, line(ink, widthPx, dash));
    }

    /** A line that keeps its height until the next point. */
    void steps(Ink ink, double widthPx, float[] dash, double[] xs, double[] ys) {
        add(XYSeriesRenderStyle.Step, xs, ys, line(ink, widthPx, dash));
    }

    /** Marks at points. */
    void signs(Sign sign, Ink ink, double sizePx, double[] xs, double[] ys) {
        add(XYSeriesRenderStyle.Scatter, xs, ys, series -> {
            series.setMarker(sign.marker(sizePx));
            series.setMarkerColor(ink.color());
        });
    }

    void sign(Sign sign, Ink ink, double sizePx, double x, double y) {
        signs(sign, ink, sizePx, new double[] {x}, new double[] {y});
    }

    /** The area between two curves over the same {@code xs}. */
    void band(Ink ink, double opacity, double[] xs, double[] lows, double[] highs) {
        int n = xs.length;
        double[] aroundX = new double[2 * n];
        double[] aroundY = new double[2 * n];
        for (int i = 0; i < n; i++) {
            aroundX[i] = xs[i];
            aroundY[i] = highs[i];
            aroundX[2 * n - 1 - i] = xs[i];
            aroundY[2 * n - 1 - i] = lows[i];
        }
        add(XYSeriesRenderStyle.PolygonArea, aroundX, aroundY, series -> {
            series.setMarker(SeriesMarkers.NONE);
            series.setLineStyle(SeriesLines.NONE);
            series.setFillColor(ink.tint(opacity));
        });
    }

    private static Consumer<XYSeries> line(Ink ink, double widthPx, float[] dash) {
        return series -> {
            series.setMarker(SeriesMarkers.NONE);
            series.setLineColor(ink.color());
            BasicStroke pen = Sheet.pen(widthPx, dash);
            series.setLineStyle(pen);
        };
    }

    private void add(XYSeriesRenderStyle kind, double[] xs, double[] ys, Consumer<XYSeries> look) {
        if (xs.length == 0) {
            return;
        }
        double[] ownX = new double[xs.length];
        double[] ownY = new double[ys.length];
        for (int i = 0; i < xs.length; i++) {
            ownX[i] = xs[i] - left;
            ownY[i] = top + height - ys[i];
        }
        count++;
        XYSeries series = chart.addSeries("series " + count, ownX, ownY);
        series.setXYSeriesRenderStyle(kind);
        look.accept(series);
    }

    void paint(Sheet sheet) {
        if (count == 0) {
            return;
        }
        Graphics2D g = sheet.graphics();
        AffineTransform page = g.getTransform();
        g.translate(left, top);
        chart.paint(g, width, height);
        g.setTransform(page);
    }
}
