#pragma once

#include "ui/card/card_content.h"
#include "ui/records/new_record.h"

#include <QScrollArea>

#include <optional>

class QGridLayout;
class QVBoxLayout;

namespace ui::records {
class RecordList;
}

namespace ui::card {

/// One colony, living or ended: the hive from the side, what is known of it, its holds and what would lift them, and
/// all its records.
class ColonyCard : public QScrollArea {
    Q_OBJECT
public:
    explicit ColonyCard(QWidget* parent = nullptr);

    /// nullopt: nothing is chosen, and a sentence says how to choose.
    void show(const std::optional<CardContent>& content);
    void setWritable(bool writable);
    records::RecordList* records() const { return m_records; }

signals:
    void visitAsked();
    void recordAsked(ui::records::NewRecord what);
    void backAsked(); ///< to the board

public:
    void setBackShown(bool shown) { m_backShown = shown; }

private:
    void addHeading(QVBoxLayout* all, const CardContent& c);
    void addFacts(QVBoxLayout* all, const CardContent& c);
    void addHolds(QVBoxLayout* all, const CardContent& c);
    void addFigures(QGridLayout* grid, QWidget* page, const CardContent& c);
    void addWhys(QVBoxLayout* all, const CardContent& c);
    void addSide(QVBoxLayout* all, const CardContent& c);
    void addButtons(QVBoxLayout* all, const CardContent& c);

    records::RecordList* m_records; ///< stays while the rest is built anew
    bool m_writable = true;
    bool m_backShown = false;
    bool m_rulesShown = false; ///< rules and limits are unfolded
};

} // namespace ui::card
