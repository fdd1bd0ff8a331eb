#include "core/exchange/import.h"

#include "core/base/error.h"
#include "core/exchange/file_parser.h"
#include "core/exchange/import_changes.h"
#include "core/exchange/kept_mapping.h"
#include "core/exchange/part_book.h"

#include <QFileInfo>
#include <QScopeGuard>
#include <QTemporaryDir>

#include <memory>

namespace core::exchange {

namespace {

using edit::Session;

/// The files of the named mapping's kind are read with it.
ImportFiles withMapping(const Session& session, ImportFiles files) {
    if (files.mapping.isEmpty()) return files;
    const KeptMapping kept = mappingNamed(session, files.mapping);
    bool used = false;
    for (ImportFile& file : files.files) {
        if (file.kind != kept.mapping.kind) continue;
        file.mapping = kept.mapping;
        used = true;
    }
    if (!used)
        throw Error(Error::Kind::BadData,
                    Say::tr("The mapping “%1” is for %2, expected a file of them (--%3 FILE).")
                        .arg(kept.name, kindWords(kept.mapping.kind), optionName(kept.mapping.kind)));
    return files;
}

void tryOut(const Session& session, const ImportFiles& files, Parsed& parsed, ImportReport& report) {
    session.read([&](const edit::EditContext& c) {
        Ledger ledger(c, parsed.drafts, report, files);
        reconcile(ledger);
    });
}

void write(Session& session, const ImportFiles& files, Parsed& parsed, ImportReport& report) {
    session.setProgress(files.progress.part(kChecked, 1));
    const auto told = qScopeGuard([&session] { session.setProgress({}); });
    std::unique_ptr<Ledger> ledger; // read until the rows are written
    report.line = session.apply([&](const edit::EditContext& c) {
        ledger = std::make_unique<Ledger>(c, parsed.drafts, report, files);
        reconcile(*ledger);
        if (!report.good()) return edit::ChangeSet{};
        edit::ChangeSet change = importChanges(*ledger);
        if (!change.empty()) change.attachments = std::move(parsed.texts);
        return change;
    });
}

ImportReport run(Session& session, const ImportFiles& files, Parsed& parsed, ImportReport report, bool dryRun) {
    try {
        if (dryRun)
            tryOut(session, files, parsed, report);
        else
            write(session, files, parsed, report);
    } catch (const Stopped&) {
        report.stopped = true;
    }
    return report;
}

Parsed read(const ImportFiles& files, ImportReport& report) {
    try {
        return parseFiles(files, report.faults);
    } catch (const Stopped&) {
        report.stopped = true;
        return {};
    }
}

ImportReport runOnMissing(const QString& bookPath, const Clock& clock, const ImportFiles& files, Parsed& parsed,
                          ImportReport report, bool dryRun) {
    if (dryRun) {
        const QTemporaryDir folder;
        const auto blank = Session::create(folder.filePath(QStringLiteral("blank.yardwright")), clock);
        return run(*blank, files, parsed, std::move(report), true);
    }
    PartBook part(bookPath);
    auto session = Session::create(part.path(), clock);
    report = run(*session, files, parsed, std::move(report), false);
    session.reset();
    if (report.good()) part.keep();
    return report;
}

} // namespace

QStringList ImportReport::summary() const {
    QStringList lines;
    for (const FileKind kind : kReadKinds) {
        const KindCount& n = of(kind);
        QStringList parts;
        if (n.added > 0) parts << Say::tr("%1 new").arg(n.added);
        if (n.changed > 0) parts << Say::tr("%1 changed").arg(n.changed);
        if (n.passedOver > 0) parts << Say::tr("%1 passed over").arg(n.passedOver);
        if (!parts.isEmpty()) lines << kindWords(kind) + QStringLiteral(": ") + parts.join(QStringLiteral(", "));
    }
    return lines;
}

ImportReport importFiles(Session& session, const ImportFiles& files, bool dryRun) {
    ImportReport report;
    Parsed parsed = read(withMapping(session, files), report);
    if (!report.good()) return report;
    return run(session, files, parsed, std::move(report), dryRun);
}

ImportReport importIntoBook(const QString& bookPath, const Clock& clock, const ImportFiles& files, bool dryRun) {
    const bool there = QFileInfo::exists(bookPath);
    if (!files.mapping.isEmpty() && !there) throw Error(Error::Kind::BadData, noMappings(files.mapping));
    const auto access = dryRun ? Session::Access::ReadOnly : Session::Access::ReadWrite;
    std::unique_ptr<Session> session;
    if (!files.mapping.isEmpty()) session = Session::open(bookPath, clock, access);
    ImportReport report;
    Parsed parsed = read(session ? withMapping(*session, files) : files, report);
    if (!report.good()) return report;
    if (!there) return runOnMissing(bookPath, clock, files, parsed, std::move(report), dryRun);
    if (!session) session = Session::open(bookPath, clock, access);
    return run(*session, files, parsed, std::move(report), dryRun);
}

} // namespace core::exchange
