package org.evenhand.chart;

import org.evenhand.words.Words;

/** What a chart can show; each kind is a record of plain numbers, already converted to the unit of its axis. */
public sealed interface Figure
        permits LevelChart,
                ComparisonChart,
                LogChart,
                TrendChart,
                SurvivalChart,
                ScaleChart,
                SoundChart,
                ProportionChart,
                Plate {

    /** Its arrangement; for this package alone. */
    Layout layout(Words words);
}
