#include "ui/print/plan_words.h"

#include "ui/print/measures.h"

#include "ui/look/rule_words.h"
#include "ui/look/words.h"
#include "ui/print/font_measure.h"

#include <QFontMetricsF>
#include <QPainter>

namespace ui::print {

QString dayLine(const PlanSheetJob& job) {
    const auto hives = job.scene.hives.size();
    const QStringList parts{PlanWords::tr("The yard on %1").arg(look::dayText(job.day)),
                            hives == 1 ? PlanWords::tr("1 hive") : PlanWords::tr("%1 hives").arg(hives),
                            PlanWords::tr("%1, revision %2").arg(job.book).arg(job.revision),
                            PlanWords::tr("printed %1").arg(look::dayText(job.printedOn))};
    return parts.join(QStringLiteral(" · "));
}

QString lettersLine(const plan::Scene& scene) {
    QStringList parts;
    for (int k = 0; k < core::rules::kHoldKindCount; ++k) {
        const auto kind = static_cast<core::rules::HoldKind>(k);
        const QChar letter = core::rules::holdLetter(kind);
        for (const plan::HiveMark& h : scene.hives) {
            if (!h.holdLetters.contains(letter)) continue;
            parts << PlanWords::tr("%1 = %2").arg(letter).arg(look::holdTitle(kind));
            break;
        }
    }
    return parts.isEmpty() ? QString()
                           : PlanWords::tr("Held, not to be touched: %1").arg(parts.join(QStringLiteral(", ")));
}

QStringList wrapped(const QStringList& texts, double points, double widthMm) {
    const QFontMetricsF metrics(paperFont(kTypePixels, false));
    const double most = widthMm / (points * kMmPerPoint / kTypePixels);
    QStringList out;
    for (const QString& text : texts) {
        QString line;
        for (const QString& word : text.split(u' ')) {
            const QString longer = line.isEmpty() ? word : line + u' ' + word;
            if (!line.isEmpty() && metrics.horizontalAdvance(longer) > most) {
                out << line;
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) out << line;
    }
    return out;
}

QStringList cautionLines() {
    return {PlanWords::tr("North is up. Combs are inked as far as bees cover them; “?” stands for no count in force."),
            PlanWords::tr("Yardwright advises. Local apiary law, inspectors, veterinarians and labels decide.")};
}

void paintText(QPainter& p, const QPointF& at, const QString& text, double points, bool bold, Qt::Alignment side) {
    if (text.isEmpty()) return;
    p.save();
    const double scale = points * kMmPerPoint / kTypePixels;
    p.translate(at);
    p.scale(scale, scale);
    const QFont font = paperFont(kTypePixels, bold);
    p.setFont(font);
    p.setPen(Qt::black);
    const double x = side & Qt::AlignRight ? -QFontMetricsF(font).horizontalAdvance(text) : 0;
    p.drawText(QPointF(x, 0), text);
    p.restore();
}

QString fitted(const QString& text, double points, double widthMm) {
    const QFontMetricsF metrics(paperFont(kTypePixels, false));
    return metrics.elidedText(text, Qt::ElideRight, widthMm / (points * kMmPerPoint / kTypePixels));
}

} // namespace ui::print
