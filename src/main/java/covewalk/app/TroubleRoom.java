package covewalk.app;

import javafx.scene.control.ScrollPane;

/** Where the trouble bar stands: above everything, in so much of the window that one can go on, and scrolling where that is too little. */
final class TroubleRoom extends ScrollPane {

    /** Of the window's height: what the bar's text is made smaller for, and what the bar takes at most. */
    private static final double SHARE = 0.33;
    private static final double MOST = 0.5;
    /** What the window is at least, in sizes of the bar's text: its buttons stand side by side, and a line or two leaves most of the height. */
    private static final double WIDE = 40;
    private static final double HIGH = 33;

    private final TroubleBar bar;
    private double windowHeight = Double.MAX_VALUE;

    /** @param changed called after the bar came, went, or needs another height */
    TroubleRoom(TroubleBar bar, Runnable changed) {
        super(bar);
        this.bar = bar;
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinSize(0, 0);
        visibleProperty().bind(bar.visibleProperty());
        managedProperty().bind(bar.visibleProperty());
        bar.visibleProperty().addListener((property, before, now) -> changed.run());
        bar.heightProperty().addListener((property, before, now) -> changed.run());
    }

    /**
     * Makes the bar's text as large as was chosen, or as there is room for.
     *
     * @return the height that is left below the bar, in px
     */
    double fit(double width, double height, double chosenPx) {
        windowHeight = height;
        double px = TextSize.atMost(Math.min(width / WIDE, height / HIGH), chosenPx);
        bar.fit(px);
        if (!bar.isVisible()) {
            return height;
        }
        applyCss();
        while (px > TextSize.LEAST_PX && bar.prefHeight(width) > SHARE * height) {
            px = Math.max(TextSize.LEAST_PX, px - 1);
            bar.fit(px);
            applyCss();
        }
        requestLayout();
        return height - prefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.ceil(Math.min(super.computePrefHeight(width), MOST * windowHeight));
    }
}
