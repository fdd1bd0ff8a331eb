#include "core/report/medicine_pages.h"

#include "core/report/medicine_words.h"

#include <algorithm>

namespace core::report {

using rules::MedicineBook;
using rules::MedicineEntry;

namespace {

constexpr Type kSmall{9.5, false, Ink::Black};
constexpr Type kSmallStrong{9.5, true, Ink::Black};
constexpr double kHang = 6;
constexpr qsizetype kColoniesABlock = 60;
constexpr size_t kMostNamedHere = 200; ///< more would not fit onto a page with the rest

QString namesOf(const MedicineBook& book, const MedicineEntry& entry) {
    if (entry.row.yard && entry.colonies.size() > kMostNamedHere)
        return QStringLiteral("all of %1, each named below").arg(book.yardName(*entry.row.yard));
    QStringList names;
    for (const ColonyId id : entry.colonies) names << book.name(id, entry.row.day);
    const QString all = names.join(QStringLiteral(", "));
    return entry.row.yard ? QStringLiteral("all of %1: %2").arg(book.yardName(*entry.row.yard), all) : all;
}

/// Bought and disposed of are recorded without a unit of their own.
QString amountText(const std::optional<double>& amount) {
    return recordedText(amount ? QString::number(*amount, 'g', 12) : QString());
}

QString givenText(const Treatment& t) {
    if (t.quantity && t.unit.isEmpty()) return QStringLiteral("%1 (unit not recorded)").arg(amountText(t.quantity));
    return t.quantity ? amountText(t.quantity) + u' ' + t.unit : amountText(t.quantity);
}

/// Writes paragraphs one below the other; struck ones with a line through each of their lines.
class EntryPen {
public:
    EntryPen(const TextMeasure& measure, double width) : m_pen(measure, m_block), m_width(width) {}

    void say(const QString& lead, const QString& text, const Type& type = kSmall) {
        m_y = m_pen.paragraph(kHang, m_y, m_width - kHang, text, type, lead, kHang);
    }
    void head(const QString& text, bool struck) {
        for (const QString& line : wrapped(m_pen.measure(), text, kStrong, m_width, m_width)) {
            m_pen.line(0, m_y, line, kStrong);
            if (struck) strike(0, m_pen.width(line, kStrong), kStrong);
            m_y += lineHeight(kStrong.pointSize);
        }
    }
    /// A field of a correction: the old words struck through, then the new ones.
    void corrected(const MedicineStrike& s, const QString& signedBy) {
        const QString field = s.field + QStringLiteral(":");
        double x = 2 * kHang;
        m_pen.line(x, m_y, field, kSmall);
        x += m_pen.width(field + u' ', kSmall);
        const QString old = recordedText(s.from);
        for (const QString& line : wrapped(m_pen.measure(), old, kSmall, m_width - 3 * kHang, m_width - x)) {
            if (x <= 3 * kHang) m_y += lineHeight(kSmall.pointSize);
            m_pen.line(x, m_y, line, kSmall);
            const double end = x + m_pen.width(line, kSmall);
            if (!s.from.isEmpty()) strike(x, end, kSmall);
            x = 3 * kHang;
            m_x = end + m_pen.width(QStringLiteral("  "), kSmall);
        }
        const QString now = QStringLiteral("%1 (%2)").arg(recordedText(s.to), signedBy);
        const double room = std::max(m_width - m_x, 1.0);
        for (const QString& line : wrapped(m_pen.measure(), now, kSmall, m_width - 3 * kHang, room)) {
            if (!line.isEmpty()) m_pen.line(m_x, m_y, line, kSmall);
            m_y += lineHeight(kSmall.pointSize);
            m_x = 3 * kHang;
        }
    }
    Block done(double gap, bool rule) {
        if (rule) m_pen.stroke({0, m_y + 0.8}, {m_width, m_y + 0.8}, 0.2);
        m_block.height = m_y + (rule ? 1.2 : 0);
        m_block.gapAfter = gap;
        return std::move(m_block);
    }

private:
    void strike(double from, double to, const Type& type) {
        const double y = m_y + baseline(type.pointSize) - type.pointSize * kMmPerPoint * 0.28;
        m_pen.stroke({from, y}, {to, y}, 0.35);
    }

    Block m_block;
    BlockPen m_pen;
    double m_width;
    double m_x = 0; ///< of what follows the old words of a correction
    double m_y = 0;
};

void sayCorrections(const MedicineBook& book, const MedicineEntry& entry, EntryPen& pen) {
    if (entry.changes.size() < (entry.struck ? 2 : 1)) return; // the last of a struck one is said above
    pen.say(QStringLiteral("Corrections, oldest first:"), {});
    for (const MedicineChange& change : entry.changes) {
        if (change.before && change.after)
            for (const MedicineStrike& s : strikesOf(book, change)) pen.corrected(s, signedText(change));
        else
            pen.say({}, changeText(book, change));
    }
}

Block entryBlock(const MedicineBook& book, const MedicineEntry& e, const TextMeasure& measure, double width) {
    const Treatment& t = e.row;
    EntryPen pen(measure, width);
    pen.head(
        QStringLiteral("%1  %2 (%3)%4")
            .arg(isoText(t.day), t.product, t.substance, t.antibiotic ? QStringLiteral(", an antibiotic") : QString()),
        e.struck);
    if (e.struck && !e.changes.empty())
        pen.say(QStringLiteral("No longer in force:"), changeText(book, e.changes.back()));
    pen.say(QStringLiteral("Colonies, %1:").arg(e.colonies.size()), namesOf(book, e));
    pen.say(
        QStringLiteral("Given:"),
        QStringLiteral("%1 · quantity, as recorded: %2 · method: %3 · applied by: %4 · reason: %5")
            .arg(durationText(e), givenText(t), recordedText(t.method), recordedText(t.by), recordedText(t.reason)));
    const QString out = outText(book, e);
    if (!out.isEmpty()) pen.say(QStringLiteral("Taken out:"), out);
    pen.say(QStringLiteral("Withdrawal:"), withdrawalText(e));
    pen.say(QStringLiteral("Bought:"),
            QStringLiteral("batch: %1 · on: %2 · quantity: %3 · supplier: %4 · address: %5 · proof: %6")
                .arg(recordedText(t.batch), recordedText(t.bought ? isoText(*t.bought) : QString()),
                     amountText(t.quantityBought), recordedText(t.supplier), recordedText(t.supplierAddress),
                     recordedText(t.proof)));
    pen.say(QStringLiteral("Prescribed by:"),
            t.prescriber.isEmpty() && t.prescriberContact.isEmpty()
                ? QStringLiteral("nobody recorded")
                : QStringLiteral("%1, %2").arg(recordedText(t.prescriber), recordedText(t.prescriberContact)));
    const bool disposed = t.disposed || t.disposedQuantity || !t.disposedHow.isEmpty();
    pen.say(QStringLiteral("Left over:"), disposed
                                              ? QStringLiteral("disposed of on: %1 · quantity: %2 · how and where: %3")
                                                    .arg(recordedText(t.disposed ? isoText(*t.disposed) : QString()),
                                                         amountText(t.disposedQuantity), recordedText(t.disposedHow))
                                              : QStringLiteral("no disposal recorded"));
    const QString missing = missingText(rules::medicineMissing(book, e));
    if (!e.struck && !missing.isEmpty()) pen.say(QStringLiteral("Not recorded, and asked for:"), missing);
    sayCorrections(book, e, pen);
    pen.say(QStringLiteral("Kept until:"), isoText(e.keptUntil));
    Block block = pen.done(1, false);
    block.zone = QStringLiteral("treatment %1").arg(t.id.value);
    block.zoneWidth = width;
    return block;
}

/// Where they stood, some sixty colonies a block: a large yard is not one piece.
void addPlaceBlocks(const MedicineBook& book, const MedicineEntry& entry, const TextMeasure& measure, double width,
                    std::vector<Block>& blocks) {
    QStringList lines = placesText(book, entry);
    if (lines.isEmpty()) lines << recordedText({});
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QStringList parts = lines[i].split(QStringLiteral(", "));
        for (qsizetype at = 0; at < parts.size(); at += kColoniesABlock) {
            EntryPen pen(measure, width);
            pen.say(i == 0 && at == 0 ? QStringLiteral("Where they stood:") : QString(),
                    parts.mid(at, kColoniesABlock).join(QStringLiteral(", ")));
            const bool last = i + 1 == lines.size() && at + kColoniesABlock >= parts.size();
            blocks.push_back(pen.done(last ? 3 : 0.4, last));
        }
    }
}

QString keeperText(const std::optional<Keeper>& keeper) {
    if (!keeper) return QStringLiteral("Keeper: name and address not recorded");
    QStringList parts{keeper->name, recordedText(keeper->address)};
    if (!keeper->contact.isEmpty()) parts << keeper->contact;
    if (!keeper->registration.isEmpty()) parts << QStringLiteral("registration %1").arg(keeper->registration);
    QString text = QStringLiteral("Keeper: %1").arg(parts.join(QStringLiteral(" · ")));
    return text.replace(u'\n', QStringLiteral(", "));
}

} // namespace

QString medicinePeriod(const MedicineBook& book, const MedicineAbout& about) {
    const QString yard = about.yard.isEmpty() ? QStringLiteral("all yards") : about.yard;
    const QString from =
        about.from ? QStringLiteral("from %1").arg(isoText(*about.from)) : QStringLiteral("from the first entry");
    return QStringLiteral("%1, %2 to %3").arg(yard, from, isoText(about.until.value_or(book.today())));
}

std::vector<Page> medicinePages(const MedicineBook& book, const MedicineAbout& about, const PageOrigin& origin,
                                const TextMeasure& measure) {
    const PageSize size = pageSize(origin.paper);
    const QString keeper = keeperText(book.rows().keeper);
    const QString period = medicinePeriod(book, about);
    PageTexts texts = textsFrom(origin, QStringLiteral("Medicine register"), keeper + QStringLiteral(" · ") + period);
    texts.running = QStringLiteral("Medicine register, %1").arg(period);
    texts.foot = keeper;
    texts.code = QStringLiteral("Local law, vets and labels decide.");
    Section section;
    section.heading = QStringLiteral("Treatments by their first day");
    section.note = QStringLiteral(
        "Entries are corrected, never erased: what was altered stands struck through with its day, name and reason. "
        "EU: Regulation (EU) 2019/6 article 108; UK: Veterinary Medicines Regulations 2013, regulations 18 and 19; "
        "Germany: Bestandsbuch.");
    for (const MedicineEntry& entry : about.entries) {
        section.blocks.push_back(entryBlock(book, entry, measure, size.contentWidth()));
        addPlaceBlocks(book, entry, measure, size.contentWidth(), section.blocks);
    }
    if (section.blocks.empty()) {
        EntryPen pen(measure, size.contentWidth());
        pen.say({}, QStringLiteral("No treatment is recorded for this time and place."), kText);
        section.blocks.push_back(pen.done(2, false));
    }
    return pagesOf({section}, texts, size, measure);
}

QStringList medicineFileColumns() {
    QStringList columns{QStringLiteral("struck"),   QStringLiteral("colony"), QStringLiteral("yard"),
                        QStringLiteral("colonies"), QStringLiteral("count"),  QStringLiteral("places")};
    for (const MedicineColumn& column : medicineColumns()) columns << QString::fromLatin1(column.file);
    return columns << QStringLiteral("last_day") << QStringLiteral("taken_out") << QStringLiteral("no_honey_before")
                   << QStringLiteral("withdrawal") << QStringLiteral("kept_until") << QStringLiteral("missing")
                   << QStringLiteral("corrections") << QStringLiteral("keeper") << QStringLiteral("keeper_address");
}

std::vector<QStringList> medicineFileRows(const MedicineBook& book, const MedicineAbout& about) {
    std::vector<QStringList> rows;
    const auto& keeper = book.rows().keeper;
    for (const MedicineEntry& e : about.entries) {
        QStringList names;
        for (const ColonyId id : e.colonies) names << book.name(id, e.row.day);
        QStringList row{e.struck ? QStringLiteral("yes") : QStringLiteral("no"),
                        e.row.colony ? book.name(*e.row.colony, e.row.day) : QString(),
                        e.row.yard ? book.yardName(*e.row.yard) : QString(),
                        names.join(QStringLiteral("; ")),
                        QString::number(e.colonies.size()),
                        placesText(book, e).join(QStringLiteral("; "))};
        for (const MedicineColumn& column : medicineColumns()) row << column.text(e.row);
        QStringList corrections;
        for (const MedicineChange& change : e.changes) corrections << changeText(book, change);
        const bool lastKnown = e.row.days || !e.out.empty();
        row << (lastKnown ? isoText(e.lastDay) : QString()) << outText(book, e)
            << (e.honeyFrom ? isoText(*e.honeyFrom) : QString()) << withdrawalText(e) << isoText(e.keptUntil)
            << (e.struck ? QString() : missingText(rules::medicineMissing(book, e)))
            << corrections.join(QStringLiteral("\n")) << (keeper ? keeper->name : QString())
            << (keeper ? keeper->address : QString());
        rows.push_back(row);
    }
    return rows;
}

} // namespace core::report
