#include "core/report/worksheet_words.h"

#include "core/report/worksheet_spanish.h"

#include <QLocale>

#include <cmath>

namespace core::report {

using rules::CautionKind;
using rules::HoldKind;

QString Words::operator()(const char* english) const {
    if (m_language == Language::Spanish)
        if (const char* spanish = spanishOf(QString::fromUtf8(english))) return QString::fromUtf8(spanish);
    return QString::fromUtf8(english);
}

QString Words::operator()(const rules::Sentences& sentences) const {
    QStringList out;
    for (const rules::Sentence& s : sentences) {
        QStringList args;
        for (const QString& arg : s.args) args << within(arg);
        out << rules::filled((*this)(s.pattern), args);
    }
    return out.join(u' ');
}

/// "30 days", "20 August", "none": what a rule's sentence is filled with.
QString Words::within(const QString& english) const {
    if (m_language == Language::English) return english;
    if (const char* whole = spanishOf(english)) return QString::fromUtf8(whole);
    if (const QStringList parts = english.split(QStringLiteral(", ")); parts.size() > 1) {
        QStringList said;
        for (const QString& part : parts) said << within(part);
        return said.join(QStringLiteral(", "));
    }
    const qsizetype space = english.indexOf(u' ');
    bool number = false;
    english.left(space).toDouble(&number);
    const char* unit = number && space > 0 ? spanishOf(english.mid(space + 1)) : nullptr;
    return unit ? english.left(space + 1) + QString::fromUtf8(unit) : english;
}

bool Words::known(const QString& english, Language language) {
    return language == Language::English || spanishOf(english) != nullptr;
}

namespace {
QString dated(Language language, Day day, const char* english, const char* spanish) {
    const QLocale locale = language == Language::Spanish ? QLocale(QLocale::Spanish, QLocale::Spain)
                                                         : QLocale(QLocale::English, QLocale::UnitedKingdom);
    return locale.toString(toDate(day), QString::fromUtf8(language == Language::Spanish ? spanish : english));
}
} // namespace

QString Words::longDay(Day day) const {
    return dated(m_language, day, "dddd d MMMM yyyy", "dddd d 'de' MMMM 'de' yyyy");
}
QString Words::weekday(Day day) const { return dated(m_language, day, "dddd d MMMM", "dddd d 'de' MMMM"); }

QString Words::day(Day day, Day from) const {
    const bool sameYear = toDate(day).year() == toDate(from).year();
    return sameYear ? dated(m_language, day, "d MMMM", "d 'de' MMMM")
                    : dated(m_language, day, "d MMMM yyyy", "d 'de' MMMM 'de' yyyy");
}

QString Words::shortDay(Day day, Day from) const {
    const bool sameYear = toDate(day).year() == toDate(from).year();
    return sameYear ? dated(m_language, day, "d MMM", "d MMM") : dated(m_language, day, "d MMM yyyy", "d MMM yyyy");
}

QString Words::direction(int deg) const {
    static constexpr const char* kWays[] = {"the north", "the north-east", "the east", "the south-east",
                                            "the south", "the south-west", "the west", "the north-west"};
    return (*this)(kWays[((deg % 360 + 360) * 2 + 45) / 90 % 8]);
}

namespace {
QString tenthsOf(qint64 tenths, const QString& unit) {
    return QStringLiteral("%1.%2 %3").arg(tenths / 10).arg(tenths % 10).arg(unit);
}
} // namespace

QString Words::distance(MmPoint from, MmPoint to) const {
    return tenthsOf(distanceTenths(from, to, m_units.length), unitSign(m_units.length));
}

QString Words::feed(qint64 halfLitres) const {
    return tenthsOf(feedTenths(halfLitres, m_units.volume), unitSign(m_units.volume));
}

QString Words::shortWeight(qint64 millionthsKg) const {
    return tenthsOf(weightTenths(millionthsKg, m_units.weight), unitSign(m_units.weight));
}

QString Words::reach(Millionths metres) const {
    const QString number = m_units.length == LengthUnit::Metres
                               ? QString::number(metres.real())
                               : decimalText(lengthTenths(metres.value / 1000, m_units.length), 1);
    return QStringLiteral("%1 %2").arg(number, unitSign(m_units.length));
}

QString Words::heavy() const {
    constexpr double kFullBox = 25;
    return limit(kFullBox);
}

QString Words::load(double kg) const {
    const double whole = std::ceil(kg / kilogramsIn(m_units.weight));
    return QStringLiteral("%1 %2").arg(QString::number(whole), unitSign(m_units.weight));
}

QString Words::limit(double kg) const { return QStringLiteral("%1 %2").arg(wholeWeight(kg), unitSign(m_units.weight)); }

QString Words::wholeWeight(double kg) const { return QString::number(std::lround(kg / kilogramsIn(m_units.weight))); }

QString Words::frames(Quarters q) const {
    return q.value == 4 ? (*this)("1 frame") : (*this)("%1 frames").arg(framesText(q));
}

QString Words::list(const QStringList& names) const {
    if (names.size() < 2) return names.join(QString());
    return names.mid(0, names.size() - 1).join(QStringLiteral(", ")) + u' ' + (*this)("and") + u' ' + names.last();
}

QString Words::count(int n, const char* one, const char* more) const {
    return n == 1 ? (*this)(one) : (*this)(more).arg(n);
}

QString Words::holdTitle(HoldKind kind) const {
    static constexpr const char* kTitles[] = {"An inspector's order",
                                              "American foulbrood confirmed",
                                              "American foulbrood suspected",
                                              "Contact with American foulbrood",
                                              "Stood in a yard with American foulbrood",
                                              "European foulbrood",
                                              "Brood in doubt",
                                              "Brood not checked"};
    return (*this)(kTitles[static_cast<size_t>(kind)]);
}

QString Words::cautionTitle(CautionKind kind) const {
    static constexpr const char* kTitles[] = {
        "Mites high",       "Check may be masked", "Signs of illness",           "Counted before a transfer",
        "Queen not known",  "Room not known",      "American foulbrood near by", "Drift to a held hive",
        "Lower box heavier"};
    return (*this)(kTitles[static_cast<size_t>(kind)]);
}

QString Words::queen(rules::QueenPlan queen, const QString& moved, const QString& host, bool droneLayer) const {
    const auto keep = [&](const QString& kept, const QString& other) {
        return (droneLayer ? (*this)("keep that of %1; that of %2 lays only drones")
                           : (*this)("keep that of %1; %2 has none"))
            .arg(kept, other);
    };
    switch (queen) {
    case rules::QueenPlan::LeaveBoth:
        return (*this)("leave both");
    case rules::QueenPlan::RemoveMoved:
        return (*this)("remove that of %1").arg(moved);
    case rules::QueenPlan::KeepMoved:
        return keep(moved, host);
    case rules::QueenPlan::KeepHost:
        break;
    }
    return keep(host, moved);
}

QString Words::queenSeen(QueenSeen seen) const {
    static constexpr const char* kNames[] = {"seen", "eggs",           "virgin",   "drone-layer",
                                             "none", "laying workers", "not known"};
    return (*this)(kNames[static_cast<size_t>(seen)]);
}

QString Words::strengthClass(rules::StrengthClass c) const {
    static constexpr const char* kNames[] = {"to shake out", "weak", "medium", "strong"};
    return (*this)(kNames[static_cast<size_t>(c)]);
}

QString Words::unresolved(rules::Unresolved why) const {
    static constexpr const char* kWhy[] = {
        "Bees not counted: count them, then plan again", "Count too old: count the bees, then plan again",
        "No bees seen at the last count: look, and clear the hive", "To be shaken out, but no colony can take the bees",
        "No queen, and no union fits: give one a queen, or plan again"};
    return (*this)(kWhy[static_cast<size_t>(why)]);
}

QString Words::due(rules::DueKind what) const {
    static constexpr const char* kWhat[] = {"look whether the union took", "take the treatment out",
                                            "a result on American foulbrood is awaited"};
    return (*this)(kWhat[static_cast<size_t>(what)]);
}

} // namespace core::report
