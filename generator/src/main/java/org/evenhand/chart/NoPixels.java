package org.evenhand.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;

/** What Java 2D can do with pictures, pixels and the machine's own fonts, all of it refused. */
abstract class NoPixels extends Graphics2D {

    static UnsupportedOperationException pixels() {
        return new UnsupportedOperationException("a chart is drawn of lines and areas only");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        throw pixels();
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw pixels();
    }

    @Override
    public FontMetrics getFontMetrics(Font of) {
        throw pixels();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw pixels();
    }

    @Override
    public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
        throw pixels();
    }

    @Override
    public void setPaintMode() {
        throw pixels();
    }

    @Override
    public void setXORMode(Color other) {
        throw pixels();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw pixels();
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        throw pixels();
    }

    @Override
    public boolean drawImage(Image image, AffineTransform to, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp operation, int x, int y) {
        throw pixels();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform to) {
        throw pixels();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform to) {
        throw pixels();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color background, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public boolean drawImage(
            Image image, int x, int y, int width, int height, Color background, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public boolean drawImage(
            Image i, int x1, int y1, int x2, int y2, int u1, int v1, int u2, int v2, ImageObserver observer) {
        throw pixels();
    }

    @Override
    public boolean drawImage(
            Image i, int x1, int y1, int x2, int y2, int u1, int v1, int u2, int v2, Color b, ImageObserver observer) {
        throw pixels();
    }
}
