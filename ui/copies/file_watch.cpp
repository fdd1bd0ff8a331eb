#include "ui/copies/file_watch.h"

#include "core/edit/book_copies.h"

namespace ui::copies {

namespace {
using Kind = desk::FileTrouble::Kind;
constexpr int kPollMs = 1500;
} // namespace

FileWatch::FileWatch(desk::Desk& desk, QObject* parent) : QObject(parent), m_desk(desk) {
    m_poll.setInterval(kPollMs);
    connect(&m_poll, &QTimer::timeout, this, &FileWatch::look);
    connect(&desk, &desk::Desk::notSaved, this, &FileWatch::look);
    connect(&desk, &desk::Desk::did, this, [this] {
        if (m_trouble.kind != Kind::None) look();
    });
    connect(&desk, &desk::Desk::read, this, [this] {
        if (m_desk.session().readOnly()) return lookAsReader();
        if (m_desk.onlyRead().isEmpty()) set({}); // someone tried again
    });
    if (desk.session().readOnly()) lookAsReader();
}

/// It was told why it can only read; what can be done about it depends.
void FileWatch::lookAsReader() {
    const bool noted = core::edit::notedElsewhere(m_desk.session().path());
    set({noted ? Kind::Noted : Kind::None, m_desk.onlyRead(), {}});
}

void FileWatch::look() {
    if (m_desk.session().readOnly()) return lookAsReader();
    try {
        m_desk.session().needOwnFile();
        set({});
    } catch (const core::Error& e) {
        set(desk::troubleOf(e, m_desk.session().clock()));
    }
}

void FileWatch::set(const desk::FileTrouble& trouble) {
    if (trouble.kind == m_trouble.kind) return;
    m_trouble = trouble;
    if (!m_desk.session().readOnly()) {
        trouble.kind == Kind::None ? m_poll.stop() : m_poll.start();
        m_desk.setOnlyRead(trouble.kind == Kind::None ? QString() : trouble.sentence);
    }
    emit changed();
}

void FileWatch::overruleNote() {
    m_desk.session().overruleNote();
    m_desk.takeOver(); // reads anew
    m_trouble.kind = Kind::Noted;
    set({});
}

} // namespace ui::copies
