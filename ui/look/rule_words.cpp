#include "ui/look/rule_words.h"

#include "core/rules/calc/queen_mark.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::look {

namespace {
struct RuleWords {
    Q_DECLARE_TR_FUNCTIONS(RuleWords)
};
} // namespace

QString holdTitle(core::rules::HoldKind kind) {
    using core::rules::HoldKind;
    switch (kind) {
    case HoldKind::Order:
        return RuleWords::tr("An inspector's order");
    case HoldKind::AfbConfirmed:
        return RuleWords::tr("American foulbrood confirmed");
    case HoldKind::AfbSuspected:
        return RuleWords::tr("American foulbrood suspected");
    case HoldKind::AfbContact:
        return RuleWords::tr("Contact with American foulbrood");
    case HoldKind::AfbYard:
        return RuleWords::tr("Stood in a yard with American foulbrood");
    case HoldKind::Efb:
        return RuleWords::tr("European foulbrood");
    case HoldKind::BroodDoubt:
        return RuleWords::tr("Brood in doubt");
    case HoldKind::BroodNotChecked:
        return RuleWords::tr("Brood not checked");
    }
    return {};
}

QString holdWithin(core::rules::HoldKind kind) {
    using core::rules::HoldKind;
    const QString title = holdTitle(kind);
    const bool named = kind == HoldKind::AfbConfirmed || kind == HoldKind::AfbSuspected || kind == HoldKind::Efb;
    return named || title.isEmpty() ? title : title.left(1).toLower() + title.mid(1); // "American" stays
}

QString queenText(core::QueenSeen queen) {
    using core::QueenSeen;
    switch (queen) {
    case QueenSeen::Seen:
        return RuleWords::tr("queen seen");
    case QueenSeen::Eggs:
        return RuleWords::tr("eggs seen");
    case QueenSeen::Virgin:
        return RuleWords::tr("a virgin queen");
    case QueenSeen::DroneLayer:
        return RuleWords::tr("a drone-layer");
    case QueenSeen::None:
        return RuleWords::tr("no queen");
    case QueenSeen::LayingWorkers:
        return RuleWords::tr("laying workers");
    case QueenSeen::Unknown:
        return RuleWords::tr("queen not known");
    }
    return {};
}

QString classText(core::rules::StrengthClass c) {
    using core::rules::StrengthClass;
    switch (c) {
    case StrengthClass::ShakeOut:
        return RuleWords::tr("to shake out");
    case StrengthClass::Weak:
        return RuleWords::tr("weak");
    case StrengthClass::Medium:
        return RuleWords::tr("medium");
    case StrengthClass::Strong:
        return RuleWords::tr("strong");
    }
    return {};
}

QString unresolvedText(core::rules::Unresolved why) {
    using core::rules::Unresolved;
    switch (why) {
    case Unresolved::NoCount:
        return RuleWords::tr("not counted");
    case Unresolved::CountOld:
        return RuleWords::tr("count too old");
    case Unresolved::NoBees:
        return RuleWords::tr("no bees seen");
    case Unresolved::NoHost:
        return RuleWords::tr("no host to shake it out at");
    case Unresolved::NoPartner:
        return RuleWords::tr("no partner to unite it with");
    }
    return {};
}

QString compassText(int headingDeg) {
    const QString ways[] = {RuleWords::tr("north"),      RuleWords::tr("north-east"), RuleWords::tr("east"),
                            RuleWords::tr("south-east"), RuleWords::tr("south"),      RuleWords::tr("south-west"),
                            RuleWords::tr("west"),       RuleWords::tr("north-west")};
    return ways[((headingDeg % 360 + 360) * 2 + 45) / 90 % 8];
}

QString dueText(core::rules::DueKind what) {
    using core::rules::DueKind;
    switch (what) {
    case DueKind::UnionCheck:
        return RuleWords::tr("look whether the union took");
    case DueKind::TakeOut:
        return RuleWords::tr("take the treatment out");
    case DueKind::ResultAwaited:
        return RuleWords::tr("a result is awaited");
    }
    return {};
}

QString signsText(core::Signs signs) {
    const QString words[] = {RuleWords::tr("signs of American foulbrood"),
                             RuleWords::tr("signs of European foulbrood"),
                             RuleWords::tr("brood in doubt"),
                             RuleWords::tr("chalkbrood"),
                             RuleWords::tr("sacbrood"),
                             RuleWords::tr("nosema"),
                             RuleWords::tr("deformed wings")};
    QStringList out;
    for (int i = 0; i < 7; ++i)
        if (signs.has(static_cast<core::Sign>(i))) out << words[i];
    return out.join(QStringLiteral(", "));
}

QString coloniesText(qint64 thousandths) { return QString::number(static_cast<double>(thousandths) / 1000, 'f', 1); }

QueenMark queenMark(int year) {
    using Mark = core::rules::calc::QueenMark;
    switch (core::rules::calc::queenMarkOf(year)) {
    case Mark::White:
        return {QColor(0xfa, 0xfa, 0xfa), RuleWords::tr("white")};
    case Mark::Yellow:
        return {QColor(0xf0, 0xd0, 0x20), RuleWords::tr("yellow")};
    case Mark::Red:
        return {QColor(0xd0, 0x30, 0x28), RuleWords::tr("red")};
    case Mark::Green:
        return {QColor(0x2c, 0x9c, 0x4c), RuleWords::tr("green")};
    case Mark::Blue:
        break;
    }
    return {QColor(0x2a, 0x6c, 0xd8), RuleWords::tr("blue")};
}

} // namespace ui::look
