#include "ui/copies/known.h"

#include <QFileInfo>
#include <QSettings>
#include <QStringList>

namespace ui::copies {

namespace {

constexpr qsizetype kMost = 100; ///< a book; the oldest are forgotten

QString keyOf(const QString& bookId) { return QStringLiteral("copiesKnown/") + bookId; }

QStringList knownOf(const QString& bookId) { return QSettings().value(keyOf(bookId)).toStringList(); }

void add(const QString& bookId, const QStringList& marks) {
    QStringList known = knownOf(bookId);
    for (const QString& mark : marks) known.removeAll(mark);
    known += marks;
    QSettings().setValue(keyOf(bookId), known.mid(qMax(qsizetype(0), known.size() - kMost)));
}

} // namespace

std::vector<core::edit::BookCopyFound> news(const QString& bookId, const std::vector<core::edit::BookCopyFound>& all) {
    const QStringList known = knownOf(bookId);
    std::vector<core::edit::BookCopyFound> fresh;
    for (const auto& copy : all)
        if (copy.hasMore() && !known.contains(copy.mark()) && !known.contains(QFileInfo(copy.path).fileName()))
            fresh.push_back(copy);
    return fresh;
}

void know(const QString& bookId, const std::vector<core::edit::BookCopyFound>& all) {
    QStringList marks;
    for (const auto& copy : all) marks << copy.mark();
    add(bookId, marks);
}

void knowFile(const QString& bookId, const QString& name) { add(bookId, {name}); }

} // namespace ui::copies
