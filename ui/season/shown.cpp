#include "ui/season/shown.h"

#include "core/rules/limits.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui::season {

namespace {
struct SeasonWords {
    Q_DECLARE_TR_FUNCTIONS(ui::season::SeasonWords)
};
} // namespace

QString hivesText(int hives) { return hives == 1 ? SeasonWords::tr("1 hive") : SeasonWords::tr("%1 hives").arg(hives); }

QString numberText(double value, int decimals) {
    chart::Chart plain;
    plain.decimals = decimals;
    return chart::valueText(plain, value);
}

QString settingText(const core::Settings& settings, const char* name, bool southern) {
    const core::rules::Limit limit = core::rules::limitOf(settings, name, southern);
    //: A value, the setting that holds it, and its source
    return SeasonWords::tr("%1 (%2; %3)").arg(limit.value, limit.name, limit.source);
}

chart::Column& columnOf(chart::Chart& chart, const QString& name) {
    const auto at = std::ranges::find(chart.more, name, &chart::Column::name);
    if (at != chart.more.end()) return *at;
    return chart.more.emplace_back(chart::Column{name, {}});
}

} // namespace ui::season
