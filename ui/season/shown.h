#pragma once

#include "ui/chart/chart.h"
#include "ui/season/season_desk.h"

#include <QString>
#include <QStringList>

#include <vector>

// What each page of a season shows: figures of core/rules/season_*, in words and as charts. No widgets.

namespace ui::season {

struct Part {
    QString name; ///< of its button, where a page has several
    chart::Chart chart;
    QStringList sentences = {}; ///< of this part alone, before those of the page
};

struct Shown {
    QStringList sentences; ///< what the figures say and what they rest on, a paragraph each
    std::vector<Part> parts;
};

// Throw Error(Book) where the file fails.
Shown strengthShown(SeasonDesk& desk);
Shown mitesShown(SeasonDesk& desk);
Shown feedShown(SeasonDesk& desk);
Shown queensShown(SeasonDesk& desk);
Shown lossShown(SeasonDesk& desk);

/// "1 hive", "12 hives"
QString hivesText(int hives);
/// A decimal number without needless zeros.
QString numberText(double value, int decimals);
/// "strong_min, assumption": a setting and where it is from, for small print.
QString settingText(const core::Settings& settings, const char* name, bool southern = false);
/// A further column of the table behind a chart, filled row by row.
chart::Column& columnOf(chart::Chart& chart, const QString& name);

} // namespace ui::season
