#pragma once

#include <QString>

namespace ui::look {

/// What a mite sample says: "4.0 in 100 (2.1 to 6.9); for ± 1 in 100 wash 1560 bees". bees >= 1.
QString sampleText(int mites, int bees);
QString sampleSource();

} // namespace ui::look
