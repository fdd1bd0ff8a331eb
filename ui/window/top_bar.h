#pragma once

#include <QWidget>

class QButtonGroup;
class QMenuBar;
class QPushButton;

namespace ui::window {

/// The numbers are kept among the settings of a machine.
enum class Place { YardPlan, MergeDay, Colonies, Visits, Season, Health };

/// Menus, the places, and at the right what was last done, with its undo.
class TopBar : public QWidget {
    Q_OBJECT
public:
    explicit TopBar(QWidget* parent = nullptr);

    QMenuBar* menus() const { return m_menus; }
    /// Of those that there are (addPlace): shown or hidden.
    void setPlacesShown(bool shown);
    /// The button of a place, in the order of the menu View.
    void addPlace(Place place);
    void setPlace(Place place);
    /// "Carried K5 2.0 m east"; empty: nothing to undo.
    void setUndo(const QString& text);
    QString undoShown() const;
    QPushButton* undoButton() const { return m_undo; }

signals:
    void placeAsked(Place place);
    void undoAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void elide();
    void sizePlaces();

    QMenuBar* m_menus;
    QButtonGroup* m_places;
    QPushButton* m_undo;
    QString m_undoText;
    bool m_placesShown = false;
};

} // namespace ui::window
