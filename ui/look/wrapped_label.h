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
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();

    bool m_laid = false; ///< shown, and given its width
};

} // namespace ui::look
