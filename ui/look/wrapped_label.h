#pragma once

#include <QLabel>

namespace ui::look {

/// Plain text over several lines, as high as its lines need at the width it has; hidden while it says nothing. Its
/// text can be marked and copied.
class WrappedLabel : public QLabel {
    Q_OBJECT
public:
    explicit WrappedLabel(const QString& name, QWidget* parent = nullptr);

    void tell(const QString& text);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();
};

} // namespace ui::look
