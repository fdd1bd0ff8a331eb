#include "ui/health/medicine_details.h"

#include "core/report/medicine_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::health {

namespace report = core::report;
namespace rules = core::rules;

namespace {

struct Medicine {
    Q_DECLARE_TR_FUNCTIONS(ui::health::MedicinePage)
};

QString line(const QString& lead, const QString& text) {
    return QStringLiteral("<p style='margin:2px 0'><b>%1</b> %2</p>").arg(lead.toHtmlEscaped(), text);
}

QString missingHtml(const rules::MedicineBook& book, const rules::MedicineEntry& entry) {
    const auto missing = rules::medicineMissing(book, entry);
    if (entry.struck || missing.empty()) return {};
    QStringList parts;
    for (const rules::MedicineMissing& m : missing) {
        QStringList sources;
        for (const rules::MedicineRule rule : m.rules) sources << QString::fromLatin1(rules::sourceOf(rule));
        parts << QStringLiteral("<li>%1: %2</li>")
                     .arg(report::fieldName(m.field).toHtmlEscaped(),
                          sources.join(QStringLiteral("; ")).toHtmlEscaped());
    }
    return line(Medicine::tr("Not recorded, and asked for by some rules; which of them hold for you local law says:"),
                QString()) +
           QStringLiteral("<ul style='margin:0'>%1</ul>").arg(parts.join(QString()));
}

QString strikesHtml(const rules::MedicineBook& book, const core::MedicineChange& change) {
    QStringList parts;
    for (const report::MedicineStrike& s : report::strikesOf(book, change)) {
        const QString from =
            s.from.isEmpty() ? Medicine::tr("not recorded") : QStringLiteral("<s>%1</s>").arg(s.from.toHtmlEscaped());
        parts << QStringLiteral("%1: %2 → %3")
                     .arg(s.field.toHtmlEscaped(), from, report::recordedText(s.to).toHtmlEscaped());
    }
    return QStringLiteral("<li>%1 (%2)</li>")
        .arg(parts.join(QStringLiteral("; ")), report::signedText(change).toHtmlEscaped());
}

QString changesHtml(const rules::MedicineBook& book, const rules::MedicineEntry& entry) {
    if (entry.changes.empty()) return {};
    QString parts;
    for (const core::MedicineChange& change : entry.changes)
        parts += change.before && change.after
                     ? strikesHtml(book, change)
                     : QStringLiteral("<li>%1</li>").arg(report::changeText(book, change).toHtmlEscaped());
    return line(Medicine::tr("Altered, oldest first:"), QString()) +
           QStringLiteral("<ul style='margin:0'>%1</ul>").arg(parts);
}

} // namespace

QString medicineDetails(const rules::MedicineBook& book, const rules::MedicineEntry& entry) {
    QStringList fields;
    for (const report::MedicineColumn& column : report::medicineColumns())
        fields << QStringLiteral("%1: %2").arg(QString::fromLatin1(column.shown),
                                               report::recordedText(column.text(entry.row)));
    const QString all = fields.join(QStringLiteral(" · ")).toHtmlEscaped();
    QString html = entry.struck
                       ? line(Medicine::tr("Taken back, no longer in force:"), QStringLiteral("<s>%1</s>").arg(all))
                       : line(Medicine::tr("Entry:"), all);
    html += line(Medicine::tr("Where they stood:"),
                 report::recordedText(report::placesText(book, entry).join(QStringLiteral("; "))).toHtmlEscaped());
    const QString out = report::outText(book, entry);
    if (!out.isEmpty()) html += line(Medicine::tr("Taken out:"), out.toHtmlEscaped());
    if (!entry.struck) html += line(Medicine::tr("Withdrawal:"), report::withdrawalText(entry).toHtmlEscaped());
    html += changesHtml(book, entry);
    html += missingHtml(book, entry);
    return html + line(Medicine::tr("Kept until:"), core::isoText(entry.keptUntil));
}

QString withdrawalSummary(const rules::MedicineBook& book) {
    constexpr int kLookedBack = 365;
    QStringList now;
    QStringList unknown;
    for (const rules::MedicineEntry& e : book.entries()) {
        if (e.struck || e.row.day > book.today()) continue;
        const QString what = Medicine::tr("%1 (%2)").arg(book.subject(e.row), e.row.product);
        if (e.honeyFrom) {
            if (book.today() < *e.honeyFrom) now << Medicine::tr("%1 until %2").arg(what, core::isoText(*e.honeyFrom));
        } else if (book.today() <= e.lastDay + kLookedBack) {
            unknown << QStringLiteral("%1: %2").arg(what, report::withdrawalText(e));
        }
    }
    QStringList sentences;
    if (!now.isEmpty())
        sentences
            << Medicine::tr("Under treatment or withdrawal, no honey taken: %1.").arg(now.join(QStringLiteral(", ")));
    if (!unknown.isEmpty())
        sentences << Medicine::tr("Not known until when: %1.").arg(unknown.join(QStringLiteral("; ")));
    return sentences.join(u' ');
}

} // namespace ui::health
