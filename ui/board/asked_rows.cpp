#include "ui/board/asked_rows.h"

#include "ui/board/boards.h"
namespace ui::board {

namespace {

using core::MergeAsk;
using core::edit::asks;
using core::edit::findChoice;

constexpr size_t kPinAndNot = 2;

AskSign signOf(MergeAsk what) {
    switch (what) {
    case MergeAsk::Pin:
        return AskSign::Pinned;
    case MergeAsk::Forbid:
        return AskSign::Forbidden;
    case MergeAsk::LeaveOut:
        return AskSign::LeftOut;
    case MergeAsk::Host:
    case MergeAsk::Top:
        break;
    }
    return AskSign::Turned;
}

} // namespace

AskedRows::AskedRows(const desk::Reading& reading, core::YardIx yard, bool mayAsk) : m_r(reading), m_mayAsk(mayAsk) {
    if (const core::rules::MergeWish* wish = reading.wishOf(reading.snapshot.yard(yard).id)) m_asked = wish->choices;
}

void AskedRows::addToUnion(BoardRow& row) const {
    const core::ColonyId moved = *row.other, host = *row.colony;
    const auto turned = [&](MergeAsk what) {
        return asks(m_asked, what, host, moved) || asks(m_asked, what, moved, host);
    };
    QStringList words;
    const bool pinned = asks(m_asked, MergeAsk::Pin, moved, host);
    if (pinned) words << Boards::tr("pinned");
    if (turned(MergeAsk::Host)) words << Boards::tr("host as asked");
    if (turned(MergeAsk::Top)) words << Boards::tr("boxes as asked");
    row.askedText = words.join(QStringLiteral(", "));
    if (!words.isEmpty()) row.sign = pinned ? AskSign::Pinned : AskSign::Turned;
    if (!m_mayAsk) return;
    row.offers = offersOfPair(m_r, m_asked, moved, host);
    row.offersAlways = kPinAndNot;
}

void AskedRows::addToColony(BoardRow& row) const {
    const core::MergeChoice* left = findChoice(m_asked, MergeAsk::LeaveOut, *row.colony);
    if (left) {
        row.sign = AskSign::LeftOut;
        row.askedText = left->note.isEmpty() ? Boards::tr("left out") : Boards::tr("left out: %1").arg(left->note);
    }
    if (m_mayAsk) row.offers = {offerOfColony(m_r, m_asked, *row.colony)};
}

std::vector<BoardRow> AskedRows::rows() const {
    std::vector<BoardRow> out;
    for (const core::MergeChoice& choice : m_asked) {
        BoardRow row;
        row.kind = RowKind::Asked;
        row.colony = choice.colony;
        row.other = choice.other;
        row.title = choiceText(m_r, choice);
        row.sign = signOf(choice.what);
        if (choice.what != MergeAsk::LeaveOut && !choice.note.isEmpty()) row.lines << choice.note;
        if (m_mayAsk) row.offers = {takingBack(m_r, choice)};
        row.offersAlways = row.offers.size();
        out.push_back(row);
    }
    return out;
}

} // namespace ui::board
