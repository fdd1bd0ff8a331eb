#include "tests/reliability/workload.h"

#include "core/edit/edit_context.h"
#include "core/edit/put_right.h"
#include "core/exchange/import.h"
#include "tests/edit/every_edit.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <memory>

namespace tests::reliability {

namespace {

const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};

Step edited(const std::string& name, const Edit& edit) {
    return {name, [edit](Session& session) { session.apply(edit); }};
}

Step hive(int number) {
    return edited("a hive", [=](const EditContext& c) {
        NewColony fresh;
        fresh.colony.label = QString::number(number);
        fresh.colony.since = dayOf(2026, 5, 1);
        fresh.colony.box = BoxKindId{1};
        fresh.stand.yard = YardId{1 + number % 2};
        fresh.stand.at = {number * 1000, 0};
        return addColony(c, fresh);
    });
}

Step visited(int colony, Day day, std::optional<Sign> sign = {}) {
    return edited("a visit", [=](const EditContext& c) {
        Visit v;
        v.colony = ColonyId{colony};
        v.day = day;
        v.beesTop = Quarters{25};
        v.broodFrames = v.broodChecked = 5;
        v.note = QStringLiteral("calm, “three frames” of pollen, ü");
        if (sign) v.signs.add(*sign);
        return logVisit(c, v);
    });
}

Step imported(const QString& folder) {
    const QString path = folder + QStringLiteral("/visits.csv");
    QByteArray text = "colony,date,bees_top,queen,brood_frames,brood_checked,signs,note\n";
    for (int i = 0; i < 300; ++i)
        text += QByteArray::number(1 + i % 4) + ',' + isoText(dayOf(2026, 5, 2) + i / 4).toLatin1() +
                ",3.25,eggs,5,5,chalkbrood,as written down that day\n";
    writeText(path, text);
    return {"an import", [path](Session& session) {
                core::exchange::ImportFiles files;
                files.files.push_back({core::exchange::FileKind::Visits, path});
                const auto report = core::exchange::importFiles(session, files, false);
                if (!report.good()) throw std::runtime_error("the import has faults");
            }};
}

/// More than SQLite keeps in memory where it has little: pages of the file are overwritten before the commit.
Step manyRows() {
    return edited("many rows", [](const EditContext& c) {
        ChangeSet change{QStringLiteral("Imported yards"), {}, {}, {}, {}};
        change.bulk.push_back({Table::Yard, c.nextId(Table::Yard), 600, [](qint64 i) {
                                   Yard yard;
                                   yard.name = QStringLiteral("yard %1").arg(i);
                                   yard.note = QString(60, u'x');
                                   return toRow(yard);
                               }});
        return change;
    });
}

Step undone() {
    return {"undo", [](Session& session) { session.undo(kWhy); }};
}

Step redone() {
    return {"redo", [](Session& session) { session.redo(kWhy); }};
}

Step randomEdit(const std::shared_ptr<EveryEdit>& edits) {
    return {"a random edit", [edits](Session& session) {
                ChangeSet change;
                try {
                    session.read([&](const EditContext& c) { change = edits->next(c).second; });
                } catch (const Error& e) {
                    if (e.kind() == Error::Kind::BadData || e.kind() == Error::Kind::Hold) return;
                    throw;
                }
                session.apply([&](const EditContext&) { return change; }, kWhy);
            }};
}

} // namespace

std::vector<Step> workSteps(const QString& folder, int random) {
    std::vector<Step> steps;
    for (const char* name : {"North", "South"})
        steps.push_back(edited("a yard", [=](const EditContext& c) {
            Yard yard;
            yard.name = QString::fromLatin1(name);
            return newYard(c, yard);
        }));
    for (int i = 1; i <= 6; ++i) steps.push_back(hive(i));
    for (int i = 1; i <= 6; ++i) steps.push_back(visited(i, dayOf(2026, 5, 1)));
    steps.push_back(edited("a carry", [](const EditContext& c) {
        return carryHive(c, ColonyId{2}, {9000, 4000}, dayOf(2026, 6, 1));
    }));
    steps.push_back(undone());
    steps.push_back(redone());
    steps.push_back(imported(folder));
    steps.push_back(undone());
    steps.push_back(redone());
    steps.push_back(visited(3, dayOf(2026, 9, 10), Sign::Afb));
    steps.push_back({"a correction", [](Session& session) {
                         const auto visits = session.visitsOf(ColonyId{3}, 1);
                         session.apply([&](const EditContext& c) { return takeBackVisit(c, visits.at(0).id); }, kWhy);
                     }});
    steps.push_back(manyRows());
    steps.push_back(undone());
    steps.push_back({"an earlier edit taken back", [](Session& session) { session.takeBack(14, kWhy); }});
    const auto edits = std::make_shared<EveryEdit>(7);
    for (int i = 0; i < random; ++i) steps.push_back(randomEdit(edits));
    return steps;
}

std::string stateOf(const Session& session) {
    std::string text = rowsText(session.path());
    for (const HistoryLine& line : session.history(1'000'000))
        text += std::to_string(line.seq) + ' ' + line.text.toStdString() + ' ' + line.reason.toStdString() + '\n';
    return text;
}

void writeText(const QString& path, const QByteArray& text) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) throw std::runtime_error("cannot write");
}

void copyFile(const QString& from, const QString& to) {
    QFile::remove(to);
    if (!QFile::copy(from, to)) throw std::runtime_error("cannot copy a book");
}

} // namespace tests::reliability
