#pragma once

#include "core/model/snapshot.h"
#include "core/report/worksheet.h"
#include "core/rules/hold.h"
#include "core/rules/plan.h"

#include <QString>
#include <QStringList>

namespace core::report {

/// The worksheet's own words in the language asked for. Phrases are keyed by their English text; %1, %2 stay.
class Words {
public:
    explicit Words(Language language, const ShownUnits& units = {}) : m_language(language), m_units(units) {}

    Language language() const { return m_language; }
    const ShownUnits& units() const { return m_units; }
    QString operator()(const char* english) const;
    /// A rule's sentences; in Spanish what stands in them is said in Spanish too, as far as it is no name.
    QString operator()(const rules::Sentences& sentences) const;
    /// Whether there is a translation: English always.
    static bool known(const QString& english, Language language);

    QString longDay(Day day) const;            ///< "Sunday 20 September 2026"
    QString weekday(Day day) const;            ///< "Sunday 20 September"
    QString day(Day day, Day from) const;      ///< "20 September"; with its year where `from` is of another
    QString shortDay(Day day, Day from) const; ///< "20 Sep"; with its year where `from` is of another
    QString direction(int deg) const;          ///< "the south-east"
    // In the units shown, always with one decimal: "7.4 m", "9.5 L", "6.0 kg".
    QString distance(MmPoint from, MmPoint to) const;
    QString feed(qint64 halfLitres) const;
    QString shortWeight(qint64 millionthsKg) const;
    QString reach(Millionths metres) const;                        ///< a limit: "1000 m", "9.8 ft"
    QString heavy() const;                                         ///< what a full box can weigh: "25 kg", "55 lb"
    QString load(double kg) const;                                 ///< to lift, rounded up: "27 kg", "60 lb"
    QString limit(double kg) const;                                ///< a weight of round kilograms: "25 kg", "55 lb"
    QString wholeWeight(double kg) const;                          ///< the same without its unit
    QString frames(Quarters q) const;                              ///< "5.25 frames"
    QString list(const QStringList& names) const;                  ///< "K1, K2 and K3"
    QString count(int n, const char* one, const char* more) const; ///< "1 union", "3 unions"

    QString holdTitle(rules::HoldKind kind) const;
    QString cautionTitle(rules::CautionKind kind) const;
    /// `droneLayer`: where one is kept, the other one lays only drones.
    QString queen(rules::QueenPlan queen, const QString& moved, const QString& host, bool droneLayer) const;
    QString queenSeen(QueenSeen seen) const;
    QString strengthClass(rules::StrengthClass c) const;
    QString unresolved(rules::Unresolved why) const;
    QString due(rules::DueKind what) const;

private:
    QString within(const QString& english) const;

    Language m_language;
    ShownUnits m_units;
};

} // namespace core::report
