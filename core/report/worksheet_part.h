#pragma once

#include "core/report/block.h"
#include "core/report/worksheet_words.h"
#include "core/rules/facts.h"

#include <QString>

#include <functional>
#include <vector>

namespace core::report {

/// What every part of a worksheet reads.
struct SheetInput {
    const Snapshot& s;
    const rules::Plan& plan;
    YardIx yard;
    const std::vector<rules::ColonyFacts>& facts; ///< one a living colony, at its index
    const Words& say;
    const TextMeasure& measure;
    double width; ///< between the margins, mm

    const QString& name(ColonyIx c) const { return s.colony(c).shown; }
    const rules::ColonyFacts& of(ColonyIx c) const { return facts[static_cast<size_t>(c.value)]; }
    bool here(ColonyIx c) const { return of(c).yard == yard; }
};

/// Blocks under one heading. A section without blocks is left out. On each further page the heading is repeated.
struct Section {
    QString heading;
    QString note; ///< smaller, below the heading
    std::vector<Block> blocks;
    bool ownPage = false; ///< begins on a new page
    /// The one block made anew at another height: down to three quarters where the page has no more room, and taller
    /// by up to `stretch` where what follows does not fit on the page any more.
    std::function<Block(double height)> resized = {};
    double stretch = 0;
};

Section heldSection(const SheetInput& in);
Section drawingSection(const SheetInput& in, double pageRoom);
Section unionSection(const SheetInput& in);
Section shakeOutSection(const SheetInput& in);
Section separateSection(const SheetInput& in);
Section openSection(const SheetInput& in); ///< unresolved, alone at risk, and those left as they are
Section boxSection(const SheetInput& in);  ///< order of boxes and divides
Section feedSection(const SheetInput& in);
Section mindSection(const SheetInput& in); ///< cautions of colonies in no union or shake-out
Section kitSection(const SheetInput& in);
Section checkSection(const SheetInput& in);
Section careSection(const SheetInput& in);
Section walkSection(const SheetInput& in, const std::vector<WalkRow>& rows);
Section consolidateSection(const SheetInput& in); ///< colonies of unions to bring down to one box

/// The union of moved and host with its two boxes from the side, at the left top corner given; returns the y below.
double stackDrawing(const SheetInput& in, const rules::Union& u, BlockPen& pen, double x, double y);
constexpr double kStackWidth = 64;

/// What to do at the hives, in order, in few words.
QStringList unionSteps(const SheetInput& in, const rules::Union& u);
QStringList shakeOutSteps(const SheetInput& in, const rules::ShakeOut& shaken);
/// Whole kilograms to lift, rounded up, of the hives with a valid weight, and the last limit of common guidance that
/// the heaviest passes; else empty.
QString liftText(const SheetInput& in, const rules::Union& u);
/// What a caution says, after its title.
QString cautionText(const SheetInput& in, const rules::Caution& caution, const std::vector<ColonyIx>& colonies);

} // namespace core::report
