#pragma once

#include "ui/form/form.h"

#include "core/base/day.h"

#include <QStringList>

#include <random>

namespace tests {

/// Types into forms at random, from one seed: mostly what may be right, now and then what cannot be.
class RandomTypist {
public:
    RandomTypist(unsigned seed, core::Day first, core::Day last) : m_random(seed), m_first(first), m_last(last) {}

    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    bool chance(int percent) { return below(100) < percent; }
    core::Day day() { return m_first + below(m_last - m_first + 1); }
    const QString& oneOf(const QStringList& list) { return list[below(static_cast<int>(list.size()))]; }
    /// What is typed into such a field.
    QString text(const ui::form::Field& field, const QStringList& labels);
    /// Frames of bees, stores and the like for a visit's text field.
    QString frames();

private:
    std::mt19937 m_random;
    core::Day m_first, m_last;
};

} // namespace tests
