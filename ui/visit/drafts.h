#pragma once

#include "ui/visit/draft_journal.h"

#include <QObject>

#include <functional>

namespace ui::visit {

/// The visits of the open book that are typed and not saved yet: one model for all that edits a visit. Kept beside the
/// book with each key.
class Drafts : public QObject {
    Q_OBJECT
public:
    Drafts(const QString& book, const QString& bookId, QObject* parent = nullptr);

    const std::vector<HalfTyped>& all() const { return m_all; }
    std::optional<VisitDraft> of(core::ColonyId colony, core::VisitId was = {}) const;

    /// What stands in the file, instead of what is here; for who writes the book alone. Returns what is to be said of
    /// lines that could not be read; empty: all could. Throws Error(Book) where nothing can be read: what the file
    /// holds stays in it, whatever is typed then.
    QString read();
    /// `draft` is all that is typed of it now. One that says no more than `bare` is none. Throws Error(Book) where it
    /// cannot be kept beside the book; it stands here nonetheless, and is kept with the next key that can be.
    void type(core::ColonyId colony, core::VisitId was, const VisitDraft& draft, const VisitDraft& bare);
    /// It is saved, or thrown away. Where the file cannot be told now, it is with the next key.
    void drop(core::ColonyId colony, core::VisitId was = {});

    /// Something that is typed is not kept beside the book.
    bool behind() const { return m_behind && !m_all.empty(); }
    /// Keeps it now. Throws Error(Book).
    void catchUp();

signals:
    void changed(core::ColonyId colony, core::VisitId was);

private:
    std::vector<HalfTyped>::iterator at(core::ColonyId colony, core::VisitId was);

    void keep(const std::function<bool()>& line);
    void keepAll();

    DraftJournal m_journal;
    std::vector<HalfTyped> m_all; ///< in the order they were begun
    int m_lines = 0;              ///< since the file was written anew
    bool m_unread = false;        ///< the file holds what could not be read: it is only added to
    bool m_behind = false;        ///< the file lacks something
};

} // namespace ui::visit
