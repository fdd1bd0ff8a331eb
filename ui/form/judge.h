#pragma once

#include "core/base/day.h"
#include "ui/form/form.h"

#include <optional>

namespace ui::form {

/// Collects what is wrong with typed values, field by field; an empty field that is not needed is never wrong.
class Judge {
public:
    Judge(const Values& values, core::Day today) : m_values(values), m_today(today) {}

    void add(const QString& field, const QString& sentence) { m_out.push_back({field, sentence, false}); }
    /// Not finished yet: said once the field was left or saving was tried.
    void addLater(const QString& field, const QString& sentence) { m_out.push_back({field, sentence, true}); }
    /// The field is empty: `sentence` says what is expected. True where it is filled in.
    bool need(const QString& field, const QString& sentence);
    void whole(const QString& field, int least, int most);
    /// `least`, `most`: in whole units; at most `decimals` digits after the point.
    void decimal(const QString& field, double least, double most, int decimals = 3);
    /// A day that can be read; `past`: not after today.
    std::optional<core::Day> day(const QString& field, bool past = true);
    /// A day that must be there.
    std::optional<core::Day> needDay(const QString& field, bool past = true);

    bool fine() const { return m_out.empty(); }
    std::vector<Problem> take() { return std::move(m_out); }

private:
    const Values& m_values;
    core::Day m_today;
    std::vector<Problem> m_out;
};

} // namespace ui::form
