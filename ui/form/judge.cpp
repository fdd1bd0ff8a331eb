#include "ui/form/judge.h"

#include "ui/form/typed.h"

#include <QCoreApplication>

namespace ui::form {

namespace {
struct Judged {
    Q_DECLARE_TR_FUNCTIONS(Judged)
};
} // namespace

bool Judge::need(const QString& field, const QString& sentence) {
    if (!typed(m_values, field).isEmpty()) return true;
    m_out.push_back({field, sentence, true});
    return false;
}

void Judge::whole(const QString& field, int least, int most) {
    if (typed(m_values, field).isEmpty()) return;
    const auto n = wholeOf(m_values, field);
    if (!n || *n < least || *n > most) add(field, Judged::tr("A whole number, %1 to %2.").arg(least).arg(most));
}

void Judge::decimal(const QString& field, double least, double most, int decimals) {
    if (typed(m_values, field).isEmpty()) return;
    const auto n = decimalOf(m_values, field);
    if (n && scaledOf(m_values, field, decimals) && *n >= least && *n <= most) return;
    add(field, Judged::tr("A number, %1 to %2, with at most %3 decimals.").arg(least).arg(most).arg(decimals));
}

std::optional<core::Day> Judge::day(const QString& field, bool past) {
    if (typed(m_values, field).isEmpty()) return std::nullopt;
    const auto day = dayOf(m_values, field, m_today);
    if (!day)
        add(field, Judged::tr("A day, such as 2026-09-15, 15 Sep 2026 or 15.9."));
    else if (past && *day > m_today)
        add(field, Judged::tr("That day has not come yet."));
    else
        return day;
    return std::nullopt;
}

std::optional<core::Day> Judge::needDay(const QString& field, bool past) {
    return need(field, Judged::tr("The day is needed.")) ? day(field, past) : std::nullopt;
}

} // namespace ui::form
