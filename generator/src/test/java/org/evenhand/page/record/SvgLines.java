package org.evenhand.page.record;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The stroked paths of an SVG document, each as its pieces, each of these as its vertices. SVG 2, chapter 9, "Paths". */
final class SvgLines {

    private static final Pattern PATH = Pattern.compile("<path d=\"([^\"]*)\"[^>]* fill=\"none\"");
    private static final Pattern PART = Pattern.compile("([A-Za-z])|(-?[0-9]*\\.?[0-9]+)");

    private SvgLines() {}

    static List<List<List<double[]>>> of(String svg) {
        List<List<List<double[]>>> paths = new ArrayList<>();
        Matcher path = PATH.matcher(svg);
        while (path.find()) {
            paths.add(pieces(path.group(1)));
        }
        return paths;
    }

    private static List<List<double[]>> pieces(String text) {
        List<List<double[]>> pieces = new ArrayList<>();
        double[] at = {0, 0};
        char command = 'M';
        Matcher part = PART.matcher(text);
        while (part.find()) {
            if (part.group(1) != null) {
                command = part.group(1).charAt(0);
                continue;
            }
            double number = Double.parseDouble(part.group());
            double[] to = at.clone();
            switch (command) {
                case 'h' -> to[0] += number;
                case 'v' -> to[1] += number;
                case 'M', 'm', 'l' -> {
                    to[0] += number;
                    if (!part.find()) {
                        throw new IllegalArgumentException("half a point at the end of " + text);
                    }
                    to[1] += Double.parseDouble(part.group());
                }
                default -> throw new IllegalArgumentException("no straight line: " + command);
            }
            if (command == 'M' || command == 'm') {
                pieces.add(new ArrayList<>());
                command = 'l';
            }
            pieces.get(pieces.size() - 1).add(to);
            at = to;
        }
        return pieces;
    }

    /** How far a point lies from the nearest of some pieces, in pixels. */
    static double distance(List<List<double[]>> pieces, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (List<double[]> piece : pieces) {
            for (int i = 0; i < piece.size(); i++) {
                double[] a = piece.get(Math.max(0, i - 1));
                double[] b = piece.get(i);
                nearest = Math.min(nearest, Line2D.ptSegDist(a[0], a[1], b[0], b[1], x, y));
            }
        }
        return nearest;
    }
}
