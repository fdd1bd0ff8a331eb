#include "ui/look/queen_words.h"

#include "ui/look/rule_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::look {

namespace {

struct QueenLife {
    Q_DECLARE_TR_FUNCTIONS(QueenLife)
};

/// A year whose colour it is; nullopt: unmarked.
std::optional<int> yearOf(core::QueenMark mark) {
    constexpr int kYears[] = {2021, 2022, 2023, 2024, 2025}; // white, yellow, red, green, blue
    const auto at = static_cast<size_t>(mark);
    return at < std::size(kYears) ? std::optional(kYears[at]) : std::nullopt;
}

} // namespace

QString markText(core::QueenMark mark) {
    const auto year = yearOf(mark);
    return year ? queenMark(*year).name : QueenLife::tr("not marked");
}

QColor paintOf(core::QueenMark mark) {
    const auto year = yearOf(mark);
    return year ? queenMark(*year).colour : QColor();
}

QString fateText(core::QueenFate fate) {
    switch (fate) {
    case core::QueenFate::Superseded:
        return QueenLife::tr("superseded by her daughter");
    case core::QueenFate::Replaced:
        return QueenLife::tr("replaced by the keeper");
    case core::QueenFate::Dead:
        return QueenLife::tr("dead");
    case core::QueenFate::Missing:
        return QueenLife::tr("missing");
    case core::QueenFate::Swarmed:
        return QueenLife::tr("left with a swarm");
    case core::QueenFate::Sold:
        return QueenLife::tr("sold");
    case core::QueenFate::Moved:
        break;
    }
    return QueenLife::tr("moved to another colony");
}

QString originText(core::QueenOrigin origin) {
    switch (origin) {
    case core::QueenOrigin::Raised:
        return QueenLife::tr("raised by the keeper");
    case core::QueenOrigin::Bought:
        return QueenLife::tr("bought");
    case core::QueenOrigin::Swarm:
        return QueenLife::tr("came with a swarm");
    case core::QueenOrigin::Emergency:
        return QueenLife::tr("raised by the bees in an emergency");
    case core::QueenOrigin::Supersedure:
        break;
    }
    return QueenLife::tr("raised by the bees as a supersedure");
}

QString ageText(int born, core::Day on) {
    const int years = core::toDate(on).year() - born;
    const QString year = QueenLife::tr("born %1").arg(QString::number(born));
    if (years <= 0) return year;
    return (years == 1 ? QueenLife::tr("1 year, %1") : QueenLife::tr("%1 years, %2").arg(years)).arg(year);
}

QString looksText(const core::Queen& q) {
    QStringList parts;
    if (q.born) parts << QueenLife::tr("born %1").arg(QString::number(*q.born));
    if (q.mark) parts << markText(*q.mark);
    if (!q.tag.isEmpty()) parts << QueenLife::tr("disc %1").arg(q.tag);
    return parts.join(QStringLiteral(", "));
}

QString markMismatch(std::optional<int> born, std::optional<core::QueenMark> mark) {
    if (!born || !mark || *mark == core::QueenMark::Unmarked) return {};
    const QString due = queenMark(*born).name;
    if (markText(*mark) == due) return {};
    return QueenLife::tr("Marked %1, but the colour of %2 is %3.").arg(markText(*mark), QString::number(*born), due);
}

} // namespace ui::look
