#include "app/cli.h"

#include "app/interrupt.h"
#include "app/window_run.h"
#include "ui/window/guarded_application.h"

#include <QApplication>
#include <QGuiApplication>
#include <QTextStream>

#include <cstdio>
#include <exception>
#include <memory>

namespace {

QStringList wordsOf(int argc, char** argv) {
    QStringList words;
    for (int i = 1; i < argc; ++i) words << QString::fromLocal8Bit(argv[i]);
    return words;
}

bool displayThere() { return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY"); }

std::unique_ptr<QCoreApplication> applicationFor(app::Needs needs, int& argc, char** argv) {
    switch (needs) {
    case app::Needs::Console:
        return std::make_unique<QCoreApplication>(argc, argv);
    case app::Needs::Pages:
        return std::make_unique<QGuiApplication>(argc, argv);
    case app::Needs::Window:
        break;
    }
    return std::make_unique<ui::window::GuardedApplication>(argc, argv);
}

} // namespace

int main(int argc, char** argv) {
    const QStringList words = wordsOf(argc, argv);
    const app::Needs needs = app::needs(words);
    const bool window = needs == app::Needs::Window && app::isWindow(words);
    if (!window && needs != app::Needs::Console && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QTextStream out(stdout);
    QTextStream err(stderr);
    if (window && !displayThere() && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        err << "yardwright: there is no display for the window; yardwright --help lists what works without one.\n";
        return 1;
    }
    try {
        const auto application = applicationFor(needs, argc, argv);
        QCoreApplication::setApplicationName(QStringLiteral("Yardwright"));
        QCoreApplication::setOrganizationName(QStringLiteral("Yardwright"));
        const core::SystemClock clock;
        if (window) return app::runWindow(words, clock, err);
        const int status = app::runCli(words, clock, {out, err});
        out.flush();
        err.flush();
        if (status == app::kInterrupted) app::endAsAsked();
        return status;
    } catch (const std::exception& e) {
        err << "yardwright: " << e.what() << '\n';
        return 1;
    }
}
