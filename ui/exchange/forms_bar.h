#pragma once

#include "ui/exchange/foreign_draft.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;

namespace ui::exchange {

/// What the rows of a file are and how it is written: encoding, separator, decimal mark, order of days; found and
/// shown, each changeable.
class FormsBar : public QWidget {
    Q_OBJECT
public:
    explicit FormsBar(ForeignDraft& draft, QWidget* parent);

    void showDraft(const ForeignDraft& draft);
    QComboBox* kinds() const { return m_kind; }
    QComboBox* encodings() const { return m_encoding; }
    QComboBox* separators() const { return m_separator; }
    QComboBox* decimals() const { return m_decimal; }
    QComboBox* days() const { return m_days; }

signals:
    void changed();                        ///< the draft is another
    void refused(const QString& sentence); ///< and is not

private:
    QComboBox* choice(const QString& text, const QString& name);
    void fill();
    void takeForms();

    ForeignDraft& m_draft;
    QGridLayout* m_grid;
    QComboBox *m_kind, *m_encoding, *m_separator, *m_decimal, *m_days;
    QLabel* m_found;
    QLabel* m_doubt;
};

} // namespace ui::exchange
