#pragma once

#include "core/exchange/cells.h"

// One function a kind: the row's cells into a draft, which is kept where the row has no fault by itself.

namespace core::exchange {

void parseYard(Cells& cells, Drafts& drafts);
void parseColony(Cells& cells, Drafts& drafts);
void parsePlacement(Cells& cells, Drafts& drafts);
void parseBoxKind(Cells& cells, Drafts& drafts);
void parseVisit(Cells& cells, Drafts& drafts);
void parseTransfer(Cells& cells, Drafts& drafts);
void parseLineage(Cells& cells, Drafts& drafts);
void parseResult(Cells& cells, Drafts& drafts);
void parseTreatment(Cells& cells, Drafts& drafts);
void parseSetting(Cells& cells, Drafts& drafts);
void parseClosing(Cells& cells, Drafts& drafts);
void parseFeeding(Cells& cells, Drafts& drafts);
void parseMiteFall(Cells& cells, Drafts& drafts);
void parseQueen(Cells& cells, Drafts& drafts);
void parseKeeper(Cells& cells, Drafts& drafts);
void parseNotifiable(Cells& cells, Drafts& drafts);
void parseSample(Cells& cells, Drafts& drafts);
void parseKitEnd(Cells& cells, Drafts& drafts);
void parseStripsOut(Cells& cells, Drafts& drafts);

} // namespace core::exchange
