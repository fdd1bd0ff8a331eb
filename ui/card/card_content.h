#pragma once

#include "core/edit/session.h"
#include "ui/card/card_figures.h"
#include "ui/card/elevation.h"
#include "ui/card/why_list.h"
#include "ui/desk/reading.h"
#include "ui/records/new_record.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <utility>
#include <vector>

namespace ui::card {

struct HoldText {
    QString letter;
    QString title;
    QString because; ///< without its end
    QString lift;    ///< what would lift it
};

/// What the colony card says, as words.
struct CardContent {
    QString label;
    QString ended;                                  ///< when and how; empty while it lives
    QString place;                                  ///< "Kiln Field · stand 4 · entrance south"
    std::vector<std::pair<QString, QString>> facts; ///< "Strength", "5.25 frames on 14 Sep, medium"
    std::vector<HoldText> holds;
    QStringList cautions;
    std::vector<CardFigure> figures; ///< worked out, each with its source
    std::vector<WhyText> whys; ///< why the plan does so with it, holds and cautions last, these without their text
    std::optional<Side> side;  ///< of one that lives
    std::vector<records::NewRecord> barred; ///< what cannot be noted of it
};

/// The name of the fact that says what was seen of the queen.
QString cardQueenName();

CardContent cardOf(const desk::Reading& reading, core::ColonyIx colony);
/// One that has ended: when and how, where it stood last. Throws Error(Book).
CardContent endedCardOf(const core::edit::Session& book, const core::Colony& colony);

} // namespace ui::card
