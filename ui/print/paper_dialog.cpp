#include "ui/print/paper_dialog.h"

#include <QButtonGroup>
#include <QDialogButtonBox>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

namespace ui::print {

using core::report::Language;
using core::report::Paper;
using core::report::Sheet;

PaperDialog::PaperDialog(const PaperChoice& usual, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("To paper"));
    auto* columns = new QHBoxLayout;
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    columns->addLayout(left);
    columns->addLayout(right);
    const auto id = [](auto value) { return static_cast<int>(value); };
    m_sheet = addGroup(left, tr("Sheet"),
                       {{id(Sheet::MergeDay), tr("&Worksheet of the merge day")},
                        {id(Sheet::Walk), tr("What is &missing, before it")},
                        {id(Sheet::Checks), tr("Checks &due, after it")},
                        {id(Sheet::ShakeOuts), tr("S&hake-outs alone")},
                        {id(Sheet::Storing), tr("&Kit that comes free")},
                        {id(Sheet::LayingWorkers), tr("La&ying workers")},
                        {id(Sheet::Tally), tr("&Tally sheet for visits")},
                        {id(Sheet::Card), tr("&Card of the chosen hive")}},
                       id(usual.sheet));
    m_language = addGroup(right, tr("Language"),
                          {{id(Language::English), tr("&English")}, {id(Language::Spanish), tr("E&spañol")}},
                          id(usual.language));
    m_paper =
        addGroup(right, tr("Paper"), {{id(Paper::A4), tr("&A4")}, {id(Paper::Letter), tr("&Letter")}}, id(usual.paper));
    m_size = addGroup(right, tr("Size of type"),
                      {{0, tr("&Ordinary, from 11 points")}, {1, tr("Lar&ge, from 16 points")}}, usual.large ? 1 : 0);
    left->addStretch();
    right->addStretch();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Go on"));
    buttons->button(QDialogButtonBox::Ok)->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* all = new QVBoxLayout(this);
    all->addLayout(columns);
    all->addWidget(buttons);
    buttons->button(QDialogButtonBox::Ok)->setFocus();
}

QButtonGroup* PaperDialog::addGroup(QVBoxLayout* to, const QString& title, const std::vector<Item>& items, int chosen) {
    auto* box = new QGroupBox(title, this);
    auto* rows = new QVBoxLayout(box);
    auto* group = new QButtonGroup(box);
    for (const Item& item : items) {
        auto* button = new QRadioButton(item.text, box);
        button->setAccessibleName(tr("%1: %2").arg(title, QString(item.text).remove(u'&')));
        button->setChecked(item.id == chosen);
        group->addButton(button, item.id);
        rows->addWidget(button);
    }
    to->addWidget(box);
    return group;
}

PaperChoice PaperDialog::choice() const {
    return {static_cast<Language>(m_language->checkedId()), static_cast<Paper>(m_paper->checkedId()),
            m_size->checkedId() == 1, static_cast<Sheet>(m_sheet->checkedId())};
}

} // namespace ui::print
