#include "ui/find/note_model.h"

#include "ui/look/words.h"

#include <QCoreApplication>

namespace ui::find {

namespace {

struct Notes {
    Q_DECLARE_TR_FUNCTIONS(Notes)
};

constexpr int kMostListed = 200;

QString subjectOf(const core::edit::Session& session, const core::NoteFound& note) {
    if (note.colony) {
        const auto colony = session.colony(*note.colony);
        return colony ? colony->label : QString();
    }
    if (!note.yard) return {};
    const auto yard = session.yard(*note.yard);
    return yard ? yard->name : QString();
}

} // namespace

QString noteOfText(core::NoteOf of) {
    switch (of) {
    case core::NoteOf::Visit:
        return Notes::tr("Visit");
    case core::NoteOf::Colony:
        return Notes::tr("Colony");
    case core::NoteOf::Yard:
        return Notes::tr("Yard");
    case core::NoteOf::Transfer:
        return Notes::tr("Transfer");
    case core::NoteOf::Result:
        return Notes::tr("Result");
    case core::NoteOf::Treatment:
        return Notes::tr("Treatment");
    case core::NoteOf::Lineage:
        return Notes::tr("Union, shake-out or divide");
    case core::NoteOf::Feeding:
        return Notes::tr("Feed");
    case core::NoteOf::Queen:
        return Notes::tr("Queen");
    case core::NoteOf::Sample:
        return Notes::tr("Sample");
    case core::NoteOf::MiteFall:
        return Notes::tr("Fallen mites");
    case core::NoteOf::KitEnd:
        return Notes::tr("End of kit");
    }
    return {};
}

void NoteModel::show(const core::edit::Session& session, const QString& typed) {
    beginResetModel();
    m_titles.clear();
    m_found = {};
    try {
        m_found = session.notesFound(typed, kMostListed);
        for (const core::NoteFound& note : m_found.notes) {
            const QString subject = subjectOf(session, note);
            m_titles.push_back(subject.isEmpty() ? noteOfText(note.of)
                                                 : Notes::tr("%1 · %2").arg(subject, noteOfText(note.of)));
        }
    } catch (...) {
        m_found = {};
        endResetModel();
        throw;
    }
    endResetModel();
}

int NoteModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_titles.size());
}

QVariant NoteModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const core::NoteFound& note = at(index.row());
    const QString& title = m_titles[static_cast<size_t>(index.row())];
    const QString day = note.day ? look::dayText(*note.day) : QString();
    switch (role) {
    case Qt::DisplayRole:
        return note.text;
    case TitleRole:
        return title;
    case DayRole:
        return day;
    case MarksRole: {
        QVariantList marks;
        for (const core::TextMark& mark : note.marks) marks << qlonglong(mark.from) << qlonglong(mark.length);
        return marks;
    }
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1, %2: %3").arg(title, day, note.text);
    default:
        return {};
    }
}

std::vector<core::TextMark> marksOf(const QModelIndex& index) {
    std::vector<core::TextMark> marks;
    const QVariantList flat = index.data(NoteModel::MarksRole).toList();
    for (qsizetype i = 0; i + 1 < flat.size(); i += 2)
        marks.push_back({flat[i].toLongLong(), flat[i + 1].toLongLong()});
    return marks;
}

} // namespace ui::find
