#include "ui/find/colony_columns.h"

#include "ui/look/end_words.h"
#include "ui/look/rule_words.h"
#include "ui/look/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <bit>

namespace ui::find {

namespace rules = core::rules;

namespace {

struct Columns {
    Q_DECLARE_TR_FUNCTIONS(ColonyColumns)
};

QString holdsText(const rules::ColonyFigures& f) {
    QStringList holds;
    for (int i = 0; i < rules::kHoldKindCount; ++i) {
        const auto kind = static_cast<rules::HoldKind>(i);
        if (f.heldAs(kind)) holds << rules::holdLetter(kind) + QStringLiteral(" ") + look::holdWithin(kind);
    }
    return holds.join(QStringLiteral("; "));
}

QString checkText(const rules::ColonyFigures& f, core::Day on) {
    if (f.checkCounts)
        return f.checkUntil ? Columns::tr("counts to %1").arg(look::dayTextFrom(*f.checkUntil, on))
                            : Columns::tr("a result counts");
    return f.checked ? Columns::tr("none counts; last %1").arg(look::dayTextFrom(*f.checked, on)) : Columns::tr("none");
}

QString bornText(const rules::ColonyFigures& f) {
    if (!f.queenBorn) return {};
    if (*f.queenAge == 0) return Columns::tr("%1, this year").arg(*f.queenBorn);
    return *f.queenAge == 1 ? Columns::tr("%1, 1 year").arg(*f.queenBorn)
                            : Columns::tr("%1, %2 years").arg(*f.queenBorn).arg(*f.queenAge);
}

QString endedText(const core::Snapshot& s, core::ColonyIx ix) {
    const core::SnapColony& c = s.colony(ix);
    return c.ended ? QStringLiteral("%1 %2").arg(look::endWord(c.end), look::dayTextFrom(*c.ended, s.on)) : QString();
}

/// Empty where there is nothing to say.
QString textOf(const desk::Reading& r, const rules::ColonyFigures& f, ColonyColumn column) {
    const core::Snapshot& s = r.snapshot;
    const auto day = [&s](const std::optional<core::Day>& d) { return d ? look::dayTextFrom(*d, s.on) : QString(); };
    switch (column) {
    case ColonyColumn::Label:
        return s.colony(f.colony).shown;
    case ColonyColumn::Yard:
        return f.yard ? s.yard(*f.yard).name : QString();
    case ColonyColumn::Stand:
        return f.place ? f.place->standName : QString();
    case ColonyColumn::Ended:
        return endedText(s, f.colony);
    default:
        break;
    }
    if (!f.living) return {};
    switch (column) {
    case ColonyColumn::Frames:
        return f.strength ? core::framesText(*f.strength) : QString();
    case ColonyColumn::Class:
        return f.strengthClass ? look::classText(*f.strengthClass) : QString();
    case ColonyColumn::Queen:
        return f.queen == core::QueenSeen::Unknown ? QString() : look::queenText(f.queen);
    case ColonyColumn::Born:
        return bornText(f);
    case ColonyColumn::Stores:
        return f.stores ? core::framesText(*f.stores) : QString();
    case ColonyColumn::Weight:
        return f.gross ? look::weightOf(*f.gross, s.settings.showWeight) : QString();
    case ColonyColumn::Weighed:
        return day(f.weighed);
    case ColonyColumn::Visited:
        return day(f.visited);
    case ColonyColumn::Days:
        return QString::number(f.daysUnvisited);
    case ColonyColumn::Check:
        return checkText(f, s.on);
    case ColonyColumn::Mites:
        return f.mitesPer100() ? QString::number(*f.mitesPer100(), 'f', 1) : QString();
    case ColonyColumn::Holds:
        return holdsText(f);
    case ColonyColumn::Boxes:
        return QString::number(f.boxes);
    case ColonyColumn::Due:
        return f.due ? QStringLiteral("%1 %2").arg(look::dueText(*f.due), day(f.dueOn)) : QString();
    case ColonyColumn::Asked:
        return r.askedOf(f.colony).join(QStringLiteral("; "));
    default:
        return {};
    }
}

std::optional<double> number(const std::optional<core::Day>& day) {
    return day ? std::optional<double>(static_cast<double>(day->number)) : std::nullopt;
}
template <class Unit> std::optional<double> units(const std::optional<Unit>& value) {
    return value ? std::optional<double>(value->value) : std::nullopt;
}
template <class Word> std::optional<double> place(const std::optional<Word>& word) {
    return word ? std::optional<double>(static_cast<int>(*word)) : std::nullopt;
}

} // namespace

QString columnTitle(ColonyColumn column) {
    switch (column) {
    case ColonyColumn::Label:
        return Columns::tr("Colony");
    case ColonyColumn::Yard:
        return Columns::tr("Yard");
    case ColonyColumn::Stand:
        return Columns::tr("Stand");
    case ColonyColumn::Frames:
        return Columns::tr("Frames");
    case ColonyColumn::Class:
        return Columns::tr("Strength");
    case ColonyColumn::Queen:
        return Columns::tr("Queen");
    case ColonyColumn::Born:
        return Columns::tr("Queen of");
    case ColonyColumn::Stores:
        return Columns::tr("Stores");
    case ColonyColumn::Weight:
        return Columns::tr("Weight");
    case ColonyColumn::Weighed:
        return Columns::tr("Weighed");
    case ColonyColumn::Visited:
        return Columns::tr("Last visit");
    case ColonyColumn::Days:
        return Columns::tr("Days without");
    case ColonyColumn::Check:
        return Columns::tr("Brood check");
    case ColonyColumn::Mites:
        return Columns::tr("Mites in 100");
    case ColonyColumn::Holds:
        return Columns::tr("Held");
    case ColonyColumn::Boxes:
        return Columns::tr("Boxes");
    case ColonyColumn::Due:
        return Columns::tr("Due");
    case ColonyColumn::Ended:
        return Columns::tr("Ended");
    case ColonyColumn::Asked:
        return Columns::tr("Found by");
    }
    return {};
}

bool isNumber(ColonyColumn column) {
    switch (column) {
    case ColonyColumn::Frames:
    case ColonyColumn::Stores:
    case ColonyColumn::Weight:
    case ColonyColumn::Days:
    case ColonyColumn::Mites:
    case ColonyColumn::Boxes:
        return true;
    default:
        return false;
    }
}

QString cellText(const desk::Reading& reading, const rules::ColonyFigures& figures, ColonyColumn column) {
    const QString text = textOf(reading, figures, column);
    return text.isEmpty() ? look::dash() : text;
}

std::optional<double> sortValue(const desk::Reading& r, const rules::ColonyFigures& f, ColonyColumn column) {
    const auto living = [&f](std::optional<double> value) { return f.living ? value : std::nullopt; };
    switch (column) {
    case ColonyColumn::Label: // the snapshot's order is the natural one of the living, then of the ended
    case ColonyColumn::Stand:
        return f.colony.value;
    case ColonyColumn::Yard:
        return units(f.yard);
    case ColonyColumn::Frames:
        return units(f.strength);
    case ColonyColumn::Class:
        return place(f.strengthClass);
    case ColonyColumn::Queen:
        return f.queen == core::QueenSeen::Unknown ? std::nullopt : living(static_cast<int>(f.queen));
    case ColonyColumn::Born:
        return place(f.queenBorn);
    case ColonyColumn::Stores:
        return units(f.stores);
    case ColonyColumn::Weight:
        return units(f.gross);
    case ColonyColumn::Weighed:
        return number(f.weighed);
    case ColonyColumn::Visited:
        return number(f.visited);
    case ColonyColumn::Days:
        return living(f.daysUnvisited);
    case ColonyColumn::Check:
        return number(f.checkUntil ? f.checkUntil : f.checked);
    case ColonyColumn::Mites:
        return f.mitesPer100();
    case ColonyColumn::Holds: // the gravest first
        return f.held() ? std::optional<double>(std::countr_zero(f.holds)) : std::nullopt;
    case ColonyColumn::Boxes:
        return living(f.boxes);
    case ColonyColumn::Due:
        return number(f.dueOn);
    case ColonyColumn::Ended:
        return number(r.snapshot.colony(f.colony).ended);
    case ColonyColumn::Asked: {
        const auto found = r.askedOf(f.colony).size();
        return found > 0 ? std::optional<double>(-static_cast<double>(found)) : std::nullopt;
    }
    }
    return std::nullopt;
}

} // namespace ui::find
