#include "ui/window/one_error.h"

#include "ui/print/paper_choice.h"

namespace ui::window {

void OneError::showError(const core::Error& error) {
    if (error.kind() != core::Error::Kind::Book) return m_real.showError(error);
    if (m_said) return;
    m_said = true;
    m_real.showError(error);
    // Posted once it is closed: what comes while it is shown is of the same press.
    QMetaObject::invokeMethod(
        this, [this] { m_said = false; }, Qt::QueuedConnection);
}

std::optional<print::PaperChoice> OneError::paperToUse(const print::PaperChoice& usual) {
    return m_real.paperToUse(usual);
}

} // namespace ui::window
