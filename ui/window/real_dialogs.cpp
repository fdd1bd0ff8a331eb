#include "ui/window/real_dialogs.h"

#include "ui/look/type.h"
#include "ui/print/paper_dialog.h"

#include <QApplication>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

namespace ui::window {

namespace {

struct Asked {
    Q_DECLARE_TR_FUNCTIONS(Asked)
};

constexpr int kMostFaults = 50;

QString books() { return Asked::tr("Books (*.yardwright)"); }

std::optional<QString> given(const QString& path) { return path.isEmpty() ? std::nullopt : std::optional(path); }

QString withEnding(QString path, const QString& ending) {
    if (!path.isEmpty() && !path.endsWith(ending, Qt::CaseInsensitive)) path += ending;
    return path;
}

QLabel* wrapped(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

void RealDialogs::showError(const core::Error& error) {
    QMessageBox box(QMessageBox::NoIcon, Asked::tr("Yardwright"), error.userMessage(), QMessageBox::Close,
                    QApplication::activeWindow());
    if (!error.detail().isEmpty()) box.setDetailedText(error.detail());
    box.exec();
}

void RealDialogs::showFaults(const QString& title, const QStringList& faults) {
    QDialog dialog(QApplication::activeWindow());
    dialog.setWindowTitle(Asked::tr("Yardwright"));
    auto* all = new QVBoxLayout(&dialog);
    all->addWidget(wrapped(title, &dialog));
    auto* text = new QPlainTextEdit(faults.mid(0, kMostFaults).join(u'\n'), &dialog);
    if (faults.size() > kMostFaults) text->appendPlainText(Asked::tr("… and %1 more").arg(faults.size() - kMostFaults));
    text->setReadOnly(true);
    text->setAccessibleName(Asked::tr("What is wrong"));
    text->setMinimumSize(640, 260);
    all->addWidget(text);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, &dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    all->addWidget(buttons);
    dialog.exec();
}

std::optional<QString> RealDialogs::bookToOpen() {
    return given(QFileDialog::getOpenFileName(QApplication::activeWindow(), Asked::tr("Open a book"), {}, books()));
}

std::optional<QString> RealDialogs::bookToMake() {
    const QDir documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    const QString path = QFileDialog::getSaveFileName(
        QApplication::activeWindow(), Asked::tr("Make a new book"),
        documents.filePath(Asked::tr("Our hives") + QStringLiteral(".yardwright")), books());
    return given(withEnding(path, QStringLiteral(".yardwright")));
}

std::optional<QString> RealDialogs::folderOfCsv() {
    return given(QFileDialog::getExistingDirectory(
        QApplication::activeWindow(), Asked::tr("The folder that holds yards.csv, colonies.csv, visits.csv")));
}

std::optional<QString> RealDialogs::csvToRead() {
    return given(QFileDialog::getOpenFileName(QApplication::activeWindow(), Asked::tr("A CSV file of any program"), {},
                                              Asked::tr("Tables as text (*.csv *.tsv *.txt);;All files (*)")));
}

QString asFileName(QString words) {
    for (QChar& c : words)
        if (!c.isPrint() || QStringLiteral("/\\:*?\"<>|").contains(c)) c = u'-';
    return words;
}

std::optional<QString> RealDialogs::pdfToWrite(const QString& suggestedName) {
    const QString path = QFileDialog::getSaveFileName(QApplication::activeWindow(), Asked::tr("Worksheet as PDF"),
                                                      asFileName(suggestedName), Asked::tr("PDF (*.pdf)"));
    return given(withEnding(path, QStringLiteral(".pdf")));
}

std::optional<QString> RealDialogs::fileToWrite(const QString& title, const QString& suggestedName) {
    const QString ending = QFileInfo(suggestedName).suffix();
    const QString path = QFileDialog::getSaveFileName(QApplication::activeWindow(), title, asFileName(suggestedName),
                                                      Asked::tr("%1 (*.%2)").arg(ending.toUpper(), ending));
    return given(withEnding(path, QLatin1Char('.') + ending));
}

std::optional<print::PaperChoice> RealDialogs::paperToUse(const print::PaperChoice& usual) {
    print::PaperDialog dialog(usual, QApplication::activeWindow());
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.choice()) : std::nullopt;
}

std::optional<core::edit::Correction> RealDialogs::correction(const QString& what, const QString& message) {
    QDialog dialog(QApplication::activeWindow());
    dialog.setWindowTitle(Asked::tr("A correction"));
    dialog.setMinimumWidth(480);
    auto* all = new QVBoxLayout(&dialog);
    QLabel* title = wrapped(what, &dialog);
    title->setFont(look::headingFont(dialog.font()));
    all->addWidget(title);
    all->addWidget(wrapped(message, &dialog));
    all->addWidget(wrapped(Asked::tr("The history keeps it as a correction: what it was and what it became, the reason "
                                     "and your name."),
                           &dialog));
    auto* form = new QFormLayout;
    auto* reason = new QLineEdit(&dialog);
    auto* by = new QLineEdit(&dialog);
    reason->setAccessibleName(Asked::tr("Reason of the correction"));
    by->setAccessibleName(Asked::tr("Your name"));
    form->addRow(Asked::tr("&Reason"), reason);
    form->addRow(Asked::tr("Your &name"), by);
    all->addLayout(form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, &dialog);
    QPushButton* ok = buttons->button(QDialogButtonBox::Ok);
    ok->setText(Asked::tr("&Correct"));
    const auto check = [=] { ok->setEnabled(!reason->text().trimmed().isEmpty() && !by->text().trimmed().isEmpty()); };
    QObject::connect(reason, &QLineEdit::textChanged, ok, check);
    QObject::connect(by, &QLineEdit::textChanged, ok, check);
    QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    check();
    all->addWidget(buttons);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return core::edit::Correction{by->text().trimmed(), reason->text().trimmed()};
}

bool RealDialogs::leaveAnyway(const QString& why) {
    QMessageBox box(QMessageBox::NoIcon, Asked::tr("Yardwright"), why, QMessageBox::NoButton,
                    QApplication::activeWindow());
    const QPushButton* leave = box.addButton(Asked::tr("&Close anyway"), QMessageBox::DestructiveRole);
    QPushButton* stay = box.addButton(Asked::tr("&Stay"), QMessageBox::RejectRole);
    box.setDefaultButton(stay);
    box.setEscapeButton(stay);
    box.exec();
    return box.clickedButton() == leave;
}

} // namespace ui::window
