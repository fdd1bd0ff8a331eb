#include "ui/exchange/foreign_draft.h"

#include "core/base/input_file.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace ui::exchange {

namespace ex = core::exchange;

QString ForeignDraft::open(const QString& path, const std::vector<ex::KeptMapping>& kept) {
    *this = ForeignDraft();
    const QString shown = QDir::toNativeSeparators(path);
    QFile file(path);
    if (const QString other = core::noPlainFile(path); !other.isEmpty())
        return tr("%1 is %2; choose a file that can be read.").arg(shown, other);
    if (!file.open(QIODevice::ReadOnly))
        return tr("%1 cannot be opened (%2); choose a file that can be read.").arg(shown, file.errorString());
    if (file.size() > ex::kMostForeignBytes)
        return tr("%1 is larger than %2 MiB, which is too much to be read here; share its rows out over several files.")
            .arg(shown)
            .arg(ex::kMostForeignBytes >> 20);
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return tr("%1 cannot be read (%2); choose a file that can be read.").arg(shown, file.errorString());
    if (bytes.isEmpty()) return tr("%1 is empty; choose a file with a row of names and rows below it.").arg(shown);
    auto decoded = ex::decode(bytes);
    if (!decoded || decoded->text.contains('\0'))
        return tr("%1 is no table as text; save it as CSV in the program that made it.").arg(shown);
    m_path = path;
    m_bytes = bytes;
    m_foundEncoding = decoded->encoding;
    take(*std::move(decoded));
    m_found = ex::formsOf(m_text);
    m_mapping.forms = m_found.forms;
    readHeader();
    m_mapping.kind = ex::guessedKind(m_text, forms());
    propose();
    for (const ex::KeptMapping& k : kept)
        if (k.mapping.encoding.value_or(m_encoding) == m_encoding &&
            !ex::mappingsFor({k}, ex::headerOf(m_text, k.mapping.forms.separator)).empty()) {
            setMapping(k);
            break;
        }
    return {};
}

void ForeignDraft::take(ex::Decoded decoded) {
    m_text = std::move(decoded.text);
    m_encoding = decoded.encoding;
}

void ForeignDraft::readHeader() {
    m_header = ex::headerOf(m_text, forms().separator);
    m_samples = ex::samplesOf(m_text, forms().separator);
}

void ForeignDraft::propose() {
    m_mapping.columns = ex::proposedMapping(kind(), m_text, forms()).columns;
    m_keptName.clear();
}

std::optional<ex::ColumnMapping> ForeignDraft::column(const QString& ours) const {
    const auto found = std::ranges::find(m_mapping.columns, ours, &ex::ColumnMapping::to);
    return found == m_mapping.columns.end() ? std::nullopt : std::optional(*found);
}

void ForeignDraft::setKind(ex::FileKind kind) {
    if (kind == m_mapping.kind) return;
    m_mapping.kind = kind;
    propose();
}

QString ForeignDraft::setEncoding(ex::Encoding encoding) {
    if (encoding == m_encoding) return {};
    auto decoded = ex::decode(m_bytes, encoding);
    if (!decoded || decoded->text.contains('\0'))
        return tr("The file is not text in %1; it stays %2.").arg(shownEncoding(encoding), shownEncoding(m_encoding));
    take(*std::move(decoded));
    m_mapping.encoding = encoding == m_foundEncoding ? std::nullopt : std::optional(encoding);
    readHeader();
    return {};
}

void ForeignDraft::setForms(const ex::CellForms& forms) {
    const bool cutAnew = forms.separator != m_mapping.forms.separator;
    m_mapping.forms = forms;
    if (!cutAnew) return;
    readHeader();
    propose();
}

void ForeignDraft::setColumn(const QString& ours, const std::optional<ex::ColumnMapping>& column) {
    std::erase_if(m_mapping.columns, [&](const ex::ColumnMapping& c) { return c.to == ours; });
    if (column) m_mapping.columns.push_back(*column);
    // In the order of ours, so that the same choices make the same mapping.
    const auto columns = ex::columnsOf(kind());
    const auto place = [&](const ex::ColumnMapping& c) {
        return std::ranges::find_if(columns, [&](const ex::Column& o) { return c.to == QLatin1StringView(o.name); }) -
               columns.begin();
    };
    std::ranges::stable_sort(m_mapping.columns, {}, place);
}

void ForeignDraft::setMapping(const ex::KeptMapping& kept) {
    if (kept.mapping.encoding) setEncoding(*kept.mapping.encoding);
    m_mapping = kept.mapping;
    m_keptName = kept.name;
    readHeader();
}

QString ForeignDraft::foundText() const {
    return tr("Found in the file: %1, %2, %3, days as %4.")
        .arg(shownEncoding(m_foundEncoding), shownSeparator(m_found.forms.separator),
             shownDecimal(m_found.forms.decimal), shownDays(m_found.forms.days));
}

QString ForeignDraft::doubtText() const {
    QStringList doubts;
    if (m_found.daysDoubtful) doubts << tr("Its days can be read in two ways: look at the first rows below.");
    if (m_found.decimalDoubtful)
        doubts << tr(
            "Its numbers have points and commas: look at the first rows below, that 1.500 is not taken for 1.5.");
    if (m_header.size() < 2) doubts << tr("It has one column only: is the separator right?");
    return doubts.join(u' ');
}

QString shownEncoding(ex::Encoding encoding) {
    switch (encoding) {
    case ex::Encoding::Utf8:
        return QStringLiteral("UTF-8");
    case ex::Encoding::Utf16Little:
        return QStringLiteral("UTF-16 LE");
    case ex::Encoding::Utf16Big:
        return QStringLiteral("UTF-16 BE");
    case ex::Encoding::Windows1252:
        break;
    }
    return QStringLiteral("Windows-1252");
}

QString shownSeparator(char separator) {
    switch (separator) {
    case ';':
        return QCoreApplication::translate("ForeignDraft", "semicolon");
    case '\t':
        return QCoreApplication::translate("ForeignDraft", "tab");
    case '|':
        return QCoreApplication::translate("ForeignDraft", "upright bar");
    default:
        return QCoreApplication::translate("ForeignDraft", "comma");
    }
}

QString shownDecimal(ex::DecimalMark mark) {
    return mark == ex::DecimalMark::Comma ? QCoreApplication::translate("ForeignDraft", "decimal comma")
                                          : QCoreApplication::translate("ForeignDraft", "decimal point");
}

QString shownDays(ex::DayOrder order) {
    switch (order) {
    case ex::DayOrder::DayMonthYear:
        return QCoreApplication::translate("ForeignDraft", "day, month, year");
    case ex::DayOrder::MonthDayYear:
        return QCoreApplication::translate("ForeignDraft", "month, day, year");
    case ex::DayOrder::YearMonthDay:
        break;
    }
    return QCoreApplication::translate("ForeignDraft", "year, month, day");
}

QString wordsText(const std::vector<std::pair<QString, QString>>& words) {
    QStringList pairs;
    for (const auto& [theirs, ours] : words)
        pairs << theirs + QStringLiteral(" = ") + (ours.isEmpty() ? QStringLiteral("-") : ours);
    return pairs.join(QStringLiteral("; "));
}

std::vector<std::pair<QString, QString>> wordsFromText(const QString& text) {
    std::vector<std::pair<QString, QString>> out;
    for (const QString& pair : text.split(u';', Qt::SkipEmptyParts)) {
        const qsizetype at = pair.lastIndexOf(u'=');
        const QString theirs = pair.left(at).trimmed();
        const QString ours = at < 0 ? QString() : pair.mid(at + 1).trimmed();
        if (at < 0 || theirs.isEmpty() || ours.isEmpty()) continue;
        out.emplace_back(theirs, ours == QLatin1StringView("-") ? QString() : ours);
    }
    return out;
}

} // namespace ui::exchange
