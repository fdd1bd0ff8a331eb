#pragma once

#include <QCoreApplication>

namespace ui::health {

/// Where the sentences of health are translated.
struct Health {
    Q_DECLARE_TR_FUNCTIONS(ui::health::Health)
};

} // namespace ui::health
