#include "core/store/check.h"

#include "core/base/natural_order.h"
#include "core/model/fixed_shape.h"
#include "core/model/row_codec.h"
#include "core/model/row_days.h"
#include "core/model/setting_table.h"
#include "core/store/invariants.h"
#include "core/store/note_words.h"
#include "core/store/watched.h"

namespace core::store {

namespace {

constexpr int kMostOfOne = 20;
/// Of the whole check, as measured on a book of 20,000 colonies.
constexpr double kPagesShare = 0.3;

/// Collects the problems of one name; says so when there are more than are listed.
class Problems {
public:
    Problems(std::vector<QString>& all, const char* name) : m_all(all), m_name(QLatin1String(name)) {}
    bool add(const QString& sentence) {
        ++m_count;
        if (m_count <= kMostOfOne) m_all.push_back(m_name + QStringLiteral(": ") + sentence);
        if (m_count == kMostOfOne + 1) m_all.push_back(m_name + QStringLiteral(": and more of this kind."));
        return m_count <= kMostOfOne;
    }

private:
    std::vector<QString>& m_all;
    QString m_name;
    int m_count = 0;
};

void checkIntegrity(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "integrity");
    Statement row = db.prepare("PRAGMA integrity_check(21)");
    while (row.step())
        if (row.text(0) != QLatin1String("ok"))
            problems.add(QStringLiteral("The file is damaged: %1. Use a backup.").arg(row.text(0)));
}

void checkForeignKeys(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "foreign-key");
    Statement row = db.prepare("PRAGMA foreign_key_check");
    bool more = true;
    while (more && row.step())
        more = problems.add(QStringLiteral("Row %1 of table %2 points to a row of table %3 that is not there.")
                                .arg(row.text(1), row.text(0), row.text(2)));
}

void checkInvariant(const Database& db, const Invariant& invariant, std::vector<QString>& all) {
    Problems problems(all, invariant.name);
    Statement row = db.prepare(invariant.sql);
    bool more = true;
    while (more && row.step())
        more = problems.add(QStringLiteral("%1: %2.").arg(QString::fromUtf8(invariant.sentence), row.text(0)));
}

/// What passes the schema and is no day: "+0 days" turns it into one.
void checkDays(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "day");
    for (int i = 0; i < kTableCount; ++i) {
        const auto table = static_cast<Table>(i);
        for (const size_t at : dayColumns(table)) {
            const std::string column = columnsOf(table)[at];
            Statement row = db.prepare("SELECT rowid, " + column + " FROM " + tableName(table) + " WHERE date(" +
                                       column + ", '+0 days') IS NOT " + column);
            while (row.step())
                problems.add(QStringLiteral("A day is none of the calendar: %1, in row %2 of table %3.")
                                 .arg(row.text(1), row.text(0), QLatin1StringView(tableName(table))));
        }
    }
}

/// Names are found by their folded key: it must be that of the name.
void checkKeys(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "key");
    Statement row = db.prepare("SELECT name, key FROM yard UNION ALL SELECT name, key FROM stand UNION ALL "
                               "SELECT name, key FROM box_kind UNION ALL SELECT label, key FROM colony UNION ALL "
                               "SELECT name, key FROM person UNION ALL SELECT name, key FROM file_mapping UNION ALL "
                               "SELECT short, key FROM phrase UNION ALL SELECT name, key FROM question UNION ALL "
                               "SELECT place, key FROM notifiable");
    while (row.step())
        if (folded(row.text(0)) != row.text(1))
            problems.add(QStringLiteral("A name is filed under another than its own: %1.").arg(row.text(0)));
}

void checkSettings(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "setting");
    Settings settings;
    Statement row = db.prepare("SELECT name, value FROM setting ORDER BY id");
    while (row.step())
        if (!applySetting(settings, row.text(0), row.text(1)))
            problems.add(QStringLiteral("A setting is not known or has a value that it cannot have: %1 = %2.")
                             .arg(row.text(0), row.text(1)));
}

/// What the schema cannot say of a shape.
void checkFixedThings(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "fixed-thing");
    Statement row = db.prepare("SELECT f.id, f.kind, f.points, y.name FROM fixed_thing f JOIN yard y ON y.id = f.yard");
    while (row.step()) {
        const auto kind = fromWord<FixedKind>(row.text(1));
        const auto points = parsePoints(row.text(2));
        if (!kind || !points || pointsText(*points) != row.text(2) || shapeProblem(*kind, *points))
            problems.add(QStringLiteral("A thing in the drawing of %2 has no shape that is drawn: %1, number %3.")
                             .arg(row.text(1), row.text(3), row.text(0)));
    }
}

void checkNoteWords(const Database& db, std::vector<QString>& all) {
    Problems problems(all, "note-words");
    for (const QString& wrong : wrongWords(db)) problems.add(wrong + u'.');
}

} // namespace

std::vector<QString> checkBook(const Database& db, const Progress& progress) {
    const ReadTransaction oneState(db);
    const Watched watched(db.handle(), progress);
    std::vector<QString> problems;
    progress.at(0);
    checkIntegrity(db, problems);
    if (!problems.empty()) return problems; // what a damaged file says of its rows is worth nothing
    progress.at(kPagesShare);
    checkForeignKeys(db, problems);
    checkDays(db, problems);
    const auto rules = invariants();
    const Progress ours = progress.part(kPagesShare, 1);
    for (size_t i = 0; i < rules.size(); ++i) {
        ours.at(static_cast<qint64>(i), static_cast<qint64>(rules.size()));
        checkInvariant(db, rules[i], problems);
    }
    checkKeys(db, problems);
    checkSettings(db, problems);
    checkFixedThings(db, problems);
    checkNoteWords(db, problems);
    return problems;
}

} // namespace core::store
