#pragma once

#include "core/edit/told_rows.h"

#include <QStringList>

#include <set>

namespace core::edit {

/// Which records are lost, in sentences: how many, between which two that are kept (of which hives, when), and what the
/// history says wrote them.
class LostWords {
public:
    /// `kept`: what is left, as a book of its own.
    LostWords(const store::Database& kept, const ToldRows& told) : m_kept(kept), m_told(told) {}

    /// `lost` ids, and spans where others may have been.
    QStringList of(Table table, const std::set<qint64>& lost, const std::vector<store::IdSpan>& spans) const;
    /// Signs of foulbrood that are kept and whose visit is lost, so that they will be left out.
    QStringList ofSignsAlone() const;

private:
    QStringList foulbrood(const std::set<qint64>& lost, bool more) const;
    QString signNamed(const Row& row) const;
    QString between(Table table, qint64 from, qint64 to) const;
    QString named(Table table, const Row& row) const;
    QString labelOf(qint64 colony) const;
    QString writtenBy(Table table, qint64 id) const;

    const store::Database& m_kept;
    const ToldRows& m_told;
};

} // namespace core::edit
