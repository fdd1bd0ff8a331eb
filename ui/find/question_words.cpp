#include "ui/find/question_words.h"

#include "ui/look/rule_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace ui::find {

namespace rules = core::rules;

namespace {

struct Asks {
    Q_DECLARE_TR_FUNCTIONS(Questions)
};

} // namespace

QString whatText(rules::AskWhat what) {
    switch (what) {
    case rules::AskWhat::DaysUnvisited:
        return Asks::tr("days without a visit");
    case rules::AskWhat::Strength:
        return Asks::tr("frames of bees");
    case rules::AskWhat::StrengthClass:
        return Asks::tr("strength");
    case rules::AskWhat::Queen:
        return Asks::tr("queen");
    case rules::AskWhat::QueenAge:
        return Asks::tr("age of the queen, years");
    case rules::AskWhat::Stores:
        return Asks::tr("frames of stores");
    case rules::AskWhat::Weight:
        return Asks::tr("last weight, kg");
    case rules::AskWhat::WeighedIn:
        return Asks::tr("last weighed in");
    case rules::AskWhat::DaysUnweighed:
        return Asks::tr("days since it was weighed");
    case rules::AskWhat::BroodCheckCounts:
        return Asks::tr("a brood check counts");
    case rules::AskWhat::BroodCheckThisSeason:
        return Asks::tr("a clean brood check this season");
    case rules::AskWhat::MitesPer100:
        return Asks::tr("mites in 100 bees");
    case rules::AskWhat::Held:
        return Asks::tr("held");
    case rules::AskWhat::Boxes:
        return Asks::tr("brood boxes");
    case rules::AskWhat::DueWithin:
        return Asks::tr("days to the next check due");
    }
    return {};
}

QString howText(rules::AskHow how) {
    switch (how) {
    case rules::AskHow::Below:
        return Asks::tr("less than");
    case rules::AskHow::AtMost:
        return Asks::tr("at most");
    case rules::AskHow::Is:
        return Asks::tr("is");
    case rules::AskHow::IsNot:
        return Asks::tr("is not");
    case rules::AskHow::AtLeast:
        return Asks::tr("at least");
    case rules::AskHow::Above:
        return Asks::tr("more than");
    case rules::AskHow::NotRecorded:
        return Asks::tr("not recorded");
    }
    return {};
}

QString choiceText(rules::AskWhat what, int position) {
    switch (what) {
    case rules::AskWhat::StrengthClass:
        return look::classText(static_cast<rules::StrengthClass>(position));
    case rules::AskWhat::Queen:
        return look::queenText(static_cast<core::QueenSeen>(position));
    case rules::AskWhat::WeighedIn:
        return QLocale(QLocale::English).monthName(position);
    default:
        return position ? Asks::tr("yes") : Asks::tr("no");
    }
}

QString askText(const rules::Ask& ask) {
    QStringList parts;
    for (const rules::AskPart& part : ask) {
        QString text = whatText(part.what) + u' ' + howText(part.how);
        const bool choice = rules::askRange(part.what).choice;
        if (choice && part.how == rules::AskHow::Is) text = whatText(part.what) + u':';
        if (part.how != rules::AskHow::NotRecorded)
            text += u' ' + (choice ? choiceText(part.what, static_cast<int>(part.than)) : QString::number(part.than));
        parts << text;
    }
    return parts.join(Asks::tr(" and "));
}

core::Question readyQuestion(rules::ReadyAsk which) {
    core::Question q;
    q.about = QStringLiteral("colonies");
    q.ask = rules::askJson(rules::readyAsk(which));
    switch (which) {
    case rules::ReadyAsk::NotVisited:
        q.name = Asks::tr("Not visited for 14 days");
        break;
    case rules::ReadyAsk::NoBroodCheck:
        q.name = Asks::tr("No brood check this season");
        break;
    case rules::ReadyAsk::OldQueen:
        q.name = Asks::tr("Queen older than two years");
        break;
    case rules::ReadyAsk::LightInSeptember:
        q.name = Asks::tr("Lighter than 32 kg in September");
        break;
    }
    return q;
}

} // namespace ui::find
