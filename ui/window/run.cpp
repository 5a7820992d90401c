#include "window/run.h"

#include <QApplication>

#include "main_window.h"

namespace fayline {

int runWindow(QApplication& application, const std::optional<QString>& fileToOpen,
              WindowServices services) {
    QApplication::setApplicationName(QStringLiteral("fayline"));
    QGuiApplication::setDesktopFileName(QStringLiteral("fayline"));
    Settings settings(configFolder(), stateFolder());
    Theme theme(application);
    theme.setLook(settings.look());
    theme.setTextSize(settings.textSize());
    MainWindow window(std::move(services), settings, theme);
    window.show();
    if (fileToOpen) window.openFile(*fileToOpen);
    return QApplication::exec();
}

}  // namespace fayline
