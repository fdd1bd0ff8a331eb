#include "core/edit/change_fields.h"
#include "core/edit/edit_checks.h"
#include "core/edit/salvage.h"

#include <algorithm>

namespace core::edit {

namespace {

QString tableText(const SalvagedTable& t) {
    QStringList parts;
    if (t.fromHistory > 0) parts << Edits::tr("%1 of them from the history").arg(t.fromHistory);
    if (t.fromBackup > 0) parts << Edits::tr("%1 of them from the backup").arg(t.fromBackup);
    if (t.added > 0) parts << Edits::tr("%1 of them made for what is lost").arg(t.added);
    if (t.lost > 0) parts << Edits::tr("%1 lost").arg(t.lost);
    if (t.leftOut > 0) parts << Edits::tr("%1 left out").arg(t.leftOut);
    if (t.mayLack) parts << Edits::tr("others may be lost");
    const QString all = recordsText(t.table, t.kept);
    return parts.isEmpty() ? all : QStringLiteral("%1 (%2)").arg(all, parts.join(QStringLiteral(", ")));
}

void addSection(QStringList& lines, const QString& title, const QStringList& items) {
    if (items.isEmpty()) return;
    lines << QString() << title;
    for (const QString& item : items) lines << QStringLiteral("  ") + item;
}

QString historySentence(const SalvageAccount& a) {
    if (a.historyKept && a.tornTexts > 0)
        return Edits::tr(
                   "The history is kept: %1 changes, all of them; but %2 texts kept with them (the files of imports) "
                   "are lost.")
            .arg(a.linesKept)
            .arg(a.tornTexts);
    if (a.historyKept) return Edits::tr("The history is kept: %1 changes, all of them.").arg(a.linesKept);
    QString missing = Edits::tr("All of its %1 lines could be read.").arg(a.linesKept);
    if (a.linesMissing > 0)
        missing = Edits::tr("Of its lines %1 could be read and %2 not.").arg(a.linesKept).arg(a.linesMissing);
    if (a.linesEndUnknown)
        missing = Edits::tr("Of its lines %1 could be read; how many there were, nothing says.").arg(a.linesKept);
    return Edits::tr("The history starts anew in the new book, with this as its first line. %1 What they said is kept "
                     "with that line as a text; nothing of before can be undone.")
        .arg(missing);
}

QStringList doubtLines(const SalvageAccount& a) {
    if (a.held == 0) return {};
    return {
        Edits::tr("A sign of disease, a finding, an order or what holds are traced by may be among what is lost. So "
                  "each of the %1 living hives is held: today's visit says “brood in doubt”. A full brood check "
                  "three weeks on, a negative finding or a release lifts it, hive by hive.")
            .arg(a.held),
        Edits::tr("Orders, findings and treatments that you have on paper: look whether each is in the book, and "
                  "enter what is not. An order is in force whether the book knows of it or not.")};
}

} // namespace

bool SalvageAccount::nothingLost() const {
    return lost.isEmpty() && leftOut.isEmpty() && mended.isEmpty() && held == 0 &&
           std::ranges::none_of(tables, [](const SalvagedTable& t) { return t.lost > 0 || t.mayLack; });
}

QString accountText(const SalvageAccount& a) {
    QStringList lines;
    lines << Edits::tr("What could be read of %1 on %2").arg(a.damaged, isoText(a.day));
    lines << QString() << a.wrong;
    if (a.backup)
        lines << Edits::tr("The backup of %1 was asked, too.")
                     .arg(a.backup->at.toString(QStringLiteral("yyyy-MM-dd HH:mm 'UTC'")));
    if (!a.backupRefused.isEmpty()) lines << a.backupRefused;
    if (a.nothingLost()) lines << QString() << Edits::tr("Nothing is lost: every record is there, as it was.");
    addSection(lines, Edits::tr("Held until looked at"), doubtLines(a));
    QStringList tables;
    for (const SalvagedTable& t : a.tables)
        if (t.kept > 0 || t.lost > 0 || t.leftOut > 0 || t.mayLack) tables << tableText(t);
    addSection(lines, Edits::tr("In the new book"), tables);
    addSection(lines, Edits::tr("What is missing"), a.lost);
    addSection(lines, Edits::tr("What stands in its place"), a.mended);
    addSection(lines, Edits::tr("Left out"), a.leftOut);
    addSection(lines, Edits::tr("History"), {historySentence(a)});
    addSection(lines, Edits::tr("What the check of the new book says"), a.problems);
    return lines.join(u'\n') + u'\n';
}

} // namespace core::edit
