#pragma once

#include "core/model/rows.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <vector>

// Which diseases and pests must be reported where: a small table from printed sources, and the book's own lines, which
// stand in its place. It never decides: the authority does, and rules change.

namespace core::rules {

struct NotifiableLine {
    Notifiable row;   ///< a shipped one has no id
    bool own = false; ///< of the book
};

/// By place, then disease. Only what a source says: a disease that is missing is not known, never free to keep silent.
const std::vector<Notifiable>& shippedNotifiables();
/// Both, each place and disease once (the book's own line where it has one); natural order of places, then diseases.
std::vector<NotifiableLine> notifiableLines(std::span<const Notifiable> own);
/// Those of one place, without regard to case.
std::vector<NotifiableLine> notifiableLines(const QString& place, std::span<const Notifiable> own);
QStringList notifiablePlaces(std::span<const Notifiable> own); ///< natural order

/// What is known of a disease at a place; nothing where neither the table nor the book has it.
std::optional<NotifiableLine> mustReport(const QString& place, Reportable disease, std::span<const Notifiable> own);

Reportable reportable(Disease disease);
QString reportableText(Reportable disease); ///< "American foulbrood"
/// Whom to tell, in one or two sentences that end with who decides; `place` empty: none is recorded.
/// "American foulbrood must be reported in New Zealand: tell … now. The authority decides, …"
QString reportText(const QString& place, Reportable disease, std::span<const Notifiable> own);
/// "The authority decides, rules change: look it up."
QString authorityText();

} // namespace core::rules
