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
    double width;  ///< between the margins, mm
    double height; ///< between running head and foot, mm
    const WorksheetOptions& options;

    const QString& name(ColonyIx c) const { return s.colony(c).shown; }
    /// The label where it stands in a sentence: a long one cut, as it stands whole in the head of its strip.
    QString briefly(ColonyIx c) const {
        const qsizetype most = width < 150 ? 12 : 16;
        const QString& whole = name(c);
        return whole.size() <= most ? whole : whole.left(most - 1) + QChar(0x2026);
    }
    const rules::ColonyFacts& of(ColonyIx c) const { return facts[static_cast<size_t>(c.value)]; }
    /// In the yard; of one that has ended, where it stood last.
    bool here(ColonyIx c) const {
        const SnapStay* stay = s.placeOf(c);
        return stay && stay->yard == yard;
    }
};

/// Blocks under one heading. A section without blocks is left out. On each further page the heading is repeated.
struct Section {
    QString heading;
    QString note; ///< smaller, below the heading
    std::vector<Block> blocks;
    bool ownPage = false; ///< begins on a new page
    Block head = {};      ///< stands above the blocks on each page; without height: none
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
Section askedSection(const SheetInput& in); ///< what was asked of the plan, and what of it cannot be
Section openSection(const SheetInput& in);  ///< unresolved, alone at risk, and those left as they are
Section boxSection(const SheetInput& in);   ///< order of boxes
Section divideSection(const SheetInput& in, const WorksheetOptions& options);
Section feedSection(const SheetInput& in);
Section mindSection(const SheetInput& in); ///< cautions of colonies in no union or shake-out
Section kitSection(const SheetInput& in);
Section checkSection(const SheetInput& in);
Section careSection(const SheetInput& in);
Section storingSection(const SheetInput& in);       ///< what comes free, and how it is put away
Section dueSection(const SheetInput& in);           ///< what is due by the records, with boxes to tick
Section layingWorkersSection(const SheetInput& in); ///< whose they are, and what to mind
Section walkSection(const SheetInput& in);          ///< what is missing for a good plan (rules/missing.h)
Section consolidateSection(const SheetInput& in);   ///< colonies of unions to bring down to one box

/// What may be done with a colony under these holds, as far as paper may say.
QString mayStill(const SheetInput& in, const std::vector<const rules::Hold*>& holds);
/// Of these holds: it is not opened.
bool staysClosed(const std::vector<const rules::Hold*>& holds);
/// "Look whether the union took, with K2", without why.
QString dueTitle(const SheetInput& in, const rules::Due& due);

/// The union of moved and host with its two boxes from the side, at the left top corner given; returns the y below.
double stackDrawing(const SheetInput& in, const rules::Union& u, BlockPen& pen, double x, double y);
constexpr double kStackWidth = 64;
constexpr double kIndent = 8; ///< of what belongs to a box to tick, mm

/// What to do at the hives, in order, in few words.
QStringList unionSteps(const SheetInput& in, const rules::Union& u);
QStringList shakeOutSteps(const SheetInput& in, const rules::ShakeOut& shaken);
/// Whole kilograms to lift, rounded up, of the hives with a valid weight, which were not weighed, and where it takes
/// two people: over which limit of common guidance the heaviest is.
QString liftText(const SheetInput& in, const rules::Union& u);
/// What a caution says, after its title.
QString cautionText(const SheetInput& in, const rules::Caution& caution, const std::vector<ColonyIx>& colonies);

} // namespace core::report
