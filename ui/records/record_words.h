#pragma once

#include "core/base/shown_units.h"
#include "core/model/rows.h"

#include <QString>

namespace ui::records {

// Words of the records as people read them.

QString transferWord(core::TransferKind what); ///< "bees", "frames of brood"
QString diseaseWord(core::Disease disease);    ///< "American foulbrood"
QString verdictWord(core::Verdict verdict);
QString methodWord(core::Method method);
QString materialWord(core::SampleMaterial material); ///< "brood comb"
QString kitEndWord(core::KitEndHow how);             ///< "dipped in hot wax"
QString howWord(core::LineageHow how);               ///< "united", "shaken out", "divided"

QString feedWord(core::FeedKind what); ///< "syrup", "dry sugar"
/// "10 L", "2.5 kg"
QString amountText(const core::Feeding& feeding, const core::ShownUnits& units);
QString feedingText(const core::Feeding& feeding, const core::ShownUnits& units); ///< "10 L of syrup 3:2, by Ana"
/// "4.0 mites": in a day.
QString miteDayText(const core::MiteFall& fall);
/// "20 mites in 5 days, 4.0 a day, by Ana"
QString miteFallText(const core::MiteFall& fall);
/// What is recorded of her, with her looks: "born 2024, blue, disc 17, bought".
QString queenRowText(const core::Queen& queen);

/// With its weight in the unit shown:
QString visitText(const core::Visit& visit, core::WeightUnit unit); ///< "5.25 frames, stores 3, eggs seen, 29 kg"
QString transferText(const core::Transfer& t);                      ///< "3 frames of brood", with the note
QString resultText(const core::Result& r); ///< "American foulbrood positive, by a laboratory, B. Keeper, paper 12"
QString
sampleText(const core::Sample& s); ///< "brood comb, for American foulbrood, to a laboratory, sent on ..., awaited"
QString kitEndText(const core::KitEnd& e);       ///< "2 × lid: irradiated, by B. Keeper, paper 12"
QString treatmentText(const core::Treatment& t); ///< "Product (substance), 50 ml, antibiotic"

} // namespace ui::records
