#pragma once

#include "core/edit/session.h"

#include <QAbstractListModel>

#include <vector>

namespace ui::find {

QString noteOfText(core::NoteOf of); ///< "Visit"

/// Notes with the words that were looked for, a row each.
class NoteModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Role { TitleRole = Qt::UserRole + 1, DayRole, MarksRole };

    using QAbstractListModel::QAbstractListModel;

    /// Throws Error(Book).
    void show(const core::edit::Session& session, const QString& typed);
    const core::NotesFound& found() const { return m_found; }
    const core::NoteFound& at(int row) const { return m_found.notes[static_cast<size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    core::NotesFound m_found;
    std::vector<QString> m_titles;
};

/// What was found within the text, of MarksRole.
std::vector<core::TextMark> marksOf(const QModelIndex& index);

} // namespace ui::find
