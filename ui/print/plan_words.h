#pragma once

#include "ui/print/plan_sheet.h"

#include <QCoreApplication>
#include <QStringList>

class QPainter;

namespace ui::print {

// What is written around the drawing of a yard.

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

/// "The yard on 15 Sep 2026 · 12 hives · Our hives, revision 34 · printed 16 Sep 2026"
QString dayLine(const PlanSheetJob& job);
/// What the letters on the drawing mean; empty where nothing is held.
QString lettersLine(const plan::Scene& scene);
QStringList cautionLines();
/// Each text broken between words where it is wider than that.
QStringList wrapped(const QStringList& texts, double points, double widthMm);

/// At a baseline in mm; the painter counts in mm.
void paintText(QPainter& p, const QPointF& at, const QString& text, double points, bool bold,
               Qt::Alignment side = Qt::AlignLeft);
/// Cut off with dots where it is wider than that.
QString fitted(const QString& text, double points, double widthMm);

} // namespace ui::print
