#pragma once

#include "ui/visit/draft_journal.h"

#include <QObject>

namespace ui::visit {

/// The visits of the open book that are typed and not saved yet: one model for all that edits a visit. Kept beside the
/// book with each key.
class Drafts : public QObject {
    Q_OBJECT
public:
    Drafts(const QString& book, const QString& bookId, QObject* parent = nullptr);

    const std::vector<HalfTyped>& all() const { return m_all; }
    std::optional<VisitDraft> of(core::ColonyId colony, core::VisitId was = {}) const;

    /// What stands in the file, instead of what is here; for who writes the book alone. Throws Error(Book).
    void read();
    /// `draft` is all that is typed of it now. One that says no more than `bare` is none. Throws Error(Book) where it
    /// cannot be kept beside the book; it stands here nonetheless.
    void type(core::ColonyId colony, core::VisitId was, const VisitDraft& draft, const VisitDraft& bare);
    /// It is saved, or thrown away. Throws Error(Book).
    void drop(core::ColonyId colony, core::VisitId was = {});

signals:
    void changed(core::ColonyId colony, core::VisitId was);

private:
    std::vector<HalfTyped>::iterator at(core::ColonyId colony, core::VisitId was);

    DraftJournal m_journal;
    std::vector<HalfTyped> m_all; ///< in the order they were begun
    int m_lines = 0;              ///< since the file was written anew
};

} // namespace ui::visit
