#include "core/report/tally.h"

#include <algorithm>
#include <array>

// The card of one colony: the row of the tally sheet, and what its last visits saw.

namespace core::report {

namespace {

constexpr double kTitleHigh = 9.4; // mm of title and day below the place of the running head
constexpr double kColumnGap = 3.5; // mm between two columns
constexpr size_t kCardColumns = 10;
using CardCells = std::array<QString, kCardColumns>;

QString orDash(const QString& text) { return text.isEmpty() ? QString(QChar(0x2014)) : text; }

/// "5 / 4.5": from above and from below; what was not counted a dash.
QString pairText(const std::optional<Quarters>& a, const std::optional<Quarters>& b) {
    if (!a && !b) return {};
    const auto one = [](const std::optional<Quarters>& q) { return orDash(q ? framesText(*q) : QString()); };
    return one(a) + QStringLiteral(" / ") + one(b);
}

QString withUpper(const QString& a, const QString& b) {
    return b.isEmpty() ? a : orDash(a) + QStringLiteral(" + ") + b;
}

QString signWords(const SheetInput& in, const Signs& signs) {
    QStringList out;
    for (int i = 0; i <= static_cast<int>(Sign::DeformedWings); ++i)
        if (signs.has(static_cast<Sign>(i))) out << tallyWord(in, static_cast<Sign>(i));
    return out.join(QStringLiteral(", "));
}

QString framesCell(const std::optional<Quarters>& q) { return q ? framesText(*q) : QString(); }
QString numberCell(const std::optional<int>& n) { return n ? QString::number(*n) : QString(); }

CardCells cardHead(const SheetInput& in) {
    return {in.say("last visits"), in.say("bees"),  in.say("queen"),  in.say("brood"), in.say("signs"),
            in.say("stores"),      in.say("honey"), in.say("weight"), in.say("mites"), in.say("note")};
}

CardCells visitCells(const SheetInput& in, const Visit& v) {
    const QString mites =
        v.mites && v.miteSample ? QStringLiteral("%1 / %2").arg(*v.mites).arg(*v.miteSample) : QString();
    const QString checked = v.broodChecked ? QStringLiteral(" (%1)").arg(*v.broodChecked) : QString();
    return {in.say.shortDay(v.day, in.plan.on),
            withUpper(pairText(v.beesTop, v.beesBottom), pairText(v.upperBeesTop, v.upperBeesBottom)),
            v.queen ? in.say.queenSeen(*v.queen) : QString(),
            numberCell(v.broodFrames) + checked,
            signWords(in, v.signs),
            withUpper(framesCell(v.stores), framesCell(v.upperStores)),
            numberCell(v.supers),
            v.gross ? in.say.shortWeight(v.gross->value * 10'000LL) : QString(),
            mites,
            QString(v.note).replace(u'\n', u' ')};
}

/// A table of what was seen; what was never seen has no column, and notes take the room that is left.
Block lastBlock(const SheetInput& in, double most) {
    Block block;
    BlockPen pen(in.measure, block);
    const double y = in.options.visits.empty() ? pen.line(0, 0, in.say("No visit is noted yet."), kText) : 0;
    std::vector<CardCells> rows;
    for (const Visit& v : in.options.visits)
        if (y + static_cast<double>(rows.size() + 2) * lineHeight(kText.pointSize) <= most)
            rows.push_back(visitCells(in, v));
    if (!rows.empty()) rows.insert(rows.begin(), cardHead(in));
    double x = 0;
    for (size_t c = 0; c < kCardColumns && rows.size() > 1; ++c) {
        const bool last = c + 1 == kCardColumns;
        if (std::all_of(rows.begin() + 1, rows.end(), [c](const CardCells& row) { return row[c].isEmpty(); })) continue;
        double wide = 0;
        for (const CardCells& row : rows) wide = std::max(wide, pen.width(orDash(row[c]), kText));
        const double room = in.width - x;
        if (room < 8) break;
        for (size_t r = 0; r < rows.size(); ++r) {
            const QString text = last ? rows[r][c] : orDash(rows[r][c]);
            pen.line(x, y + static_cast<double>(r) * lineHeight(kText.pointSize), elided(in.measure, text, kText, room),
                     kText);
        }
        x += wide + kColumnGap;
    }
    block.height = y + static_cast<double>(rows.size()) * lineHeight(kText.pointSize);
    block.zone = QStringLiteral("last visits");
    block.zoneWidth = in.width;
    return block;
}

} // namespace

std::optional<ColonyIx> cardColony(const SheetInput& in) {
    for (const rules::ColonyFacts& f : in.facts)
        if (in.options.colony && in.s.colony(f.colony).id == *in.options.colony) return f.colony;
    return {};
}

std::vector<Section> cardSections(const SheetInput& in) {
    const auto colony = cardColony(in);
    if (!colony) return {};
    const TallyForm form = tallyForm(in);
    Section card;
    for (Block block : {dayLine(in), tallyHead(in, form), tallyRow(in, form, *colony, false)})
        card.blocks.push_back(std::move(block));
    card.blocks.back().gapAfter = 2;
    double taken = kTitleHigh;
    for (const Block& block : card.blocks) taken += block.height + block.gapAfter;
    card.blocks.push_back(lastBlock(in, std::max(in.height - taken, 15.0)));
    return {std::move(card)};
}

} // namespace core::report
