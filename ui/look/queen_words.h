#pragma once

#include "core/base/day.h"
#include "core/model/rows.h"

#include <QColor>
#include <QString>

#include <optional>

// Queens in words. The colour of a year: queenMark() of rule_words.h.

namespace ui::look {

QString markText(core::QueenMark mark);       ///< "blue", "not marked"
QColor paintOf(core::QueenMark mark);         ///< not valid: not marked
QString fateText(core::QueenFate fate);       ///< "superseded by her daughter"
QString originText(core::QueenOrigin origin); ///< "raised by the keeper"
/// "2 years, born 2024": years by the calendar; "born 2026" in her first.
QString ageText(int born, core::Day on);
/// "born 2024, blue, disc 17": what is recorded of her looks; empty where nothing is.
QString looksText(const core::Queen& queen);
/// Painted in another colour than that of her year: one sentence; empty where nothing is at odds.
QString markMismatch(std::optional<int> born, std::optional<core::QueenMark> mark);

} // namespace ui::look
