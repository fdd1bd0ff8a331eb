#include "core/edit/salvage_read.h"

#include "core/base/book_held.h"
#include "core/edit/edit_checks.h"
#include "core/edit/whole_book.h"
#include "core/store/book_file.h"
#include "core/store/history_rows.h"

#include <QFileInfo>

namespace core::edit {

namespace {

using store::Remains;

constexpr double kFileRead = 0.6; ///< of the way; the rest is the backup

class Reading {
public:
    Reading(const SalvageFrom& from, QString folder, SalvageAccount& account, const Progress& progress)
        : m_from(from), m_folder(std::move(folder)), m_account(account), m_progress(progress) {}

    SalvageSources run() {
        QString like;
        try {
            readFile({});
            like = soundBackup(m_sources.remains->bookId());
            if (m_sources.remains->layoutGuessed() && !like.isEmpty()) readFile(like);
        } catch (const BookHeld&) {
            throw;
        } catch (const Error&) {
            // A backup may tell where its tables begin.
            if (m_sources.remains || like.isEmpty()) like = soundBackup({});
            if (like.isEmpty() || m_sources.remains) throw;
            readFile(like);
        }
        if (!like.isEmpty()) openBackup(like);
        return std::move(m_sources);
    }

private:
    void readFile(const QString& like) {
        m_sources.remains.reset(); // its lock is this one's, too
        m_sources.remains = std::make_unique<Remains>(m_from.damaged, like, m_progress.part(0, kFileRead));
    }

    void openBackup(const QString& path) {
        m_sources.backup = store::Database::open(path, store::Access::ReadOnly);
        const auto last = store::listHistory(*m_sources.backup, 1);
        if (!m_from.backup.isEmpty() && m_account.backup && !last.empty())
            m_account.backup->at = QDateTime::fromString(last.front().at, Qt::ISODateWithMs);
    }

    std::vector<Backup> candidates(const QString& bookId) const {
        if (!m_from.backup.isEmpty()) {
            Backup named;
            named.path = m_from.backup;
            named.at = QFileInfo(named.path).lastModified().toUTC();
            return {named};
        }
        if (m_from.backupFolder.isEmpty()) return {};
        if (!bookId.isEmpty()) return backupsIn(m_from.backupFolder, bookId);
        return backupsTitled(m_from.backupFolder, QFileInfo(m_from.damaged).completeBaseName());
    }

    /// The newest of the candidates that is in order, as this program reads it; empty: none is.
    QString soundBackup(const QString& bookId) {
        for (const Backup& backup : candidates(bookId)) {
            try {
                const QString path = upToDate(backup.path, m_folder);
                if (checkBookAt(path, m_progress.part(kFileRead, 1)).isEmpty()) {
                    m_account.backup = backup;
                    return path;
                }
            } catch (const Error&) {
                // damaged too, or gone: the next one
            }
            if (!m_from.backup.isEmpty())
                throw Error(Error::Kind::Book, Edits::tr("The backup %1 is not in order itself: name another, or none.")
                                                   .arg(store::shownPath(backup.path)));
        }
        return {};
    }

    const SalvageFrom& m_from;
    QString m_folder;
    SalvageAccount& m_account;
    const Progress& m_progress;
    SalvageSources m_sources;
};

QString wrongSentence(const Remains& r) {
    if (r.layoutGuessed())
        return Edits::tr("The file's list of its tables cannot be read; of its %1 pages %2 more cannot, or not whole.")
            .arg(r.pages())
            .arg(r.badPages());
    if (r.badPages() > 0)
        return Edits::tr("Of the file's %1 pages %2 cannot be read, or not whole.").arg(r.pages()).arg(r.badPages());
    if (r.halfEditLeft()) return Edits::tr("The last change was written by half and cannot be taken back.");
    return Edits::tr("Every page of the file that holds records can be read.");
}

} // namespace

SalvageSources readSources(const SalvageFrom& from, const QString& folder, SalvageAccount& account,
                           const Progress& progress) {
    progress.at(0);
    SalvageSources sources = Reading(from, folder, account, progress).run();
    account.wrong = wrongSentence(*sources.remains);
    return sources;
}

} // namespace core::edit
