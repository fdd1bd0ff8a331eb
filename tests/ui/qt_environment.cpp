#include "ui/look/sheet.h"
#include "ui/window/guarded_application.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QTemporaryDir>

#include <memory>

namespace {

/// One application for all tests of the program, offscreen, with settings of its own.
class QtEnvironment : public ::testing::Environment {
public:
    void SetUp() override {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        qputenv("XDG_CONFIG_HOME", m_settings.path().toLocal8Bit());
        QApplication::setApplicationName(QStringLiteral("YardwrightTest"));
        QApplication::setOrganizationName(QStringLiteral("YardwrightTest"));
        m_app = std::make_unique<ui::window::GuardedApplication>(m_argc, m_argv);
        ui::look::setUpStyle();
    }
    void TearDown() override { m_app.reset(); }

private:
    QTemporaryDir m_settings;
    int m_argc = 1;
    char m_name[5] = "test";
    char* m_argv[2] = {m_name, nullptr};
    std::unique_ptr<QApplication> m_app;
};

const auto* const kEnvironment = ::testing::AddGlobalTestEnvironment(new QtEnvironment);

} // namespace
