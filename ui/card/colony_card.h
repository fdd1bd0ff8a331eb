#pragma once

#include "ui/card/card_content.h"

#include <QScrollArea>

#include <optional>

class QVBoxLayout;

namespace ui::card {

/// One colony: the hive from the side, what is known of it, its holds and what would lift them, its last visits.
class ColonyCard : public QScrollArea {
    Q_OBJECT
public:
    explicit ColonyCard(QWidget* parent = nullptr);

    /// nullopt: nothing is chosen, and a sentence says how to choose.
    void show(const std::optional<CardContent>& content);
    void setVisitAllowed(bool allowed);

signals:
    void visitAsked();
    void backAsked(); ///< to the board

public:
    void setBackShown(bool shown) { m_backShown = shown; }

private:
    void addHeading(QVBoxLayout* all, const CardContent& c);
    void addFacts(QVBoxLayout* all, const CardContent& c);
    void addHolds(QVBoxLayout* all, const CardContent& c);
    void addVisits(QVBoxLayout* all, const CardContent& c);

    bool m_visitAllowed = true;
    bool m_backShown = false;
};

} // namespace ui::card
