#pragma once

#include "core/rules/ledger.h"
#include "core/rules/season_book.h"
#include "ui/desk/desk.h"

#include <QObject>

#include <optional>
#include <vector>

namespace ui::season {

enum class Span { Season, TwelveMonths, AllYears };

/// What the pages of a season are about, chosen once for all of them, and its rows: each kind is read when a page first
/// asks for it, and again only after the book, the yard, the day or the choice has changed.
class SeasonDesk : public QObject {
    Q_OBJECT
public:
    explicit SeasonDesk(desk::Desk& desk, QObject* parent = nullptr);

    bool allYards() const { return m_allYards; }
    void setAllYards(bool all);
    Span span() const { return m_span; }
    void setSpan(Span span);

    const desk::Reading& reading() const { return m_desk.reading(); }
    const core::edit::Session& session() const { return m_desk.session(); }
    core::Day day() const { return m_desk.day(); }
    core::Day from() const; ///< the first day of the span
    /// All years of all yards are more than can be read at once: twelve months are shown.
    bool limited() const;
    std::optional<core::YardIx> yard() const; ///< not set: all yards
    QString where() const;                    ///< "Kiln Field", "all yards"
    QString spanText() const;                 ///< "1 May to 20 Sep 2026"
    QString foot() const;                     ///< of prints: book, revision, day

    // Throw Error(Book) where the file fails.
    /// Of the span, with its visits and feedings.
    core::rules::SeasonBook book();
    /// From `first` to the day, of the yard or all, by day; of a yard with what was seen elsewhere of colonies that
    /// came to it or left it.
    std::vector<core::Visit> visitsSince(core::Day first) const;
    const std::vector<core::Queen>& queens();
    const std::vector<core::rules::LedgerYear>& ledger();

signals:
    void changed();

private:
    void forget();
    void forgetSpan();
    void readVisits();
    void addVisitsElsewhere(std::vector<core::Visit>& visits, core::Day first) const;
    bool southern() const;

    desk::Desk& m_desk;
    bool m_allYards = false;
    Span m_span = Span::Season;
    std::optional<core::Snapshot> m_before;
    std::vector<core::Visit> m_visits;
    std::vector<core::Feeding> m_feedings;
    std::optional<std::vector<core::Queen>> m_queens;
    std::optional<std::vector<core::rules::LedgerYear>> m_ledger;
};

} // namespace ui::season
