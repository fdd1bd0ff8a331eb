#include "ui/find/filter_row.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QLineEdit>
#include <QToolButton>

namespace ui::find {

QLineEdit* filterLine(QWidget* parent, const QString& hint, const QString& spoken) {
    auto* line = new QLineEdit(parent);
    line->setPlaceholderText(hint);
    line->setAccessibleName(spoken);
    line->setClearButtonEnabled(true);
    line->setToolTip(spoken);
    return line;
}

QComboBox* filterList(QWidget* parent, const QString& spoken) {
    auto* list = new QComboBox(parent);
    list->setAccessibleName(spoken);
    list->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    list->setMinimumContentsLength(12);
    list->setToolTip(spoken);
    return list;
}

QToolButton* menuButton(QWidget* parent, const QString& text, const QString& tip) {
    auto* button = new QToolButton(parent);
    button->setText(text);
    button->setAccessibleName(QString(text).remove(u'&'));
    button->setToolTip(tip);
    button->setPopupMode(QToolButton::InstantPopup);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::StrongFocus);
    return button;
}

QHBoxLayout* rowOf(std::initializer_list<QWidget*> parts, QWidget* wide) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    QWidget* before = nullptr;
    for (QWidget* part : parts) {
        row->addWidget(part, part == wide ? 1 : 0);
        if (before) QWidget::setTabOrder(before, part);
        before = part;
    }
    if (!wide) row->addStretch(1);
    return row;
}

} // namespace ui::find
