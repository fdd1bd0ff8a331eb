#include "tests/store/test_book.h"

#include <QFile>

#include <sqlite3.h>

#include <stdexcept>

using namespace core;
using namespace core::store;

Yard TestBook::yard(const QString& name) {
    Yard y;
    y.name = name;
    return add(y);
}

Stand TestBook::stand(const Yard& yard, const QString& name, MmPoint at) {
    Stand s;
    s.yard = yard.id;
    s.name = name;
    s.at = at;
    return add(s);
}

Colony TestBook::colony(const Yard& yard, const QString& label, Day since) {
    Colony c;
    c.label = label;
    c.since = since;
    c.box = boxKindNamed(db(), u"langstroth-10").value().id;
    c = add(c);
    Placement p;
    p.colony = c.id;
    p.stand = stand(yard, label + QStringLiteral(" ") + QString::number(c.id.value)).id;
    p.since = since;
    p.first = true;
    add(p);
    return c;
}

void TestBook::end(Colony& colony, Day day, EndKind how) {
    const Placement open = openPlacement(db(), colony.id).value();
    Placement closed = open;
    closed.until = day;
    writeRow(db(), {Table::Placement, open.id.value, toRow(open), toRow(closed)});
    Colony ended = colony;
    ended.ended = day;
    ended.end = how;
    writeRow(db(), {Table::Colony, colony.id.value, toRow(colony), toRow(ended)});
    colony = ended;
}

Placement TestBook::carry(const Colony& colony, const Stand& to, Day day, std::optional<int> headingDeg) {
    const auto placements = placementsOf(db(), colony.id);
    const Placement& last = placements.back();
    Placement left = last;
    left.until = day;
    writeRow(db(), {Table::Placement, last.id.value, toRow(last), toRow(left)});
    Placement p;
    p.colony = colony.id;
    p.stand = to.id;
    p.since = day;
    p.until = colony.ended;
    p.headingDeg = headingDeg;
    return add(p);
}

Visit TestBook::visit(Visit visit) {
    const Signs signs = visit.signs;
    visit = add(visit);
    for (size_t i = 0; i < wordsOf<Sign>().size(); ++i) {
        if (!signs.has(static_cast<Sign>(i))) continue;
        const qint64 id = maxId(db(), Table::VisitSign) + 1;
        writeRow(db(), {Table::VisitSign, id, std::nullopt, Row{visit.id.value, word(static_cast<Sign>(i))}});
    }
    return visit;
}

Visit TestBook::visit(const Colony& colony, Day day) {
    Visit v;
    v.colony = colony.id;
    v.day = day;
    return visit(v);
}

void TestBook::unite(Colony& colony, const Colony& into, Day day) {
    end(colony, day, EndKind::United);
    Lineage l;
    l.day = day;
    l.how = LineageHow::United;
    l.colony = colony.id;
    l.into = into.id;
    add(l);
}

void TestBook::breakWith(const char* sql) {
    close();
    sqlite3* raw = nullptr;
    sqlite3_open(QFile::encodeName(m_path).constData(), &raw);
    sqlite3_exec(raw, "PRAGMA ignore_check_constraints = ON", nullptr, nullptr, nullptr);
    const int code = sqlite3_exec(raw, sql, nullptr, nullptr, nullptr);
    const std::string message = sqlite3_errmsg(raw);
    sqlite3_close(raw);
    if (code != SQLITE_OK) throw std::runtime_error(message);
    reopen();
}
