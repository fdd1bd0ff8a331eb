#include "tests/fuzz/scratch.h"

#include "core/exchange/export.h"
#include "tests/fuzz/target.h"
#include "tests/support/quick_place.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>

namespace tests::fuzz {

using namespace core;

namespace {

constexpr char kFileMark[] = "== ";
constexpr qsizetype kLongestMessage = 1500;

QString source(const QString& name) { return QStringLiteral(YW_SOURCE_DIR "/tests/") + name; }

QByteArray madeYardsBook() {
    const QString path = scratch(QStringLiteral("yards.yardwright"));
    QFile::remove(path);
    for (const char* yard : {"brook-end", "kiln-field", "tansy-lane"}) {
        const QDir from(source(QStringLiteral("data/yards/") + QLatin1StringView(yard)));
        exchange::ImportFiles files;
        for (const exchange::FileKind kind : exchange::kReadKinds)
            if (from.exists(exchange::fileName(kind)))
                files.files.push_back({kind, from.filePath(exchange::fileName(kind))});
        need(exchange::importIntoBook(path, clock(), files, false).good(), "the worked yards are taken in");
    }
    return fileBytes(path);
}

bool plainLine(const QString& text) {
    return std::ranges::none_of(text, [](QChar c) { return c.unicode() < 0x20 || c.unicode() == 0x7F; });
}

} // namespace

const Clock& clock() {
    static const NoonClock noon;
    return noon;
}

QString scratch(const QString& name) {
    static const QTemporaryDir folder(tests::quickPlace(QStringLiteral("yw-fuzz-XXXXXX")));
    return folder.filePath(name);
}

QString emptyFolder(const QString& name) {
    const QString path = scratch(name);
    QDir(path).removeRecursively();
    QDir().mkpath(path);
    return path;
}

void writeFile(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("%s cannot be written", qPrintable(path));
}

QByteArray fileBytes(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) qFatal("%s cannot be read", qPrintable(path));
    return file.readAll();
}

const QByteArray& yardsBook() {
    static const QByteArray book = madeYardsBook();
    return book;
}

const QByteArray& goldenBook(int version) {
    static std::map<int, QByteArray> books;
    QByteArray& book = books[version];
    if (book.isEmpty()) book = fileBytes(source(QStringLiteral("golden/version-%1.yardwright").arg(version)));
    return book;
}

std::unique_ptr<edit::Session> copyOpened(const QByteArray& book, const QString& name) {
    writeFile(scratch(name), book);
    return edit::Session::open(scratch(name), clock());
}

Texts textsIn(const QByteArray& input) {
    Texts texts;
    QString name = exchange::fileName(exchange::FileKind::Visits);
    for (qsizetype at = 0; at < input.size();) {
        const qsizetype lineEnd = input.indexOf('\n', at);
        const qsizetype next = lineEnd < 0 ? input.size() : lineEnd + 1;
        const QByteArray line = input.mid(at, next - at);
        at = next;
        if (line.startsWith(kFileMark))
            name = QString::fromUtf8(line.mid(3)).trimmed();
        else
            texts[name] += line;
    }
    return texts;
}

exchange::ImportFiles writeTexts(const Texts& texts, const QString& folder) {
    exchange::ImportFiles files;
    for (const exchange::FileKind kind : exchange::kReadKinds) {
        const auto text = texts.find(exchange::fileName(kind));
        if (text == texts.end()) continue;
        files.files.push_back({kind, QDir(folder).filePath(text->first)});
        writeFile(files.files.back().path, text->second);
    }
    return files;
}

Texts exported(const edit::Session& session, const QString& folder) {
    const QDir out(emptyFolder(folder));
    exchange::exportBook(session, out.path());
    Texts texts;
    for (const QString& name : out.entryList(QDir::Files)) texts[name] = fileBytes(out.filePath(name));
    return texts;
}

void needWellSaid(const exchange::Faults& faults) {
    need(static_cast<qint64>(faults.kept().size()) == std::min<qint64>(faults.count(), exchange::Faults::kMostFaults),
         "the first fifty faults are kept");
    for (const exchange::Fault& fault : faults.kept()) {
        need(!fault.file.isEmpty() && fault.line >= 1 && !fault.column.isEmpty() && !fault.what.isEmpty(),
             "a fault says file, line, column and what", fault.text());
        need(plainLine(fault.text()), "a fault is one line", fault.text());
        need(fault.text().size() <= kLongestMessage, "a fault is no longer than can be read", fault.text());
    }
}

void needWellSaid(const Error& e) {
    need(e.kind() != Error::Kind::Internal, "no input makes an internal error", e.userMessage() + e.detail());
    need(!e.userMessage().isEmpty() && e.userMessage().size() <= kLongestMessage, "an error says what is wrong",
         e.userMessage());
    need(plainLine(e.userMessage()), "an error is one line", e.userMessage());
}

} // namespace tests::fuzz
