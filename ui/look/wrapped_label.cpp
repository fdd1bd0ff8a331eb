#include "ui/look/wrapped_label.h"

#include <QEvent>

#include <algorithm>

namespace ui::look {

namespace {
constexpr int kLeast = 1; // a frame without height loses its margins when the style changes
} // namespace

WrappedLabel::WrappedLabel(const QString& name, QWidget* parent) : QLabel(parent) {
    setObjectName(name);
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    hide();
}

void WrappedLabel::tell(const QString& text) {
    setText(text);
    setVisible(!text.isEmpty());
    fit();
}

/// Layouts do not ask wrapped text for its height. Until it has its width it takes none: a height for the width that it
/// had before could make the window grow.
void WrappedLabel::fit() {
    setMinimumHeight(0); // what it would need counts that
    setFixedHeight(text().isEmpty() || !m_laid ? kLeast : std::max(kLeast, heightForWidth(width())));
}

void WrappedLabel::showEvent(QShowEvent* event) {
    QLabel::showEvent(event);
    QMetaObject::invokeMethod(
        this,
        [this] {
            m_laid = isVisible();
            fit();
        },
        Qt::QueuedConnection); // once all layouts around it are done
}

void WrappedLabel::hideEvent(QHideEvent* event) {
    QLabel::hideEvent(event);
    m_laid = false;
    fit();
}

void WrappedLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    fit();
}

void WrappedLabel::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    if (event->type() == QEvent::FontChange) fit();
}

} // namespace ui::look
