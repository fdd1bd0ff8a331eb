#include "core/exchange/name_pool.h"

#include "core/base/natural_order.h"
#include "core/exchange/fault.h"

namespace core::exchange {

namespace {

constexpr qsizetype kMostCharacters = 60;
constexpr size_t kMostKeptBytes = 400; ///< no label is longer, whatever its characters

bool hasControl(const QString& text) {
    for (const QChar c : text)
        if (c.category() == QChar::Other_Control) return true;
    return false;
}

} // namespace

QString labelTrouble(const QString& trimmed) {
    if (trimmed.isEmpty()) return Say::tr("is blank, expected 1 to 60 characters");
    if (hasControl(trimmed)) return Say::tr("holds a control character, expected none");
    const qsizetype characters = trimmed.toUcs4().size();
    if (characters > kMostCharacters) return Say::tr("has %1 characters, expected 1 to 60").arg(characters);
    return {};
}

LabelId NamePool::intern(const QString& label) {
    const QString key = folded(label);
    const auto found = m_byFolded.constFind(key);
    if (found != m_byFolded.constEnd()) return {*found};
    const auto id = static_cast<qint32>(m_shown.size());
    m_byFolded.insert(key, id);
    m_shown.push_back(label);
    return {id};
}

NamePool::Read NamePool::parse(std::string_view cell) {
    const QString text = QString::fromUtf8(cell.data(), static_cast<qsizetype>(cell.size())).trimmed();
    const qsizetype at = text.lastIndexOf(u'@');
    const QString label = at < 0 ? text : text.left(at).trimmed();
    if (const QString trouble = labelTrouble(label); !trouble.isEmpty()) return {{}, trouble};
    if (label.contains(u'@')) return {{}, Say::tr("holds more than one @, expected LABEL or LABEL@SINCE")};
    if (at < 0) return {{intern(label), {}}, {}};
    const auto since = parseIsoDay(QStringView(text).mid(at + 1).trimmed());
    if (!since) return {{}, Say::tr("has no date after the @, expected LABEL@SINCE as in A7@2025-05-01")};
    return {{intern(label), since}, {}};
}

const NamePool::Read& NamePool::read(std::string_view cell) {
    if (cell.size() > kMostKeptBytes) return m_long = parse(cell);
    const auto found = m_read.find(cell);
    if (found != m_read.end()) return found->second;
    return m_read.emplace(std::string(cell), parse(cell)).first->second;
}

} // namespace core::exchange
