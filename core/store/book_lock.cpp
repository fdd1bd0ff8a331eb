#include "core/store/book_lock.h"

#include "core/store/book_note.h"

#include <QFile>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::store {

namespace {

QString detailOf(const QByteArray& path, int error) {
    return QString::fromLocal8Bit(path) + QStringLiteral(": ") + QString::fromLocal8Bit(strerror(error));
}

bool noSuchLocks(int error) { return error == ENOLCK || error == EOPNOTSUPP || error == ENOSYS || error == EINVAL; }

Error cannotLock(const QByteArray& path, int error) {
    if (noSuchLocks(error))
        return Error(Error::Kind::Book,
                     QStringLiteral("The file system of this folder knows no locks, so nothing would keep two programs "
                                    "from writing into the book at once. To change it, copy it to a disk of this "
                                    "machine."),
                     detailOf(path, error));
    return Error(Error::Kind::Book,
                 QStringLiteral("The book cannot be opened for writing: a file beside it cannot be made. "
                                "Is its folder read-only or the disk full?"),
                 detailOf(path, error));
}

BookHolder noteIn(int file) {
    QByteArray note(kLongestNote, '\0');
    const ssize_t got = pread(file, note.data(), kLongestNote, 0);
    note.truncate(got > 0 ? got : 0);
    return holderIn(note);
}

/// `file` is open, and locked by another.
BookHeld held(const QByteArray& path, int file, int error) {
    return {BookHeld::Known::Locked,
            QStringLiteral("The book is held by another program or window, which may be writing to it. "
                           "Close it there first."),
            detailOf(path, error), noteIn(file)};
}

BookHeld noted(const QByteArray& path, const BookHolder& by) {
    const QString since = by.since.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm"));
    QStringList who{by.who, by.host.isEmpty() ? QString() : QStringLiteral("on ") + by.host};
    who.removeAll(QString());
    return {BookHeld::Known::Noted,
            QStringLiteral("A note beside the book says that it is open elsewhere (%1 since %2), on a machine that "
                           "cannot be asked from here. Close it there first; where it is not open there any more, "
                           "remove the note: %3.")
                .arg(who.join(u' '), since.isEmpty() ? QStringLiteral("?") : since, QString::fromLocal8Bit(path)),
            {},
            by};
}

/// Whether `path` still names the open file: its last holder may have deleted it between our open and our lock, or a
/// sync program since.
bool stillNamed(const QByteArray& path, int file) {
    struct stat named {};
    struct stat held {};
    return stat(path.constData(), &named) == 0 && fstat(file, &held) == 0 && named.st_dev == held.st_dev &&
           named.st_ino == held.st_ino;
}

int lockWhole(int file) { return flock(file, LOCK_EX | LOCK_NB); }

int lockRanged(int file) {
    struct flock all {};
    all.l_type = F_WRLCK;
    all.l_whence = SEEK_SET;
    if (fcntl(file, F_OFD_SETLK, &all) == 0) return 0;
    if (errno == EAGAIN || errno == EACCES) errno = EWOULDBLOCK;
    return -1;
}

/// The lock on `path` and nothing more; what is noted in it is not minded.
int lockedFile(const QByteArray& path, const LockCalls& calls) {
    while (true) {
        const int file = open(path.constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
        if (file < 0) throw cannotLock(path, errno);
        if (calls.whole(file) != 0 && !(noSuchLocks(errno) && calls.ranged(file) == 0)) {
            const int error = errno;
            const BookHeld byAnother = held(path, file, error);
            close(file);
            if (error == EWOULDBLOCK) throw byAnother;
            throw cannotLock(path, error);
        }
        if (stillNamed(path, file)) return file;
        close(file);
    }
}

QByteArray lockPathOf(const QString& bookPath) { return QFile::encodeName(bookPath + QStringLiteral("-lock")); }

} // namespace

const LockCalls& systemLocks() {
    static const LockCalls calls{lockWhole, lockRanged};
    return calls;
}

BookLock::BookLock(const QString& bookPath, const LockCalls& calls)
    : m_path(lockPathOf(bookPath)), m_calls(calls), m_file(taken()) {
    if (ftruncate(m_file, 0) != 0) qWarning("an old note stays beside the book: %s", strerror(errno));
}

int BookLock::taken() const {
    const int file = lockedFile(m_path, m_calls);
    const BookHolder before = noteIn(file);
    if (!ofAnotherMachine(before)) return file;
    close(file);
    throw noted(m_path, before);
}

void BookLock::sign(const BookHolder& holder) {
    m_holder = holder;
    signAgain();
}

void BookLock::signAgain() const {
    if (!m_holder) return;
    const QByteArray note = noteOf(*m_holder);
    const bool written = ftruncate(m_file, 0) == 0 &&
                         pwrite(m_file, note.constData(), static_cast<size_t>(note.size()), 0) == note.size();
    if (!written) qWarning("nobody can be told who has the book: %s", strerror(errno));
}

void BookLock::need() {
    if (stillNamed(m_path, m_file)) {
        const BookHolder now = noteIn(m_file);
        if (ofAnotherMachine(now)) throw noted(m_path, now);
        return;
    }
    const int file = taken();
    close(m_file);
    m_file = file;
    signAgain();
}

BookLock::~BookLock() {
    // What another has put there, or another machine has written, is not ours to delete.
    if (stillNamed(m_path, m_file) && !ofAnotherMachine(noteIn(m_file))) unlink(m_path.constData());
    close(m_file);
}

void forgetNote(const QString& bookPath) {
    const int file = lockedFile(lockPathOf(bookPath), systemLocks());
    if (ftruncate(file, 0) != 0) qWarning("an old note stays beside the book: %s", strerror(errno));
    close(file);
}

} // namespace core::store
