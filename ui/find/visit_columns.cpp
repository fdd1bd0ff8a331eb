#include "ui/find/visit_columns.h"

#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>

namespace ui::find {

namespace {

struct VisitHeads {
    Q_DECLARE_TR_FUNCTIONS(VisitColumns)
};

/// "9 / 8.5", from above and from below; "9", counted one way alone; an upper box after a plus.
QString pairText(std::optional<core::Quarters> above, std::optional<core::Quarters> below) {
    if (above && below) return QStringLiteral("%1 / %2").arg(core::framesText(*above), core::framesText(*below));
    if (above) return core::framesText(*above);
    return below ? VisitHeads::tr("%1 below").arg(core::framesText(*below)) : QString();
}

QString boxesText(const QString& lower, const QString& upper) {
    if (upper.isEmpty()) return lower;
    return QStringLiteral("%1 + %2").arg(lower.isEmpty() ? look::dash() : lower, upper);
}

QString framesText(std::optional<core::Quarters> q) { return q ? core::framesText(*q) : QString(); }

QString broodText(const core::Visit& v) {
    if (!v.broodChecked) return v.broodFrames ? QString::number(*v.broodFrames) : QString();
    const QString of = v.broodFrames ? QString::number(*v.broodFrames) : QStringLiteral("?");
    return VisitHeads::tr("%1 of %2 checked").arg(*v.broodChecked).arg(of);
}

QString miteText(const core::Visit& v) {
    if (!v.mites || !v.miteSample) return {};
    return VisitHeads::tr("%1 in %2").arg(*v.mites).arg(*v.miteSample);
}

QString textOf(const VisitLine& line, VisitColumn column, core::WeightUnit unit) {
    const core::Visit& v = line.visit;
    switch (column) {
    case VisitColumn::Colony:
        return line.colony;
    case VisitColumn::Yard:
        return line.yard;
    case VisitColumn::Day:
        return look::dayText(v.day);
    case VisitColumn::Bees:
        return boxesText(pairText(v.beesTop, v.beesBottom), pairText(v.upperBeesTop, v.upperBeesBottom));
    case VisitColumn::Stores:
        return boxesText(framesText(v.stores), framesText(v.upperStores));
    case VisitColumn::Queen:
        return v.queen ? look::queenText(*v.queen) : QString();
    case VisitColumn::Brood:
        return broodText(v);
    case VisitColumn::Signs:
        return v.signs.empty() ? QString() : look::signsText(v.signs);
    case VisitColumn::Supers:
        return v.supers ? QString::number(*v.supers) : QString();
    case VisitColumn::Weight:
        return v.gross ? look::weightOf(*v.gross, unit) : QString();
    case VisitColumn::Mites:
        return miteText(v);
    case VisitColumn::By:
        return v.by;
    case VisitColumn::Note:
        return v.note.simplified();
    }
    return {};
}

} // namespace

QString columnTitle(VisitColumn column) {
    switch (column) {
    case VisitColumn::Colony:
        return VisitHeads::tr("Colony");
    case VisitColumn::Yard:
        return VisitHeads::tr("Yard");
    case VisitColumn::Day:
        return VisitHeads::tr("Day");
    case VisitColumn::Bees:
        return VisitHeads::tr("Frames of bees");
    case VisitColumn::Stores:
        return VisitHeads::tr("Stores");
    case VisitColumn::Queen:
        return VisitHeads::tr("Queen");
    case VisitColumn::Brood:
        return VisitHeads::tr("Brood");
    case VisitColumn::Signs:
        return VisitHeads::tr("Signs");
    case VisitColumn::Supers:
        return VisitHeads::tr("Honey boxes");
    case VisitColumn::Weight:
        return VisitHeads::tr("Weight");
    case VisitColumn::Mites:
        return VisitHeads::tr("Mites");
    case VisitColumn::By:
        return VisitHeads::tr("By");
    case VisitColumn::Note:
        return VisitHeads::tr("Note");
    }
    return {};
}

std::optional<core::VisitKey> sortKey(VisitColumn column) {
    switch (column) {
    case VisitColumn::Colony:
        return core::VisitKey::Label;
    case VisitColumn::Day:
        return core::VisitKey::Day;
    case VisitColumn::Bees:
        return core::VisitKey::Bees;
    case VisitColumn::Stores:
        return core::VisitKey::Stores;
    case VisitColumn::Queen:
        return core::VisitKey::Queen;
    case VisitColumn::Brood:
        return core::VisitKey::BroodFrames;
    case VisitColumn::Weight:
        return core::VisitKey::Weight;
    case VisitColumn::Mites:
        return core::VisitKey::Mites;
    case VisitColumn::By:
        return core::VisitKey::By;
    case VisitColumn::Yard:
    case VisitColumn::Signs:
    case VisitColumn::Supers:
    case VisitColumn::Note:
        break;
    }
    return std::nullopt;
}

bool isNumber(VisitColumn column) {
    return column == VisitColumn::Bees || column == VisitColumn::Stores || column == VisitColumn::Supers ||
           column == VisitColumn::Weight;
}

QString cellText(const VisitLine& line, VisitColumn column, core::WeightUnit unit) {
    const QString text = textOf(line, column, unit);
    return text.isEmpty() ? look::dash() : text;
}

} // namespace ui::find
