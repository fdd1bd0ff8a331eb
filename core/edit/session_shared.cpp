#include "core/edit/medicine_lines.h"
#include "core/edit/session.h"
#include "core/edit/session_private.h"

#include <QSysInfo>

namespace core::edit {

namespace {

/// The account's name, until a person of the book has said who is writing.
QString accountName() {
    for (const char* name : {"USER", "LOGNAME", "USERNAME"})
        if (const QString value = qEnvironmentVariable(name); !value.isEmpty()) return value;
    return {};
}

} // namespace

void Session::Private::sign() const {
    db->signLock({author.isEmpty() ? accountName() : author, QSysInfo::machineHostName(), since});
}

void Session::Private::begin(std::unique_ptr<store::Database> opened) {
    db = std::move(opened);
    if (!db->readOnly()) makeMedicineLines(*db);
    tops.reset();
    since = clock->nowUtc();
    othersSeen = db->othersVersion();
    sign();
}

void Session::setAuthor(const QString& name) {
    d->author = name.trimmed();
    d->sign();
}

bool Session::changedElsewhere() {
    const std::optional<qint64> now = d->db->othersVersion();
    if (!now || now == d->othersSeen) return false;
    d->othersSeen = now;
    return true;
}

void Session::takeOver() {
    if (readOnly()) d->begin(store::Database::open(path(), store::Access::ReadWrite));
}

} // namespace core::edit
